@NullMarked
package wickmark.cli;

import org.jspecify.annotations.NullMarked;
