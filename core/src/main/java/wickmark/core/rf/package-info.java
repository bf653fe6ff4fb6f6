/** The retardation factor, and how it is printed. */
@NullMarked
package wickmark.core.rf;

import org.jspecify.annotations.NullMarked;
