package wickmark.testdata.scene;

import wickmark.testdata.truth.PointPx;

/**
 * A scanner: true to scale, whatever the height; the picture's top-left corner is the world's
 * origin.
 */
record Flatbed(double pxPerMm) implements Camera {

  @Override
  public PointPx project(double x, double y, double z) {
    return new PointPx(x * pxPerMm, -y * pxPerMm);
  }

  @Override
  public void placeAt(double px, double py, double z, double[] xy) {
    xy[0] = px / pxPerMm;
    xy[1] = -py / pxPerMm;
  }
}
