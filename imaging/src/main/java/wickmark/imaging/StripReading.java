package wickmark.imaging;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import wickmark.core.chromatogram.StripEvidence;
import wickmark.core.record.LanePicture;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.line.LineKind;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.scale.PixelScale;

/**
 * One strip as it was read.
 *
 * @param evidence places along the lanes, ready to be made into distances and Rf
 * @param pictures where lanes and spots lie in the photo, in the order of the evidence's lanes
 * @param placed where strip, baseline and front lie in the photo
 * @param scale how pixels became millimetres
 * @param light what the printed card tells of light and paper
 * @param straightened the strip upright and in true proportions
 * @param doubts what the reader must see
 */
public record StripReading(
    StripEvidence evidence,
    List<LanePicture> pictures,
    Placed placed,
    PixelScale scale,
    Optional<CardLight> light,
    Straightened straightened,
    List<Doubt> doubts) {

  public StripReading {
    pictures = List.copyOf(pictures);
    doubts = List.copyOf(doubts);
  }

  /**
   * Where the strip lies in the photo.
   *
   * @param corners top-left, top-right, bottom-right, bottom-left
   * @param pictureToStrip homography, row by row, from photo pixels to strip coordinates (x right,
   *     y up from the baseline's left end; millimetres where there is a scale, else the strip's
   *     height is 1)
   * @param baseline its ends, left first
   * @param front its course from left to right
   */
  public record Placed(
      List<PhotoPoint> corners,
      List<Double> pictureToStrip,
      List<PhotoPoint> baseline,
      List<PhotoPoint> front,
      LineKind frontKind,
      Said said,
      Confidence confidence) {
    public Placed {
      corners = List.copyOf(corners);
      pictureToStrip = List.copyOf(pictureToStrip);
      baseline = List.copyOf(baseline);
      front = List.copyOf(front);
    }
  }

  /**
   * Which places are as the person said.
   *
   * @param origins names of the lanes whose origin was said
   */
  public record Said(boolean corners, boolean baseline, boolean front, Set<String> origins) {
    public Said {
      origins = Set.copyOf(origins);
    }
  }

  /**
   * How sure each finding is, 0 to 1.
   *
   * @param strip that the sheet is a strip
   * @param orientation that its bottom is the bottom
   * @param scale that lengths are within 1 % of the true ones, as far as the ruler's divisions and
   *     the scale's uncertainty tell; 1 where there is no scale
   * @param baseline that it is where the samples were put
   * @param front that it is as far as the solvent came
   * @param lanes of the least sure lane: that one sample was put there
   */
  public record Confidence(
      double strip,
      double orientation,
      double scale,
      double baseline,
      double front,
      double lanes) {}

  /**
   * The strip upright.
   *
   * @param picture its pixels
   * @param fromPhoto homography, row by row, from photo pixels to this picture's
   * @param pixelsPerMm or per nominal millimetre where there is no scale
   * @param layout where everything lies on it
   */
  public record Straightened(
      Photo picture, List<Double> fromPhoto, double pixelsPerMm, StraightLayout layout) {
    public Straightened {
      fromPhoto = List.copyOf(fromPhoto);
    }
  }
}
