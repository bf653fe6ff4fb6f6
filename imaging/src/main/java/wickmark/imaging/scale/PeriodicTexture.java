package wickmark.imaging.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Looks all over a picture for patches of parallel, evenly spaced strokes: the structure tensor
 * gives the direction across the strokes, the autocorrelation of a profile in that direction gives
 * their spacing.
 */
final class PeriodicTexture {
  /** Side of a block in pixels; a patch is three blocks wide, about as long as a tick. */
  static final int BLOCK = 8;

  /** Half length of a profile in pixels: holds three periods of the widest spacing looked for. */
  private static final int REACH = 36;

  private static final int LEAST_PITCH = 3;
  private static final int MOST_PITCH = 24;

  /** Profiles are averages over lines this far to both sides, in pixels. */
  private static final int[] ASIDE = {-6, -4, -2, 0, 2, 4, 6};

  /** Least mean weight of the gradients, in grey levels: below it is noise of a good picture. */
  private static final double LEAST_GRADIENT = 0.5;

  /** Gradient between the pixels on both sides, grey levels, below which it is noise. */
  private static final double LEAST_EDGE = 2;

  private static final double LEAST_COHERENCE = 0.35;
  private static final double LEAST_CORRELATION = 0.5;

  private final Luminance plane;
  private final int columns;
  private final int rows;

  PeriodicTexture(Luminance plane) {
    this.plane = plane;
    this.columns = plane.width() / BLOCK;
    this.rows = plane.height() / BLOCK;
  }

  /** Returns the patches; every other block is looked at first, then the neighbours of finds. */
  List<PeriodicCell> cells() {
    double[][] tensor = tensors();
    @Nullable PeriodicCell[] grid = new PeriodicCell[columns * rows];
    IntStream.range(1, Math.max(1, rows - 1))
        .parallel()
        .forEach(
            r -> {
              for (int c = 1 + r % 2; c < columns - 1; c += 2) {
                grid[r * columns + c] = cell(tensor, c, r);
              }
            });
    List<PeriodicCell> found = new ArrayList<>();
    for (int r = 1; r < rows - 1; r++) {
      for (int c = 1; c < columns - 1; c++) {
        int at = r * columns + c;
        PeriodicCell cell = grid[at];
        if ((c + r) % 2 == 0 && hasNeighbour(grid, at)) {
          cell = cell(tensor, c, r);
        }
        if (cell != null) {
          found.add(cell);
        }
      }
    }
    return found;
  }

  private boolean hasNeighbour(@Nullable PeriodicCell[] grid, int at) {
    return grid[at - 1] != null
        || grid[at + 1] != null
        || grid[at - columns] != null
        || grid[at + columns] != null;
  }

