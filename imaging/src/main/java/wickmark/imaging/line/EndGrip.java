package wickmark.imaging.line;

import java.util.Arrays;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Figure;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;

/**
 * What holds a sheet at an end of it: a thing with colour of its own that comes in over the first
 * or last row of paper, as wide as a fingertip is at the least, and solid. A sheet that is held
 * need not lie on the desk.
 */
public final class EndGrip {
  /** Chroma (density) that skin and coloured clips have on white paper, and mixed light has not. */
  private static final float COLOURED = 0.1f;

  private static final double SMOOTHING_MM = 0.6;

  /** Least size of such a thing over the sheet, mm. */
  private static final double LEAST_WIDTH_MM = 6;

  private static final double LEAST_HEIGHT_MM = 3;

  /** Least part of its box that it fills: a finger does three quarters, a corner in shade half. */
  private static final double SOLID = 0.62;

  private EndGrip() {}

  /** Whether there is one. */
  public static boolean isOn(DensityMap map) {
    double mm = map.cellsPerMm();
    Raster chroma = Smoothing.gaussian(map.chroma(), SMOOTHING_MM * mm);
    Raster coloured = new Raster(map.width(), map.height());
    for (int i = 0; i < coloured.cells().length; i++) {
      coloured.cells()[i] = map.paper().cells()[i] > 0 && chroma.cells()[i] > COLOURED ? 1 : 0;
    }
    boolean[] atEnd = EndStains.atEnd(map.paper(), mm);
    return Figure.in(coloured).stream()
        .filter(f -> f.columns() > LEAST_WIDTH_MM * mm && f.rows() > LEAST_HEIGHT_MM * mm)
        .filter(f -> f.cells().length > SOLID * f.columns() * f.rows())
        .anyMatch(f -> Arrays.stream(f.cells()).anyMatch(i -> atEnd[i]));
  }
}
