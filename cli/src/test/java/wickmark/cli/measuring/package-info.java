@NullMarked
package wickmark.cli.measuring;

import org.jspecify.annotations.NullMarked;