  private @Nullable PeriodicCell cell(double[][] tensor, int column, int row) {
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int j = row - 1; j <= row + 1; j++) {
      for (int i = column - 1; i <= column + 1; i++) {
        int at = j * columns + i;
        xx += tensor[0][at];
        xy += tensor[1][at];
        yy += tensor[2][at];
      }
    }
    double trace = xx + yy;
    double spread = Math.sqrt((xx - yy) * (xx - yy) + 4 * xy * xy);
    if (trace <= LEAST_GRADIENT * 9 * BLOCK * BLOCK || spread <= LEAST_COHERENCE * trace) {
      return null;
    }
    double angle = 0.5 * StrictMath.atan2(2 * xy, xx - yy);
    return periodicity(column, row, angle < 0 ? angle + Math.PI : angle);
  }

  /** Sums g gT / |g| per block: a strong ruler edge then counts no more than several ticks. */
  private double[][] tensors() {
    double[][] tensor = new double[3][columns * rows];
    IntStream.range(0, rows).parallel().forEach(row -> addTensors(row, tensor));
    return tensor;
  }

  private void addTensors(int row, double[][] tensor) {
    int right = Math.min(columns * BLOCK, plane.width() - 1);
    int bottom = Math.min((row + 1) * BLOCK, plane.height() - 1);
    float[] pixels = plane.pixels();
    int w = plane.width();
    for (int y = Math.max(1, row * BLOCK); y < bottom; y++) {
      for (int column = 0; column < columns; column++) {
        int at = row * columns + column;
        double xx = tensor[0][at];
        double xy = tensor[1][at];
        double yy = tensor[2][at];
        int to = y * w + Math.min(right, (column + 1) * BLOCK);
        for (int i = y * w + Math.max(1, column * BLOCK); i < to; i++) {
          double gx = pixels[i + 1] - pixels[i - 1];
          double gy = pixels[i + w] - pixels[i - w];
          double square = gx * gx + gy * gy;
          if (square > LEAST_EDGE * LEAST_EDGE) {
            double size = Math.sqrt(square);
            xx += gx * gx / size;
            xy += gx * gy / size;
            yy += gy * gy / size;
          }
        }
        tensor[0][at] = xx;
        tensor[1][at] = xy;
        tensor[2][at] = yy;
      }
    }
  }

  private @Nullable PeriodicCell periodicity(int column, int row, double angle) {
    double x = (column + 0.5) * BLOCK;
    double y = (row + 0.5) * BLOCK;
    double dx = StrictMath.cos(angle);
    double dy = StrictMath.sin(angle);
    double[] profile = profile(x, y, dx, dy);
    double[] correlation = new double[MOST_PITCH + 2];
    double[] sums = new double[profile.length + 1];
    double[] squares = new double[profile.length + 1];
    for (int i = 0; i < profile.length; i++) {
      sums[i + 1] = sums[i] + profile[i];
      squares[i + 1] = squares[i] + profile[i] * profile[i];
    }
    for (int lag = 1; lag <= MOST_PITCH + 1; lag++) {
      correlation[lag] = correlation(profile, sums, squares, lag);
    }
    int lag = firstPeriod(correlation);
    if (lag == 0) {
      return null;
    }
    double bend = correlation[lag - 1] - 2 * correlation[lag] + correlation[lag + 1];
    double shift = bend < 0 ? 0.5 * (correlation[lag - 1] - correlation[lag + 1]) / bend : 0;
    return new PeriodicCell(column, row, x, y, angle, lag + shift, correlation[lag]);
  }

  /** Returns the smallest lag whose peak comes near the highest, or 0 where nothing repeats. */
  private static int firstPeriod(double[] correlation) {
    double highest = 0;
    boolean dipped = false;
    boolean[] peak = new boolean[correlation.length];
    for (int lag = 2; lag < correlation.length - 1; lag++) {
      dipped |= correlation[lag] < 0;
      if (lag >= LEAST_PITCH
          && dipped
          && correlation[lag] >= correlation[lag - 1]
          && correlation[lag] > correlation[lag + 1]) {
        peak[lag] = true;
        highest = Math.max(highest, correlation[lag]);
      }
    }
    if (highest >= LEAST_CORRELATION) {
      for (int lag = LEAST_PITCH; lag < correlation.length; lag++) {
        if (peak[lag] && correlation[lag] >= 0.85 * highest) {
          return lag;
        }
      }
    }
    return 0;
  }

  /** Averages over parallel lines, pixel by pixel: between seven lines rounding evens out. */
  private double[] profile(double x, double y, double dx, double dy) {
    double[] profile = new double[2 * REACH + 1];
    int right = plane.width() - 1;
    int bottom = plane.height() - 1;
    float[] pixels = plane.pixels();
    int w = plane.width();
    double mean = plane.at(x, y);
    double far = REACH + Math.abs(ASIDE[0]) + 1;
    boolean inside = x > far && y > far && x < right - far && y < bottom - far;
    for (int aside : ASIDE) {
      double px = x - aside * dy - REACH * dx;
      double py = y + aside * dx - REACH * dy;
      for (int t = 0; t < profile.length; t++) {
        int ix = (int) px;
        int iy = (int) py;
        if (!inside) {
          ix = Math.min(Math.max(ix, 0), right);
          iy = Math.min(Math.max(iy, 0), bottom);
        }
        profile[t] += (pixels[iy * w + ix] - mean) / ASIDE.length;
        px += dx;
        py += dy;
      }
    }
    return profile;
  }

  /** Returns Pearson's correlation of the profile with itself {@code lag} pixels on. */
  private static double correlation(double[] profile, double[] sums, double[] squares, int lag) {
    int all = profile.length;
    int n = all - lag;
    double sab = 0;
    for (int i = 0; i < n; i++) {
      sab += profile[i] * profile[i + lag];
    }
    double sa = sums[n];
    double sb = sums[all] - sums[lag];
    double va = squares[n] - sa * sa / n;
    double vb = squares[all] - squares[lag] - sb * sb / n;
    return va > 1e-3 && vb > 1e-3 ? (sab - sa * sb / n) / Math.sqrt(va * vb) : 0;
  }
}
