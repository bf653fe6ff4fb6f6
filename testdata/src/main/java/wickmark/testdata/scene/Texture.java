package wickmark.testdata.scene;

/** A flat picture of a surface: reflectance and opacity on a grid in millimetres. */
final class Texture {
  final double left;
  final double low;
  final double pxPerMm;
  final int columns;
  final int rows;

  /** Red, green, blue, each times the opacity, and the opacity itself. */
  final float[] rgba;

  Texture(double left, double low, double right, double high, double pxPerMm) {
    this.left = left;
    this.low = low;
    this.pxPerMm = pxPerMm;
    this.columns = Math.max(2, (int) Math.ceil((right - left) * pxPerMm) + 1);
    this.rows = Math.max(2, (int) Math.ceil((high - low) * pxPerMm) + 1);
    this.rgba = new float[4 * columns * rows];
  }

  double x(int column) {
    return left + column / pxPerMm;
  }

  double y(int row) {
    return low + row / pxPerMm;
  }

  void set(int column, int row, double red, double green, double blue, double opacity) {
    int i = 4 * (row * columns + column);
    rgba[i] = (float) (red * opacity);
    rgba[i + 1] = (float) (green * opacity);
    rgba[i + 2] = (float) (blue * opacity);
    rgba[i + 3] = (float) opacity;
  }

  /** Lays a colour over what is there. */
  void cover(int column, int row, double red, double green, double blue, double opacity) {
    int i = 4 * (row * columns + column);
    float stay = (float) (1 - opacity);
    rgba[i] = rgba[i] * stay + (float) (red * opacity);
    rgba[i + 1] = rgba[i + 1] * stay + (float) (green * opacity);
    rgba[i + 2] = rgba[i + 2] * stay + (float) (blue * opacity);
    rgba[i + 3] = rgba[i + 3] * stay + (float) opacity;
  }

  /**
   * Adds the colour at a place to {@code into} and returns the opacity; outside, the nearest
   * edge's.
   */
  float sample(float x, float y, float[] into) {
    float u = (float) ((x - left) * pxPerMm);
    float v = (float) ((y - low) * pxPerMm);
    int column = Math.max(0, Math.min(columns - 2, (int) u));
    int row = Math.max(0, Math.min(rows - 2, (int) v));
    float right = Math.max(0, Math.min(1, u - column));
    float up = Math.max(0, Math.min(1, v - row));
    float a = (1 - right) * (1 - up);
    float b = right * (1 - up);
    float c = (1 - right) * up;
    float d = right * up;
    int i = 4 * (row * columns + column);
    int j = i + 4 * columns;
    for (int k = 0; k < 3; k++) {
      into[k] += a * rgba[i + k] + b * rgba[i + 4 + k] + c * rgba[j + k] + d * rgba[j + 4 + k];
    }
    return a * rgba[i + 3] + b * rgba[i + 7] + c * rgba[j + 3] + d * rgba[j + 7];
  }
}
