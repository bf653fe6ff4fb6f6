package wickmark.imaging.photo;

/**
 * A place in the photo, in pixels: x right, y down, (0, 0) the outer corner of the top-left pixel,
 * so that the first pixel's centre is (0.5, 0.5).
 *
 * <p>It has no distance method on purpose: the photo is in perspective, and a distance in it means
 * nothing on the paper.
 */
public record PhotoPoint(double x, double y) {}
