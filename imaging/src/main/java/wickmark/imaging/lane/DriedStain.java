package wickmark.imaging.lane;

import java.util.List;
import wickmark.imaging.raster.Raster;

/**
 * What dried on the paper and is no dye of the run: a splash of tea or water.
 *
 * @param left its first column, cells
 * @param right its last column
 * @param top its first row
 * @param bottom its last row
 */
public record DriedStain(int left, int right, int top, int bottom) {
  /** Whether a place is within its reach. */
  public boolean holds(double x, double y) {
    return x >= left && x <= right && y >= top && y <= bottom;
  }

  /**
   * Densities without such stains.
   *
   * @param density red, green and blue
   */
  public record TakenOff(Raster[] density, List<DriedStain> stains) {
    public TakenOff {
      stains = List.copyOf(stains);
    }
  }
}
