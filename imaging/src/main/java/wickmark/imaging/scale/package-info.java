/**
 * Stage 4: takes the {@link wickmark.imaging.photo.Photo}, gives the graduated edges of the rulers
 * that lie in it, each as a list of numbered marks with their places in the photo.
 *
 * <p>Inside the package places are in pixels of a reduced plane ("level"), with (0, 0) the outer
 * corner of its top-left pixel, so that a photo place is the level place times the reduction
 * factor. Along an edge {@code u} runs with the ruler and {@code v} square to it.
 */
@NullMarked
package wickmark.imaging.scale;

import org.jspecify.annotations.NullMarked;
