/** Repeats of the same samples on several strips together. */
@NullMarked
package wickmark.core.pool;

import org.jspecify.annotations.NullMarked;
