/**
 * Stage 4: takes the photo, gives the printed card in it, if there is one: which sheet it is, where
 * its squares are seen, and the view of its plane with the scale in the print's own millimetres.
 */
@NullMarked
package wickmark.imaging.card;

import org.jspecify.annotations.NullMarked;
