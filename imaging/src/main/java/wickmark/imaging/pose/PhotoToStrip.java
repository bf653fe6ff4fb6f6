package wickmark.imaging.pose;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import wickmark.imaging.photo.PhotoPoint;

/** The homography that comes nearest to a mapping from the photo to the strip. */
public final class PhotoToStrip {
  private PhotoToStrip() {}

  /**
   * Fits by linear least squares (direct linear transform, last element 1).
   *
   * @param photo places in the photo, at least four
   * @param strip {x, y} on the strip for each
   * @return nine numbers, row by row
   */
  public static List<Double> fit(List<PhotoPoint> photo, List<double[]> strip) {
    double size = 1;
    for (PhotoPoint p : photo) {
      size = Math.max(size, Math.max(Math.abs(p.x()), Math.abs(p.y())));
    }
    double[][] a = new double[2 * photo.size()][8];
    double[] b = new double[2 * photo.size()];
    for (int i = 0; i < photo.size(); i++) {
      double x = photo.get(i).x() / size;
      double y = photo.get(i).y() / size;
      double u = strip.get(i)[0];
      double v = strip.get(i)[1];
      a[2 * i] = new double[] {x, y, 1, 0, 0, 0, -u * x, -u * y};
      b[2 * i] = u;
      a[2 * i + 1] = new double[] {0, 0, 0, x, y, 1, -v * x, -v * y};
      b[2 * i + 1] = v;
    }
    double[] h =
        new QRDecomposition(new Array2DRowRealMatrix(a, false))
            .getSolver()
            .solve(new ArrayRealVector(b, false))
            .toArray();
    List<Double> out = new ArrayList<>();
    double[] scale = {1 / size, 1 / size, 1, 1 / size, 1 / size, 1, 1 / size, 1 / size};
    for (int i = 0; i < 8; i++) {
      out.add(h[i] * scale[i]);
    }
    out.add(1.0);
    return out;
  }
}
