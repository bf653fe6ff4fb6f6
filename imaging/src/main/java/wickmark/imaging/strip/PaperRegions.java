package wickmark.imaging.strip;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.alg.filter.binary.Contour;
import boofcv.struct.ConnectRule;
import boofcv.struct.image.GrayU8;
import georegression.struct.point.Point2D_I32;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import wickmark.imaging.raster.ColourRaster;

/**
 * Sheets as regions: connected parts of the picture that are lighter, or darker, than a threshold
 * and fill a quadrilateral, at many thresholds. Straight edges are a better sign of a sheet in half
 * shade or on a ground of its own colour; a region needs none, so that hand-cut, bulging and bent
 * sides do no harm, and neither does the grain of the ground.
 *
 * <p>The light of a place is its darkest channel: paper is white, and what it lies on mostly is
 * not.
 */
final class PaperRegions {
  /** Long side of the picture in which regions are looked for, cells. */
  private static final int SIZE = 330;

  private static final int THRESHOLDS = 14;

  /** Least area as a part of the picture's: six strips on one scan still pass. */
  private static final double LEAST_AREA = 0.012;

  /** Least part of the quadrilateral that the region takes. */
  private static final double LEAST_FILLED = 0.86;

  private final ColourRaster picture;
  private final int factor;
  private final int width;
  private final int height;
  private final float[] light;

  private PaperRegions(ColourRaster picture) {
    this.picture = picture;
    this.factor =
        (int) Math.max(1, Math.round(Math.max(picture.width(), picture.height()) / (double) SIZE));
    this.width = Math.max(1, picture.width() / factor);
    this.height = Math.max(1, picture.height() / factor);
    this.light = light();
  }

  /**
   * Returns the quadrilaterals of all regions, in cells of the picture, clockwise. Stable regions
   * come many times.
   */
  static List<Quad> find(ColourRaster picture) {
    return new PaperRegions(picture).quads();
  }

  private float[] light() {
    float[] out = new float[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        float[] sum = new float[3];
        for (int j = 0; j < factor; j++) {
          int row = (y * factor + j) * picture.width();
          for (int i = 0; i < factor; i++) {
            int at = row + x * factor + i;
            sum[0] += picture.red().cells()[at];
            sum[1] += picture.green().cells()[at];
            sum[2] += picture.blue().cells()[at];
          }
        }
        out[y * width + x] = Math.min(sum[0], Math.min(sum[1], sum[2])) / (factor * factor);
      }
    }
    return out;
  }

  private List<Quad> quads() {
    float[] sorted = light.clone();
    Arrays.sort(sorted);
    float low = sorted[(int) (0.01 * (sorted.length - 1))];
    float high = sorted[(int) (0.99 * (sorted.length - 1))];
    List<Quad> quads = new ArrayList<>();
    GrayU8 binary = new GrayU8(width, height);
    for (int t = 1; t <= THRESHOLDS; t++) {
      float threshold = low + (high - low) * t / (THRESHOLDS + 1);
      for (int sign = -1; sign <= 1; sign += 2) {
        for (int i = 0; i < light.length; i++) {
          binary.data[i] = (byte) (sign * (light[i] - threshold) > 0 ? 1 : 0);
        }
        for (Contour contour : BinaryImageOps.contourExternal(binary, ConnectRule.FOUR)) {
          consider(contour.external, quads);
        }
      }
    }
    return quads;
  }

  private void consider(List<Point2D_I32> contour, List<Quad> quads) {
    double area = Math.abs(area(contour));
    double least = LEAST_AREA * width * height;
    if (area < 0.7 * least || area > 0.9 * width * height) {
      return;
    }
    double[][] corners = ConvexOutline.of(contour).reducedToQuad();
    if (corners.length == 0) {
      return;
    }
    double[] x = new double[4];
    double[] y = new double[4];
    for (int i = 0; i < 4; i++) {
      // A contour runs through the middles of the outermost cells.
      x[i] = (corners[i][0] + 0.5) * factor;
      y[i] = (corners[i][1] + 0.5) * factor;
    }
    Quad quad = new Quad(x, y);
    if (quad.area() >= least * factor * factor
        && quad.isConvexClockwise()
        && area * factor * factor > LEAST_FILLED * quad.area()) {
      quads.add(quad);
    }
  }

  /** Area within a contour, holes and all. */
  private static double area(List<Point2D_I32> contour) {
    double sum = 0;
    for (int i = 0; i < contour.size(); i++) {
      Point2D_I32 p = contour.get(i);
      Point2D_I32 q = contour.get((i + 1) % contour.size());
      sum += (double) p.x * q.y - (double) q.x * p.y;
    }
    return sum / 2;
  }
}
