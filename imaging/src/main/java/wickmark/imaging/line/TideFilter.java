package wickmark.imaging.line;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;

/**
 * One density out of three in which a tide mark stands out best from this paper's own texture and
 * noise: the linear combination of least variance that answers 1 to the mark's colour and little to
 * grey (a linearly constrained minimum-variance filter).
 */
final class TideFilter {
  /** What solvent washes out of paper absorbs blue most and red least (common practice). */
  private static final double[] BROWN = {0.45, 0.65, 1.0};

  /** Answer to a grey mark of density 1: folds and shadows are grey. */
  private static final double GREY_ANSWER = 0.25;

  private TideFilter() {}

  /**
   * Returns the combined density, smoothed.
   *
   * @param sigma smoothing, cells
   */
  static Raster apply(DensityMap map, double sigma) {
    return combined(map, smoothed(map, sigma), sigma);
  }

  /** The three channels smoothed; sigma in cells. */
  static Raster[] smoothed(DensityMap map, double sigma) {
    Raster[] smooth = new Raster[3];
    for (int c = 0; c < 3; c++) {
      smooth[c] = Smoothing.gaussian(map.density()[c], Math.max(0.5, sigma));
    }
    return smooth;
  }

  /** Combines channels that were smoothed before. */
  static Raster combined(DensityMap map, Raster[] smooth, double sigma) {
    double[] w = weights(covariance(map, smooth, (int) Math.max(2, Math.round(4 * sigma))));
    Raster out = new Raster(map.width(), map.height());
    for (int i = 0; i < out.cells().length; i++) {
      out.cells()[i] =
          (float)
              (w[0] * smooth[0].cells()[i]
                  + w[1] * smooth[1].cells()[i]
                  + w[2] * smooth[2].cells()[i]);
    }
    return out;
  }

  /** Of the differences along rows, where neither place is dyed or pencilled. */
  private static double[][] covariance(DensityMap map, Raster[] smooth, int step) {
    double[][] sum = new double[3][3];
    int n = 0;
    for (int y = 0; y < map.height(); y += 3) {
      for (int x = 0; x + step < map.width(); x += 3) {
        if (map.paper().at(x, y) == 0 || map.paper().at(x + step, y) == 0) {
          continue;
        }
        double[] d = new double[3];
        double most = 0;
        for (int c = 0; c < 3; c++) {
          d[c] = smooth[c].at(x + step, y) - smooth[c].at(x, y);
          most = Math.max(most, Math.abs(d[c]));
        }
        if (most > 0.03) {
          continue;
        }
        n++;
        for (int i = 0; i < 3; i++) {
          for (int j = 0; j < 3; j++) {
            sum[i][j] += d[i] * d[j];
          }
        }
      }
    }
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        sum[i][j] /= Math.max(1, n);
      }
      sum[i][i] += 1e-7;
    }
    return sum;
  }

  private static double[] weights(double[][] covariance) {
    RealMatrix system = new Array2DRowRealMatrix(5, 5);
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        system.setEntry(i, j, covariance[i][j] * 1e4);
      }
      system.setEntry(i, 3, BROWN[i]);
      system.setEntry(3, i, BROWN[i]);
      system.setEntry(i, 4, 1);
      system.setEntry(4, i, 1);
    }
    RealVector right = new ArrayRealVector(new double[] {0, 0, 0, 1, GREY_ANSWER});
    try {
      double[] w = new LUDecomposition(system).getSolver().solve(right).toArray();
      return new double[] {w[0], w[1], w[2]};
    } catch (SingularMatrixException e) {
      // A grey picture has no hue: take the mean of the channels.
      return new double[] {0.48, 0.48, 0.47};
    }
  }
}
