package wickmark.testdata.strip;

import wickmark.testdata.truth.StripTruth;

/** A painted strip: its reflectance on a grid, where its paper ends, and its truth. */
public final class PaintedStrip {
  private final Raster raster;
  private final float[] reflectance;
  private final SheetEdges edges;
  private final StripTruth truth;

  PaintedStrip(Raster raster, float[] reflectance, SheetEdges edges, StripTruth truth) {
    this.raster = raster;
    this.reflectance = reflectance;
    this.edges = edges;
    this.truth = truth;
  }

  public StripTruth truth() {
    return truth;
  }

  public SheetEdges edges() {
    return edges;
  }

  /** Returns how many grid points a millimetre holds. */
  public double pxPerMm() {
    return raster.pxPerMm();
  }

  /**
   * Adds the reflectance at a place, between grid points linearly.
   *
   * @param x strip mm
   * @param y strip mm
   * @param into red, green and blue are added to its first three elements
   */
  public void addReflectance(double x, double y, float[] into) {
    float u = (float) ((x + Raster.MARGIN_MM) * raster.pxPerMm() - 0.5);
    float v = (float) ((y + Raster.MARGIN_MM) * raster.pxPerMm() - 0.5);
    int column = Math.max(0, Math.min(raster.widthPx() - 2, (int) u));
    int row = Math.max(0, Math.min(raster.heightPx() - 2, (int) v));
    float right = Math.max(0, Math.min(1, u - column));
    float up = Math.max(0, Math.min(1, v - row));
    float a = (1 - right) * (1 - up);
    float b = right * (1 - up);
    float c = (1 - right) * up;
    float d = right * up;
    int low = 3 * (row * raster.widthPx() + column);
    int high = low + 3 * raster.widthPx();
    for (int k = 0; k < 3; k++) {
      into[k] +=
          a * reflectance[low + k]
              + b * reflectance[low + 3 + k]
              + c * reflectance[high + k]
              + d * reflectance[high + 3 + k];
    }
  }
}
