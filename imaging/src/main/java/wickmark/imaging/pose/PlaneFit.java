package wickmark.imaging.pose;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DiagonalMatrix;
import org.apache.commons.math3.util.Pair;
import wickmark.imaging.photo.PhotoPoint;

/**
 * Estimates how the camera sees the plane by least squares over four parameters (ln f, k, a, b; see
 * {@link PlaneView}) from what cameras are like, and from either a sheet's corners, which are right
 * angles as well as scissors cut them, and rows of marks, which are straight and evenly divided; or
 * places that are known. All residuals are in units of their standard uncertainty, so that the
 * inverse normal matrix is the covariance.
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

  /** The principal point of a picture that was cut, as a part of the diagonal. */
  private static final double CUT_SPREAD = 0.25;

  /** Where the picture was cut, the focal length that the file says means nothing. */
  private static final double CUT_FOCAL_SPREAD = 0.5;

  private static final int PARAMETERS = 6;

  private final PlaneView start;

  /** Standard deviation of each parameter among cameras; 0 for one that is not sought. */
  private final double[] spread;

  private final Function<PlaneView, double[]> seen;

  private PlaneFit(PlaneView start, double[] spread, Function<PlaneView, double[]> seen) {
    this.start = start;
    this.spread = spread;
    this.seen = seen;
  }

  /**
   * The view and its covariance (ln f, k, a, b, and the principal point).
   *
   * @param fit mean squared residual; about 1 where everything fits together
   */
  public record Result(PlaneView view, double[][] covariance, double fit) {}

  /** Fits to a sheet's corners and rows of marks. */
  public static Result of(PlaneEvidence evidence) {
    OptionalDouble focal35 = evidence.focalLength35mm();
    double[] spread = {
      focal35.isPresent() ? EXIF_FOCAL_SPREAD : USUAL_FOCAL_SPREAD,
      DISTORTION_SPREAD,
      TILT_SPREAD,
      TILT_SPREAD,
      0,
      0
    };
    PlaneView start = start(evidence.widthPx(), evidence.heightPx(), focal35);
    return new PlaneFit(start, spread, view -> squareAndEven(view, evidence)).solve();
  }

  /**
   * Fits to places that are known.
   *
   * @param cut whether the picture may be a part of the one that the camera took, so that its
   *     principal point is to be found too
   */
  public static Result of(
      int widthPx, int heightPx, OptionalDouble focal35, KnownPlaces known, boolean cut) {
    double beside = cut ? CUT_SPREAD * Math.hypot(widthPx, heightPx) : 0;
    double focal =
        cut ? CUT_FOCAL_SPREAD : focal35.isPresent() ? EXIF_FOCAL_SPREAD : USUAL_FOCAL_SPREAD;
    double[] spread = {focal, DISTORTION_SPREAD, TILT_SPREAD, TILT_SPREAD, beside, beside};
    return new PlaneFit(start(widthPx, heightPx, focal35), spread, view -> inSigmas(known, view))
        .solve();
  }

  private static double[] inSigmas(KnownPlaces known, PlaneView view) {
    double[] r = known.misfit(view);
    for (int i = 0; i < r.length; i++) {
      r[i] /= known.sigmaMm();
    }
    return r;
  }

  private static PlaneView start(int widthPx, int heightPx, OptionalDouble focal35) {
    double focal = focal35.orElse(USUAL_FOCAL_35MM);
    double diagonal = Math.hypot(widthPx, heightPx);
    return new PlaneView(
        widthPx / 2.0, heightPx / 2.0, focal * diagonal / FRAME_DIAGONAL_MM, 0, 0, 0);
  }

  /** How many parameters are sought: all but the principal point, or all. */
  private int sought() {
    return spread[PARAMETERS - 1] > 0 ? PARAMETERS : PARAMETERS - 2;
  }

  private double[] all(double[] sought) {
    double[] p = start.parameters();
    System.arraycopy(sought, 0, p, 0, sought.length);
    return p;
  }

  private Result solve() {
    double[] p0 = Arrays.copyOf(start.parameters(), sought());
    int n = residuals(p0).length;
    MultivariateJacobianFunction model =
        point -> {
          double[] p = point.toArray();
          double[] r = residuals(p);
          double[][] j = new double[r.length][p.length];
          for (int k = 0; k < p.length; k++) {
            double h = k < PARAMETERS - 2 ? 1e-6 : 1e-2;
            double[] q = p.clone();
            q[k] += h;
            double[] up = residuals(q);
            q[k] = p[k] - h;
            double[] down = residuals(q);
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
      double[][] covariance = padded(best.getCovariances(1e-12).getData());
      double fit = best.getResiduals().dotProduct(best.getResiduals()) / n;
      return new Result(start.with(all(best.getPoint().toArray())), covariance, fit);
    } catch (MathIllegalStateException | MathIllegalArgumentException e) {
      // Places that no camera sees so: only what cameras are like is known.
      return new Result(start, prior(), Double.POSITIVE_INFINITY);
    }
  }

  /** With noughts for the parameters that were not sought. */
  private static double[][] padded(double[][] sought) {
    double[][] covariance = new double[PARAMETERS][PARAMETERS];
    for (int i = 0; i < sought.length; i++) {
      System.arraycopy(sought[i], 0, covariance[i], 0, sought.length);
    }
    return covariance;
  }

  /** Covariance of the view before anything is seen. */
  private double[][] prior() {
    double[][] covariance = new double[PARAMETERS][PARAMETERS];
    for (int i = 0; i < PARAMETERS; i++) {
      covariance[i][i] = spread[i] * spread[i];
    }
    return covariance;
  }

  private static double[] ones(int n) {
    double[] d = new double[n];
    Arrays.fill(d, 1);
    return d;
  }

  /** What cameras are like, then what is seen. */
  private double[] residuals(double[] sought) {
    double[] usual = start.parameters();
    double[] places = seen.apply(start.with(all(sought)));
    double[] r = new double[sought.length + places.length];
    for (int i = 0; i < sought.length; i++) {
      r[i] = (sought[i] - usual[i]) / spread[i];
    }
    System.arraycopy(places, 0, r, sought.length, places.length);
    return r;
  }

  private static double[] squareAndEven(PlaneView view, PlaneEvidence evidence) {
    int n = 4;
    for (PlaneEvidence.Division d : evidence.divisions()) {
      n += 2 * d.index().length;
    }
    double[] r = new double[n];
    rightAngles(view, evidence, r);
    int at = 4;
    for (PlaneEvidence.Division d : evidence.divisions()) {
      at = evenSpacing(view, d, r, at);
    }
    return r;
  }

  private static void rightAngles(PlaneView view, PlaneEvidence evidence, double[] r) {
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
      r[i] = (angle - Math.PI / 2) / sigma;
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
