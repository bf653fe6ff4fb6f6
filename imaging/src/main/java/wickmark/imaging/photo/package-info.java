/** Stage 1: gives the {@link wickmark.imaging.photo.Photo}, an upright picture in memory. */
@NullMarked
package wickmark.imaging.photo;

import org.jspecify.annotations.NullMarked;
