/**
 * Stage 9: takes lines, lanes and spots on the straight strip, gives places along the lanes with
 * their uncertainties, for core to make distances and Rf of.
 */
@NullMarked
package wickmark.imaging.measure;

import org.jspecify.annotations.NullMarked;
