/** Sizes of paper. */
@NullMarked
package wickmark.core.sheet;

import org.jspecify.annotations.NullMarked;
