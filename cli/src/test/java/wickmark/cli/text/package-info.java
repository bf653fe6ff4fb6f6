@NullMarked
package wickmark.cli.text;

import org.jspecify.annotations.NullMarked;
