@NullMarked
package wickmark.cli.table;

import org.jspecify.annotations.NullMarked;
