/**
 * What one developed strip shows: from places along the strip to distances and Rf with their
 * uncertainties.
 *
 * <p>Takes {@link wickmark.core.chromatogram.StripEvidence}, in which places along a lane grow
 * towards the front in one unit of length, millimetres or not; gives a {@link
 * wickmark.core.chromatogram.Chromatogram}.
 */
@NullMarked
package wickmark.core.chromatogram;

import org.jspecify.annotations.NullMarked;
