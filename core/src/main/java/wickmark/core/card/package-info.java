/**
 * The printed card that a strip is laid on for its picture: what is where on it. Lengths are
 * millimetres, x right and y down from the sheet's upper left corner, as in a picture.
 */
@NullMarked
package wickmark.core.card;

import org.jspecify.annotations.NullMarked;
