package wickmark.imaging;

import java.util.List;
import java.util.Optional;
import wickmark.core.card.CardLayout;
import wickmark.core.colour.LabColour;
import wickmark.core.colour.LinearRgb;
import wickmark.imaging.card.CardView;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.raster.ColourRaster;
import wickmark.imaging.raster.Selection;

/**
 * Light and paper by the card. The card's white tells the colour of the light as the camera shows
 * it, so that the paper's own colour can be told from it: cream paper in white light and white
 * paper in yellow light look alike otherwise.
 *
 * <p>Spots keep the strip's paper as their white. What the camera shows is, channel by channel,
 * light times paper times what the dye lets through; divided by the paper beside the spot the first
 * two fall out, wherever the light comes from and whatever the paper's tint is. Divided by the
 * card's white the paper would stay in, and so would every change of light between card and spot.
 *
 * @param sheet the card's size by name
 * @param white linear light of the card's white
 * @param greyChroma the largest chroma of the greys between white and black, with this white
 * @param paper colour of the strip's blank paper with this white
 */
public record CardLight(String sheet, LinearRgb white, double greyChroma, LabColour paper) {
  /** Cells with a density of less than this are blank paper. */
  private static final double BLANK = 0.02;

  /** So many of them tell the paper's colour. */
  private static final int LEAST_CELLS = 200;

  /** Returns what the card tells; empty where its patches are covered or out of the picture. */
  static Optional<CardLight> of(Photo photo, CardView card, ColourRaster light, DensityMap map) {
    CardPatches patches = new CardPatches(photo, card);
    Optional<LinearRgb> white = patches.white();
    if (white.isEmpty()) {
      return Optional.empty();
    }
    return paper(light, map)
        .map(
            paper ->
                new CardLight(
                    card.layout().sheet().word(),
                    white.get(),
                    greyChroma(patches, card, white.get()),
                    LabColour.of(paper, white.get())));
  }

  private static double greyChroma(CardPatches patches, CardView card, LinearRgb white) {
    List<CardLayout.Patch> all = card.layout().patches();
    return all.subList(1, all.size() - 1).stream()
        .flatMap(patch -> patches.light(patch).stream())
        .mapToDouble(light -> LabColour.of(light, white).chroma())
        .max()
        .orElse(0);
  }

  private static Optional<LinearRgb> paper(ColourRaster light, DensityMap map) {
    int n = map.paper().cells().length;
    double[][] values = new double[3][n];
    int found = 0;
    for (int i = 0; i < n; i++) {
      boolean blank = map.paper().cells()[i] > 0;
      for (int c = 0; c < 3; c++) {
        blank &= Math.abs(map.density()[c].cells()[i]) < BLANK;
      }
      if (blank) {
        for (int c = 0; c < 3; c++) {
          values[c][found] = light.channel(c).cells()[i];
        }
        found++;
      }
    }
    return found < LEAST_CELLS
        ? Optional.empty()
        : Optional.of(
            new LinearRgb(
                Selection.median(values[0], found),
                Selection.median(values[1], found),
                Selection.median(values[2], found)));
  }
}
