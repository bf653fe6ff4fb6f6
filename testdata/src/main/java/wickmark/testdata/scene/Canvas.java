package wickmark.testdata.scene;

/**
 * A picture in linear light, before the camera's sensor: red, green and blue of pixel after pixel.
 */
final class Canvas {
  final int widthPx;
  final int heightPx;
  final float[] rgb;

  Canvas(int widthPx, int heightPx) {
    this(widthPx, heightPx, new float[3 * widthPx * heightPx]);
  }

  Canvas(int widthPx, int heightPx, float[] rgb) {
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.rgb = rgb;
  }
}
