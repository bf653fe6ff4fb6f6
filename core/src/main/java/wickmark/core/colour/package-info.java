/**
 * Colour of a spot: CIELAB with the paper as white, how far two colours are apart, what a dye's
 * colour is independent of how much of it there is, and its plain English name.
 */
@NullMarked
package wickmark.core.colour;

import org.jspecify.annotations.NullMarked;
