package wickmark.testdata.strip;

import wickmark.testdata.truth.PointMm;

/** Paints single spots. */
final class SpotPainter {
  /** How sharply dye stops at the front, mm: it cannot run ahead of the solvent. */
  private static final double FRONT_EDGE_MM = 0.3;

  private final StripPlan plan;
  private final DensityPlanes planes;

  SpotPainter(StripPlan plan, DensityPlanes planes) {
    this.plan = plan;
    this.planes = planes;
  }

  /** Adds one spot to the planes and returns what was added. */
  SpotPatch paint(SpotPlan spot, LaneWay way, long seed) {
    SpotPatch patch = patch(spot, way, seed);
    Raster raster = planes.raster;
    for (int row = 0; row < patch.rows(); row++) {
      int target = (patch.firstRow() + row) * raster.widthPx() + patch.firstColumn();
      for (int column = 0; column < patch.columns(); column++) {
        planes.add(
            target + column,
            patch.density()[row * patch.columns() + column],
            spot.dye().absorption());
      }
    }
    return patch;
  }

  private SpotPatch patch(SpotPlan spot, LaneWay way, long seed) {
    SpotForm form = new SpotForm(spot.shape(), seed);
    Raster raster = planes.raster;
    PointMm core = way.at(spot.rf());
    double slope = StrictMath.toRadians(way.baseline().slopeDeg());
    double cos = StrictMath.cos(slope);
    double sin = StrictMath.sin(slope);
    int left = raster.firstColumn(core.x() - form.reachAcross());
    int right = raster.lastColumn(core.x() + form.reachAcross());
    int low = raster.firstRow(core.y() - form.reachDown());
    int high = raster.lastRow(core.y() + form.reachUp());
    int columns = right - left + 1;
    float[] density = new float[columns * (high - low + 1)];
    float peak = 0;
    for (int row = low; row <= high; row++) {
      for (int column = left; column <= right; column++) {
        double dx = raster.x(column) - core.x();
        double dy = raster.y(row) - core.y();
        double value =
            form.at(cos * dx + sin * dy, cos * dy - sin * dx) * held(column, row, spot, way);
        density[(row - low) * columns + column - left] = (float) value;
        peak = Math.max(peak, (float) value);
      }
    }
    float scale = (float) (spot.absorbance() / peak);
    for (int i = 0; i < density.length; i++) {
      density[i] *= scale;
    }
    return new SpotPatch(spot, left, low, columns, density);
  }

  /**
   * The share of dye that the solvent could carry to a place: none above the front, no tail below
   * the origin.
   */
  private double held(int column, int row, SpotPlan spot, LaneWay way) {
    double x = planes.raster.x(column);
    double y = planes.raster.y(row);
    double below = plan.lines().front().heightAt(x, plan.sheet().widthMm()) - y;
    double share = logistic(below / FRONT_EDGE_MM);
    if (spot.shape().tailMm() > 0) {
      share *= logistic((way.baseline().heightOf(new PointMm(x, y)) + 1.5) / 0.5);
    }
    return share;
  }

  private static double logistic(double t) {
    return t > 30 ? 1 : t < -30 ? 0 : 1 / (1 + StrictMath.exp(-t));
  }
}
