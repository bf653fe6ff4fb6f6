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
 * @param corners of a sheet that was to be cut square, in order around it
 * @param sides for each side, from corner i to corner i + 1, places along it as it was seen
 * @param cornerSigmaPx standard uncertainty of each corner
 * @param divisions rows of evenly spaced marks, such as a ruler's, the one to be trusted most first
 */
public record PlaneEvidence(
    int widthPx,
    int heightPx,
    OptionalDouble focalLength35mm,
    List<PhotoPoint> corners,
    List<List<PhotoPoint>> sides,
    double cornerSigmaPx,
    List<Division> divisions) {

  /**
   * One row of marks, or of the middles of neighbouring ones.
   *
   * @param index in marks from any zero
   * @param at where each is seen
   * @param sigmaPx standard uncertainty of that along the row
   * @param asideSigmaPx the same across the row
   * @param millimetresPerMark from one index to the next
   */
  public record Division(
      double[] index,
      List<PhotoPoint> at,
      double sigmaPx,
      double asideSigmaPx,
      double millimetresPerMark) {}
}
