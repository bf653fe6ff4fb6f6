package wickmark.imaging.line;

import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;

/**
 * A strip's densities, smoothed as each kind of line needs it: as little as leaves no noise between
 * the line and what is beside it.
 *
 * @param grey for pencil
 * @param chroma for ink
 * @param dye chroma again, for where there is dye
 * @param channels red, green and blue, for tide marks
 */
record SmoothDensities(Raster grey, Raster chroma, Raster dye, Raster[] channels) {
  private static final double GREY_MM = 0.15;
  private static final double CHROMA_MM = 0.2;
  private static final double DYE_MM = 0.4;

  /** Smoothing of the channels, mm. */
  static final double CHANNELS_MM = 0.3;

  static SmoothDensities of(DensityMap map) {
    double mm = map.cellsPerMm();
    Raster chroma = map.chroma();
    return new SmoothDensities(
        Smoothing.gaussian(map.neutral(), Math.max(0.5, GREY_MM * mm)),
        Smoothing.gaussian(chroma, Math.max(0.5, CHROMA_MM * mm)),
        Smoothing.gaussian(chroma, DYE_MM * mm),
        TideFilter.smoothed(map, CHANNELS_MM * mm));
  }

  /** Those of the strip turned a quarter clockwise. */
  SmoothDensities turned() {
    Raster[] turned = new Raster[3];
    for (int c = 0; c < 3; c++) {
      turned[c] = channels[c].turned();
    }
    return new SmoothDensities(grey.turned(), chroma.turned(), dye.turned(), turned);
  }
}
