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

/**
 * Estimates how the camera sees the plane by least squares over four parameters (ln f, k, a, b; see
 * {@link PlaneView}) from what cameras are like and from what is seen: places that are known, or
 * what {@link SheetView} knows of a sheet and a ruler. All residuals are in units of their standard
 * uncertainty, so that the inverse normal matrix is the covariance.
 */
public final class PlaneFit {
  /**
   * 35-mm-equivalent focal length where the file does not tell it. Phones' main cameras have 24 to
   * 28 mm, zoomed twice 48 to 56, and files that lost it were often cut as well (common practice).
   * What a guess does to lengths across a tilt goes with f²: with 31 neither end of 24 to 50 is
   * further off than the other, by ratio 35 is the middle.
   */
  private static final double USUAL_FOCAL_35MM = 32;

  private static final double USUAL_FOCAL_SPREAD = 0.25;

  /** EXIF rounds to whole millimetres, crops and stabilisation do the rest. */
  private static final double EXIF_FOCAL_SPREAD = 0.04;

  /** Of k of a camera with the focal length that is expected. */
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

  private static final int LOG_FOCAL = 0;

  private static final int DISTORTION = 1;

  /** Relative change of the sum of squares at which the search ends. */
  private static final double ENOUGH = 1e-6;

  private final PlaneView start;

  /** Standard deviation of each parameter among cameras; 0 for one that is not sought. */
  private final double[] spread;

  private PlaneFit(PlaneView start, double[] spread) {
    this.start = start;
    this.spread = spread;
  }

  /** The view and its covariance (ln f, k, a, b, and the principal point). */
  public record Result(PlaneView view, double[][] covariance) {}

  /**
   * Where the sum of squares is least.
   *
   * @param point the parameters that are sought
   * @param covariance of these
   * @param sumOfSquares of what is seen and of how far the camera is from a usual one
   * @param converged false for places that no camera sees so; all else then means nothing
   */
  record Optimum(
      PlaneView view,
      double[] point,
      double[][] covariance,
      double sumOfSquares,
      boolean converged) {}

  /** A fit in which nothing but what cameras are like is known yet, of a picture that is whole. */
  static PlaneFit ofCamera(int widthPx, int heightPx, OptionalDouble focal35) {
    double[] spread = {
      focal35.isPresent() ? EXIF_FOCAL_SPREAD : USUAL_FOCAL_SPREAD,
      DISTORTION_SPREAD,
      TILT_SPREAD,
      TILT_SPREAD,
      0,
      0
    };
    return new PlaneFit(start(widthPx, heightPx, focal35), spread);
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
    PlaneFit fit = new PlaneFit(start(widthPx, heightPx, focal35), spread);
    Optimum best = fit.solve(view -> inSigmas(known, view));
    return best.converged()
        ? new Result(best.view(), padded(best.covariance()))
        : new Result(fit.start, fit.prior());
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

  PlaneView start() {
    return start;
  }

  /** The view with these values of the parameters that are sought. */
  PlaneView view(double[] sought) {
    return start.with(all(sought));
  }

  private double[] all(double[] sought) {
    double[] p = start.parameters();
    System.arraycopy(sought, 0, p, 0, sought.length);
    return p;
  }

  /** Fits to what is seen: residuals of a view in units of their uncertainty. */
  Optimum solve(Function<PlaneView, double[]> seen) {
    return solve(seen, start, new LevenbergMarquardtOptimizer());
  }

  /** The same, from a view that is nearly it, to a hundredth of its uncertainty. */
  Optimum solve(Function<PlaneView, double[]> seen, PlaneView from) {
    return solve(
        seen,
        from,
        new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(ENOUGH)
            .withParameterRelativeTolerance(ENOUGH));
  }

  private Optimum solve(
      Function<PlaneView, double[]> seen, PlaneView from, LevenbergMarquardtOptimizer optimizer) {
    double[] p0 = Arrays.copyOf(from.parameters(), sought());
    int n = residuals(seen, p0).length;
    MultivariateJacobianFunction model =
        point -> {
          double[] p = point.toArray();
          double[] r = residuals(seen, p);
          double[][] j = new double[r.length][p.length];
          for (int k = 0; k < p.length; k++) {
            double h = k < PARAMETERS - 2 ? 1e-6 : 1e-2;
            double[] q = p.clone();
            q[k] += h;
            double[] up = residuals(seen, q);
            q[k] = p[k] - h;
            double[] down = residuals(seen, q);
            for (int i = 0; i < r.length; i++) {
              j[i][k] = (up[i] - down[i]) / (2 * h);
            }
          }
          return new Pair<>(new ArrayRealVector(r, false), new Array2DRowRealMatrix(j, false));
        };
    try {
      LeastSquaresOptimizer.Optimum best =
          optimizer.optimize(
              new LeastSquaresBuilder()
                  .start(p0)
                  .model(model)
                  .target(new double[n])
                  .weight(new DiagonalMatrix(ones(n)))
                  .maxEvaluations(500)
                  .maxIterations(200)
                  .build());
      double[] point = best.getPoint().toArray();
      return new Optimum(
          view(point),
          point,
          best.getCovariances(1e-12).getData(),
          best.getResiduals().dotProduct(best.getResiduals()),
          true);
    } catch (MathIllegalStateException | MathIllegalArgumentException e) {
      return new Optimum(start, p0, prior(), Double.POSITIVE_INFINITY, false);
    }
  }

  /** With noughts for the parameters that were not sought. */
  static double[][] padded(double[][] sought) {
    double[][] covariance = new double[PARAMETERS][PARAMETERS];
    for (int i = 0; i < sought.length; i++) {
      System.arraycopy(sought[i], 0, covariance[i], 0, sought.length);
    }
    return covariance;
  }

  /** Covariance of the view before anything is seen. */
  double[][] prior() {
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
  private double[] residuals(Function<PlaneView, double[]> seen, double[] sought) {
    double[] usual = start.parameters();
    double[] places = seen.apply(view(sought));
    double[] r = new double[sought.length + places.length];
    for (int i = 0; i < sought.length; i++) {
      r[i] = (sought[i] - usual[i]) / spread[i];
    }
    // What lenses share is how far they bend the picture's corners, and that goes with k/f²: a
    // prior
    // for k alone would take a lens that distorts for one of shorter focal length.
    r[DISTORTION] *= StrictMath.exp(2 * (usual[LOG_FOCAL] - sought[LOG_FOCAL]));
    System.arraycopy(places, 0, r, sought.length, places.length);
    return r;
  }
}
