package wickmark.testdata.scene;

import wickmark.testdata.truth.PointPx;

/**
 * How places become pixels. World coordinates are millimetres: x right and y up over the desk as
 * seen from above, z from the desk towards the camera.
 */
interface Camera {

  /** Returns where a place is seen. */
  PointPx project(double x, double y, double z);

  /** Puts into {@code xy} the place at height z that is seen at a pixel. */
  void placeAt(double px, double py, double z, double[] xy);
}
