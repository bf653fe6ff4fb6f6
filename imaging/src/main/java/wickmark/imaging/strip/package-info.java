/**
 * Stage 2: takes the photo, gives the outlines of what may be the strip, each with its evidence.
 */
@NullMarked
package wickmark.imaging.strip;

import org.jspecify.annotations.NullMarked;
