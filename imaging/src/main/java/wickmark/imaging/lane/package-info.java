/**
 * Stage 7: takes the density map with its baseline and front, gives the lanes: where on the
 * baseline the samples were put.
 */
@NullMarked
package wickmark.imaging.lane;

import org.jspecify.annotations.NullMarked;
