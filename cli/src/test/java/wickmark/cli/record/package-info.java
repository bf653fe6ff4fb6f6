@NullMarked
package wickmark.cli.record;

import org.jspecify.annotations.NullMarked;
