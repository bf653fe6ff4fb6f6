/**
 * Stage 4: takes the photo, the plane's view and the strip's corners, gives the {@link
 * wickmark.imaging.straight.StraightStrip}: the strip upright, in true proportions, in linear
 * light.
 */
@NullMarked
package wickmark.imaging.straight;

import org.jspecify.annotations.NullMarked;
