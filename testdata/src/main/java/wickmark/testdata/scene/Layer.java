package wickmark.testdata.scene;

/** Something seen in the picture, in its own millimetres. */
interface Layer {

  /**
   * Puts into {@code uvs} the layer's own coordinates seen at a pixel, and how brightly its surface
   * faces the light there (1 for lying flat).
   */
  void locate(double px, double py, double[] uvs);

  /** Returns whether any of the layer may lie in a box of its own coordinates. */
  boolean mayLieIn(double uLow, double uHigh, double vLow, double vHigh);

  /**
   * Adds what is seen at a place of its own coordinates, and returns how opaque it is: 0 where the
   * layer is not, 1 where nothing shines through.
   *
   * @param into red, green and blue reflectance, times the opacity, are added
   */
  float sample(float u, float v, float[] into);
}
