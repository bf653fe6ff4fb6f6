package wickmark.imaging.pose;

import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DiagonalMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.util.Pair;
import wickmark.imaging.photo.PhotoPoint;

/**
 * Estimates how the camera sees the plane by least squares over four parameters (ln f, k, a, b; see
 * {@link PlaneView}) from: the sheet's corners, which are right angles as well as scissors cut
 * them; rows of marks, which are straight and evenly divided; and what cameras are like. All
 * residuals are in units of their standard uncertainty, so that the inverse normal matrix is the
 * covariance.
 */
public final class PlaneFit {
  /** Standard deviation of a corner's angle from 90° on cut paper: 0.3° (common practice). */
  private static final double SQUARENESS = 0.3 * Math.PI / 180;

  /** 35-mm-equivalent focal length of a phone's main camera: 24 to 50 mm cover what is met. */
  private static final double USUAL_FOCAL_35MM = 29;

  private static final double USUAL_FOCAL_SPREAD = 0.25;

  /** EXIF rounds to whole millimetres, crops and stabilisation do the rest. */
  private static final double EXIF_FOCAL_SPREAD = 0.04;

  private static final double DISTORTION_SPREAD = 0.015;

  /** Tangent of the tilt of a picture taken from above. */
  private static final double TILT_SPREAD = 0.35;

  /** Diagonal of the 36 mm × 24 mm frame. */
  private static final double FRAME_DIAGONAL_MM = 43.267;

  private final PlaneEvidence evidence;
  private final PlaneView start;
  private final double focalSpread;

  private PlaneFit(PlaneEvidence evidence) {
    this.evidence = evidence;
    double diagonal = Math.hypot(evidence.widthPx(), evidence.heightPx());
    boolean known = evidence.focalLength35mm().isPresent();
    double focal35 = known ? evidence.focalLength35mm().getAsDouble() : USUAL_FOCAL_35MM;
    this.focalSpread = known ? EXIF_FOCAL_SPREAD : USUAL_FOCAL_SPREAD;
    this.start =
        new PlaneView(
            evidence.widthPx() / 2.0,
            evidence.heightPx() / 2.0,
            focal35 * diagonal / FRAME_DIAGONAL_MM,
            0,
            0,
            0);
  }

  /**
   * The view and its covariance (ln f, k, a, b).
   *
   * @param fit mean squared residual; about 1 where everything fits together
   */
  public record Result(PlaneView view, double[][] covariance, double fit) {}

  /** Fits. */
  public static Result of(PlaneEvidence evidence) {
    return new PlaneFit(evidence).solve();
  }

  private Result solve() {
    double[] p0 = start.parameters();
    int n = residuals(start).length;
    MultivariateJacobianFunction model =
        point -> {
          double[] p = point.toArray();
          double[] r = residuals(start.with(p));
          double[][] j = new double[r.length][p.length];
          for (int k = 0; k < p.length; k++) {
            double h = 1e-6;
            double[] q = p.clone();
            q[k] += h;
            double[] up = residuals(start.with(q));
            q[k] = p[k] - h;
            double[] down = residuals(start.with(q));
            for (int i = 0; i < r.length; i++) {
              j[i][k] = (up[i] - down[i]) / (2 * h);
            }
          }
          return new Pair<>(new ArrayRealVector(r, false), new Array2DRowRealMatrix(j, false));
        };
    try {
      LeastSquaresOptimizer.Optimum best =
          new LevenbergMarquardtOptimizer()
              .optimize(
                  new LeastSquaresBuilder()
                      .start(p0)
                      .model(model)
                      .target(new double[n])
                      .weight(new DiagonalMatrix(ones(n)))
                      .maxEvaluations(500)
                      .maxIterations(200)
                      .build());
      RealMatrix covariance = best.getCovariances(1e-12);
      double fit = best.getResiduals().dotProduct(best.getResiduals()) / n;
      return new Result(start.with(best.getPoint().toArray()), covariance.getData(), fit);
    } catch (MathIllegalStateException | MathIllegalArgumentException e) {
      // Corners and marks that no camera sees so: only what cameras are like is known.
      return new Result(start, prior(), Double.POSITIVE_INFINITY);
    }
  }

