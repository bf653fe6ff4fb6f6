/**
 * Grids of numbers that the stages work on. Places are given as in the photo: (0, 0) is the outer
 * corner of the first cell, whose centre is (0.5, 0.5).
 */
@NullMarked
package wickmark.imaging.raster;

import org.jspecify.annotations.NullMarked;
