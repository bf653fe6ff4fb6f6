package wickmark.imaging.paper;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Selection;

/**
 * How the paper's tint changes over a sheet in mixed light: a plane through a channel's light
 * against the guide's. What is stained has less and is left out step by step.
 *
 * @param level at the first cell
 * @param across change from one column to the next
 * @param down change from one row to the next
 */
record TintPlane(double level, double across, double down) {
  private static final int ROUNDS = 5;

  /** Standard deviations below the plane from which a place may be stained. */
  private static final double STAINED = 1.5;

  /** Standard deviations above it beyond which a place is no paper either. */
  private static final double TOO_BRIGHT = 3;

  /** Least standard deviation that is believed. */
  private static final double LEAST = 0.002;

  /**
   * Fits the plane.
   *
   * @param channel the channel's light less the guide's, log light
   * @param valid above 0 for the places that count
   */
  static TintPlane of(Raster channel, Raster valid) {
    int w = channel.width();
    double[] plane = new double[3];
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    double[] off = new double[channel.cells().length];
    for (int round = 0; round < ROUNDS; round++) {
      double[][] normal = new double[3][3];
      double[] right = new double[3];
      double[] at = {1, 0, 0};
      for (int i = 0; i < off.length; i++) {
        int row = i / w;
        at[1] = i % w;
        at[2] = row;
        double value = channel.cells()[i];
        double residual = value - plane[0] - plane[1] * at[1] - plane[2] * at[2];
        if (valid.cells()[i] > 0 && residual > low && residual < high) {
          for (int j = 0; j < 3; j++) {
            right[j] += at[j] * value;
            for (int k = 0; k < 3; k++) {
              normal[j][k] += at[j] * at[k];
            }
          }
        }
      }
      try {
        RealVector solved =
            new QRDecomposition(new Array2DRowRealMatrix(normal, false), 1e-9)
                .getSolver()
                .solve(new ArrayRealVector(right, false));
        plane = solved.toArray();
      } catch (SingularMatrixException tooFewPlaces) {
        return new TintPlane(0, 0, 0);
      }
      double spread = spread(channel, valid, plane, off);
      low = -STAINED * spread;
      high = TOO_BRIGHT * spread;
    }
    return new TintPlane(plane[0], plane[1], plane[2]);
  }

  private static double spread(Raster channel, Raster valid, double[] plane, double[] off) {
    int w = channel.width();
    int n = 0;
    for (int i = 0; i < channel.cells().length; i++) {
      if (valid.cells()[i] > 0) {
        int row = i / w;
        double at = plane[0] + plane[1] * (i % w) + plane[2] * row;
        off[n++] = Math.abs(channel.cells()[i] - at);
      }
    }
    return n == 0 ? LEAST : Math.max(LEAST, 1.4826 * Selection.median(off, n));
  }

  /** Leaves what a channel has above the plane. */
  void takeOff(Raster channel) {
    for (int y = 0; y < channel.height(); y++) {
      for (int x = 0; x < channel.width(); x++) {
        channel.set(x, y, (float) (channel.at(x, y) - at(x, y)));
      }
    }
  }

  /** The plane at a column and row. */
  double at(int column, int row) {
    return level + across * column + down * row;
  }
}
