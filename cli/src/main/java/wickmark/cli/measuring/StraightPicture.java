package wickmark.cli.measuring;

import java.util.List;
import wickmark.core.chromatogram.StripEvidence;
import wickmark.imaging.StraightLayout;
import wickmark.imaging.photo.Photo;

/**
 * The strip upright and true to scale.
 *
 * @param fromPhoto homography, row by row, from photo pixels to pixels of this picture
 * @param pixelsPerMm or per nominal millimetre where there is no scale
 * @param layout where everything lies on it
 * @param evidence what was found, as places along the lanes
 */
public record StraightPicture(
    Photo picture,
    List<Double> fromPhoto,
    double pixelsPerMm,
    StraightLayout layout,
    StripEvidence evidence) {
  public StraightPicture {
    fromPhoto = List.copyOf(fromPhoto);
    if (fromPhoto.size() != 9 || !(pixelsPerMm > 0)) {
      throw new IllegalArgumentException(
          "a mapping has nine numbers and a scale is above 0, was "
              + fromPhoto.size()
              + " and "
              + pixelsPerMm);
    }
  }
}
