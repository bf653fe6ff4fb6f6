package wickmark.imaging.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.imaging.raster.ColourRaster;
import wickmark.imaging.raster.Raster;

/** Painted sheets as regions, against the geometry they were painted with. */
class PaperRegionsTest {
  private static final int WIDTH = 900;
  private static final int HEIGHT = 700;

  /** A place of the picture belongs to a sheet or not. */
  private interface Sheet {
    boolean contains(double x, double y);
  }

  /** White paper on wood whose grain runs across. */
  private static List<Quad> regions(Sheet sheet) {
    float[][] c = new float[3][WIDTH * HEIGHT];
    for (int y = 0; y < HEIGHT; y++) {
      float grain = (float) (0.08 * Math.sin(y * 0.35) * Math.sin(y * 0.11));
      for (int x = 0; x < WIDTH; x++) {
        boolean paper = sheet.contains(x + 0.5, y + 0.5);
        c[0][y * WIDTH + x] = paper ? 0.93f : 0.70f + grain;
        c[1][y * WIDTH + x] = paper ? 0.92f : 0.50f + grain;
        c[2][y * WIDTH + x] = paper ? 0.88f : 0.32f + grain;
      }
    }
    return PaperRegions.find(
        new ColourRaster(
            new Raster(WIDTH, HEIGHT, c[0]),
            new Raster(WIDTH, HEIGHT, c[1]),
            new Raster(WIDTH, HEIGHT, c[2])));
  }

  /** Distance of the farthest of some corners from the quad's nearest one. */
  private static double farthest(Quad quad, double[][] corners) {
    double most = 0;
    for (double[] corner : corners) {
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < 4; i++) {
        least = Math.min(least, Math.hypot(quad.x()[i] - corner[0], quad.y()[i] - corner[1]));
      }
      most = Math.max(most, least);
    }
    return most;
  }

  @Test
  void aSheetIsFoundWithItsCorners() {
    List<Quad> quads = regions((x, y) -> x > 300 && x < 520 && y > 120 && y < 600);
    double[][] corners = {{300, 120}, {520, 120}, {520, 600}, {300, 600}};
    // Regions are found in cells of three pixels.
    assertThat(quads).anyMatch(q -> farthest(q, corners) < 6);
  }

  @Test
  void bulgingEndsAndWavySidesDoNoHarm() {
    // A ribbon cut from round paper with scissors: ends of 60 px radius more, sides off by 3 px.
    List<Quad> quads =
        regions(
            (x, y) ->
                Math.abs(x - 400 - 3 * Math.sin(y / 40)) < 50
                    && Math.abs(y - 350) < 250 + 8 * (1 - Math.pow((x - 400) / 50, 2)));
    double[][] corners = {{350, 98}, {450, 98}, {450, 602}, {350, 602}};
    assertThat(quads).anyMatch(q -> farthest(q, corners) < 14);
  }

  @Test
  void aCircleIsNoSheet() {
    assertThat(regions((x, y) -> Math.hypot(x - 450, y - 350) < 180))
        .noneMatch(q -> q.contains(450, 350) && q.area() < 0.5 * WIDTH * HEIGHT);
  }
}
