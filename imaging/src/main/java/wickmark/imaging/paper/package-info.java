/**
 * Stage 5: takes the straight strip, gives the {@link wickmark.imaging.paper.DensityMap}: how much
 * darker than blank paper each place is, in optical density, with the light's unevenness taken out.
 */
@NullMarked
package wickmark.imaging.paper;

import org.jspecify.annotations.NullMarked;
