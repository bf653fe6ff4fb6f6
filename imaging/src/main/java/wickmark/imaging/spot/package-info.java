/**
 * Stage 8: takes the density map and the lanes, gives the spots: found, parted where they touch,
 * centred and coloured.
 */
@NullMarked
package wickmark.imaging.spot;

import org.jspecify.annotations.NullMarked;
