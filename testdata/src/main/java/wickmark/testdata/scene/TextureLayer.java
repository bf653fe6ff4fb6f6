package wickmark.testdata.scene;

/** The desk: opaque and everywhere. Its own coordinates are the world's. */
final class TextureLayer implements Layer {
  private final Texture texture;
  private final Camera camera;

  TextureLayer(Texture texture, Camera camera) {
    this.texture = texture;
    this.camera = camera;
  }

  @Override
  public void locate(double px, double py, double[] uvs) {
    double[] xy = new double[2];
    camera.placeAt(px, py, 0, xy);
    uvs[0] = xy[0];
    uvs[1] = xy[1];
    uvs[2] = 1;
  }

  @Override
  public boolean mayLieIn(double uLow, double uHigh, double vLow, double vHigh) {
    return true;
  }

  @Override
  public float sample(float u, float v, float[] into) {
    texture.sample(u, v, into);
    return 1;
  }
}