  /** Covariance of the view before anything is seen. */
  private double[][] prior() {
    double[] spread = {focalSpread, DISTORTION_SPREAD, TILT_SPREAD, TILT_SPREAD};
    double[][] covariance = new double[4][4];
    for (int i = 0; i < 4; i++) {
      covariance[i][i] = spread[i] * spread[i];
    }
    return covariance;
  }

  private static double[] ones(int n) {
    double[] d = new double[n];
    java.util.Arrays.fill(d, 1);
    return d;
  }

  private double[] residuals(PlaneView view) {
    int n = 4 + 4;
    for (PlaneEvidence.Division d : evidence.divisions()) {
      n += 2 * d.index().length;
    }
    double[] r = new double[n];
    double[] p = view.parameters();
    r[0] = (p[0] - start.parameters()[0]) / focalSpread;
    r[1] = p[1] / DISTORTION_SPREAD;
    r[2] = p[2] / TILT_SPREAD;
    r[3] = p[3] / TILT_SPREAD;
    rightAngles(view, r, 4);
    int at = 8;
    for (PlaneEvidence.Division d : evidence.divisions()) {
      at = evenSpacing(view, d, r, at);
    }
    return r;
  }

  private void rightAngles(PlaneView view, double[] r, int at) {
    PlanePoint[] c = new PlanePoint[4];
    for (int i = 0; i < 4; i++) {
      c[i] = view.toPlane(evidence.corners().get(i));
    }
    for (int i = 0; i < 4; i++) {
      PlanePoint here = c[i];
      PlanePoint next = c[(i + 1) % 4];
      PlanePoint last = c[(i + 3) % 4];
      double one = StrictMath.atan2(next.y() - here.y(), next.x() - here.x());
      double two = StrictMath.atan2(last.y() - here.y(), last.x() - here.x());
      double angle = Math.abs(two - one);
      if (angle > Math.PI) {
        angle = 2 * Math.PI - angle;
      }
      PhotoPoint a = evidence.corners().get(i);
      PhotoPoint b = evidence.corners().get((i + 1) % 4);
      PhotoPoint z = evidence.corners().get((i + 3) % 4);
      double s1 = evidence.cornerSigmaPx() / Math.hypot(b.x() - a.x(), b.y() - a.y());
      double s2 = evidence.cornerSigmaPx() / Math.hypot(z.x() - a.x(), z.y() - a.y());
      double sigma = Math.sqrt(SQUARENESS * SQUARENESS + 2 * (s1 * s1 + s2 * s2));
      r[at + i] = (angle - Math.PI / 2) / sigma;
    }
  }

  /**
   * The marks' distances from the best straight, evenly divided row, in units of their uncertainty
   * on the plane.
   */
  private static int evenSpacing(PlaneView view, PlaneEvidence.Division d, double[] r, int start) {
    int n = d.index().length;
    EvenRow row = EvenRow.fit(view, d);
    PhotoPoint first = d.at().get(0);
    PhotoPoint last = d.at().get(n - 1);
    double photoLength = Math.hypot(last.x() - first.x(), last.y() - first.y());
    double planeLength = view.toPlane(first).distanceTo(view.toPlane(last));
    double sigma = d.sigmaPx() * planeLength / photoLength;
    int at = start;
    for (int i = 0; i < n; i++) {
      PlanePoint seen = view.toPlane(d.at().get(i));
      PlanePoint even = row.at(d.index()[i]);
      r[at++] = (seen.x() - even.x()) / sigma;
      r[at++] = (seen.y() - even.y()) / sigma;
    }
    return at;
  }
}
