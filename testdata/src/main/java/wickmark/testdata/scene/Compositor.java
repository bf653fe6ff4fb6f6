package wickmark.testdata.scene;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Looks at the layers through every pixel. Where a layer lies is worked out exactly at the corners
 * of small blocks and joined in between, which errs by less than a thousandth of a pixel; each
 * pixel then is the mean of several looks.
 */
final class Compositor {
  private static final int BLOCK = 8;

  private final List<Layer> layers;
  private final Illumination light;
  private final List<Shadows> shadows;
  private final int looks;

  /**
   * @param layers from the uppermost to the desk, which is opaque and everywhere
   * @param shadows on each of the layers
   * @param looks looks per pixel in each direction
   */
  Compositor(List<Layer> layers, Illumination light, List<Shadows> shadows, int looks) {
    this.layers = List.copyOf(layers);
    this.light = light;
    this.shadows = List.copyOf(shadows);
    this.looks = looks;
  }

  Canvas compose(int widthPx, int heightPx) {
    Canvas canvas = new Canvas(widthPx, heightPx);
    int bands = (heightPx + BLOCK - 1) / BLOCK;
    IntStream.range(0, bands).parallel().forEach(band -> band(canvas, band * BLOCK));
    return canvas;
  }

  private void band(Canvas canvas, int top) {
    int across = (canvas.widthPx + BLOCK - 1) / BLOCK;
    double[][][] grids = new double[layers.size()][2 * (across + 1)][3];
    for (int l = 0; l < layers.size(); l++) {
      for (int i = 0; i <= across; i++) {
        layers.get(l).locate(i * BLOCK, top, grids[l][i]);
        layers.get(l).locate(i * BLOCK, top + BLOCK, grids[l][across + 1 + i]);
      }
    }
    for (int block = 0; block < across; block++) {
      double[][][] corners = new double[layers.size()][][];
      for (int l = 0; l < layers.size(); l++) {
        double[][] g = grids[l];
        corners[l] =
            new double[][] {g[block], g[block + 1], g[across + 1 + block], g[across + 2 + block]};
      }
      new Block(canvas, block * BLOCK, top, corners).draw();
    }
  }

  /** One block of pixels, and the layers that may be seen in it. */
  private final class Block {
    private final Canvas canvas;
    private final int left;
    private final int top;
    private final double[][][] corners;
    private final int[] seen;
    private final boolean[] shaded;
    private final float[] onDesk = new float[3];
    private final float[] colour = new float[3];
    private final float[] sum = new float[3];
    private final float[] lit = new float[3];
    private final float[] uvs = new float[3];

    Block(Canvas canvas, int left, int top, double[][][] corners) {
      this.canvas = canvas;
      this.left = left;
      this.top = top;
      this.corners = corners;
      this.seen =
          IntStream.range(0, layers.size())
              .filter(l -> layers.get(l).mayLieIn(low(l, 0), high(l, 0), low(l, 1), high(l, 1)))
              .toArray();
      double[][] desk = corners[layers.size() - 1];
      double reach = 12 + StrictMath.hypot(desk[3][0] - desk[0][0], desk[3][1] - desk[0][1]);
      this.shaded = new boolean[layers.size()];
      for (int l : seen) {
        shaded[l] = shadows.get(l).anyNear(desk[0][0], desk[0][1], reach);
      }
    }

    private double low(int layer, int k) {
      double[][] c = corners[layer];
      return Math.min(Math.min(c[0][k], c[1][k]), Math.min(c[2][k], c[3][k]));
    }

    private double high(int layer, int k) {
      double[][] c = corners[layer];
      return Math.max(Math.max(c[0][k], c[1][k]), Math.max(c[2][k], c[3][k]));
    }

    void draw() {
      int bottom = Math.min(top + BLOCK, canvas.heightPx);
      int right = Math.min(left + BLOCK, canvas.widthPx);
      for (int y = top; y < bottom; y++) {
        for (int x = left; x < right; x++) {
          pixel(x, y);
        }
      }
    }

    private void pixel(int x, int y) {
      sum[0] = 0;
      sum[1] = 0;
      sum[2] = 0;
      for (int j = 0; j < looks; j++) {
        for (int i = 0; i < looks; i++) {
          look((x - left + (i + 0.5f) / looks) / BLOCK, (y - top + (j + 0.5f) / looks) / BLOCK);
        }
      }
      int desk = layers.size() - 1;
      place(desk, (x - left + 0.5f) / BLOCK, (y - top + 0.5f) / BLOCK, uvs);
      light.at(uvs[0], uvs[1], lit);
      int target = 3 * (y * canvas.widthPx + x);
      for (int c = 0; c < 3; c++) {
        canvas.rgb[target + c] = sum[c] * lit[c] / (looks * looks);
      }
    }

    private void look(float s, float t) {
      float through = 1;
      for (int l : seen) {
        place(l, s, t, uvs);
        colour[0] = 0;
        colour[1] = 0;
        colour[2] = 0;
        float opacity = layers.get(l).sample(uvs[0], uvs[1], colour);
        if (opacity > 0) {
          float bright = through * uvs[2];
          if (shaded[l]) {
            place(layers.size() - 1, s, t, onDesk);
            bright *= shadows.get(l).reaching(onDesk[0], onDesk[1]);
          }
          sum[0] += bright * colour[0];
          sum[1] += bright * colour[1];
          sum[2] += bright * colour[2];
          through *= 1 - opacity;
          if (through < 0.004f) {
            return;
          }
        }
      }
    }

    private void place(int layer, float s, float t, float[] into) {
      double[][] c = corners[layer];
      for (int k = 0; k < 3; k++) {
        double up = c[0][k] + s * (c[1][k] - c[0][k]);
        double down = c[2][k] + s * (c[3][k] - c[2][k]);
        into[k] = (float) (up + t * (down - up));
      }
    }
  }
}
