package wickmark.imaging.pose;

import java.util.List;
import java.util.OptionalDouble;
import wickmark.imaging.photo.PhotoPoint;

/**
 * What is known about the plane.
 *
 * @param widthPx of the photo
 * @param heightPx of the photo
 * @param focalLength35mm the 35-mm-equivalent focal length, where the file says it
 * @param corners of a sheet cut square, in order around it
 * @param cornerSigmaPx standard uncertainty of each
 * @param divisions rows of evenly spaced marks in the plane, such as a ruler's
 */
public record PlaneEvidence(
    int widthPx,
    int heightPx,
    OptionalDouble focalLength35mm,
    List<PhotoPoint> corners,
    double cornerSigmaPx,
    List<Division> divisions) {

  /** One row of marks: index in whole marks from any zero, and where it is seen. */
  public record Division(int[] index, List<PhotoPoint> at, double sigmaPx) {}
}
