package wickmark.imaging.spot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.exception.ConvergenceException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.ValueAndJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import org.jspecify.annotations.Nullable;

/**
 * A sum of peaks fitted to a lane's profile in three colours: shapes by Levenberg-Marquardt, and
 * within each step the amounts by non-negative least squares (variable projection), so that each
 * peak finds its own colour.
 *
 * @param shapes one for each peak
 * @param amount for each peak its height in the three channels, density · mm
 * @param loss weighted sum of squared residuals
 */
record PeakFit(List<PeakShape> shapes, double[][] amount, double loss) {
  /** Relative misfit of the shape that is taken for granted: real spots are no Gaussians. */
  private static final double MODEL_ERROR = 0.035;

  /** Usual standard deviation of a spot's flank, mm, and its spread (natural logarithm). */
  private static final double USUAL_FLANK = 2.3;

  private static final double LOG_USUAL_FLANK = StrictMath.log(USUAL_FLANK);

  private static final double FLANK_SPREAD = 0.6;
  private static final double ASYMMETRY_SPREAD = 0.35;

  /** Weight of what is usual: as that of a dozen samples, since neighbours are not independent. */
  private static final double PRIOR = 4;

  /** Of a shape: its centre and the logarithms of its two flanks. */
  private static final int PARAMETERS = 3;

  PeakFit {
    shapes = List.copyOf(shapes);
  }

  /** Fits peaks that start from the given shapes. */
  static PeakFit of(LaneProfile profile, List<PeakShape> start) {
    if (start.isEmpty()) {
      return evaluate(profile, start, weights(profile));
    }
    double[] weight = weights(profile);
    double[] p = encode(start);
    ShapeModel model = new ShapeModel(profile, start, weight);
    try {
      new LevenbergMarquardtOptimizer()
          .withCostRelativeTolerance(1e-5)
          .withParameterRelativeTolerance(1e-5)
          .optimize(
              new LeastSquaresBuilder()
                  .start(p)
                  .model(model)
                  .target(new double[3 * profile.size() + p.length])
                  .lazyEvaluation(true)
                  .maxEvaluations(150)
                  .maxIterations(40)
                  .build());
    } catch (TooManyEvaluationsException | TooManyIterationsException | ConvergenceException e) {
      // The best shapes met on the way are taken; their loss tells how good they are.
      return evaluate(profile, decode(model.best, start), weight);
    }
    return evaluate(profile, decode(model.best, start), weight);
  }

  /** Residuals and their derivatives; it remembers the best point that it was asked for. */
  private static final class ShapeModel implements ValueAndJacobianFunction {
    private final LaneProfile profile;
    private final List<PeakShape> start;
    private final double[] weight;
    private double[] best;
    private double least = Double.POSITIVE_INFINITY;
    private @Nullable Point last;

    private record Point(double[] at, ShapeBasis basis, double[] residuals) {}

    ShapeModel(LaneProfile profile, List<PeakShape> start, double[] weight) {
      this.profile = profile;
      this.start = start;
      this.weight = weight;
      this.best = encode(start);
    }

    @Override
    public Pair<RealVector, RealMatrix> value(RealVector point) {
      return new Pair<>(computeValue(point.toArray()), computeJacobian(point.toArray()));
    }

    @Override
    public RealVector computeValue(double[] at) {
      double[] r = at(at).residuals;
      double sum = 0;
      for (double v : r) {
        sum += v * v;
      }
      if (sum < least) {
        least = sum;
        best = at.clone();
      }
      return new ArrayRealVector(r);
    }

    /** What there is at a point: of the last one the optimizer asks for the Jacobian, too. */
    private Point at(double[] at) {
      if (last == null || !Arrays.equals(last.at, at)) {
        ShapeBasis basis = new ShapeBasis(profile, decode(at, start), weight);
        last = new Point(at.clone(), basis, residuals(profile, at, basis, weight));
      }
      return last;
    }

    @Override
    public RealMatrix computeJacobian(double[] at) {
      Point here = at(at);
      ShapeBasis basis = here.basis;
      double[] r = here.residuals;
      double[][] j = new double[r.length][at.length];
      for (int k = 0; k < at.length; k++) {
        double h = 1e-4;
        double[] q = at.clone();
        q[k] += h;
        int peak = k / PARAMETERS;
        ShapeBasis changed = basis.with(peak, decode(q, start).get(peak));
        double[] up = residuals(profile, q, changed, weight);
        for (int i = 0; i < r.length; i++) {
          j[i][k] = (up[i] - r[i]) / h;
        }
      }
      return new Array2DRowRealMatrix(j, false);
    }
  }

  private static PeakFit evaluate(LaneProfile profile, List<PeakShape> shapes, double[] weight) {
    ShapeBasis basis = new ShapeBasis(profile, shapes, weight);
    double[][] amount = new double[shapes.size()][3];
    double loss = 0;
    for (int c = 0; c < 3; c++) {
      double[] a = basis.amounts(c);
      for (int j = 0; j < a.length; j++) {
        amount[j][c] = a[j];
      }
      double[] left = basis.residuals(c, a);
      for (int k = 0; k < left.length; k++) {
        loss += weight[k] * left[k] * left[k];
      }
    }
    return new PeakFit(shapes, amount, loss);
  }

  /** Inverse variances: noise, and what no smooth shape can follow. */
  private static double[] weights(LaneProfile profile) {
    double[] total = profile.total(1.0);
    double most = 0;
    for (double t : total) {
      most = Math.max(most, t / 3);
    }
    double[] weight = new double[profile.size()];
    for (int k = 0; k < weight.length; k++) {
      double model = MODEL_ERROR * Math.max(0, total[k] / 3) + 0.004 * most;
      weight[k] = 1 / (profile.noise()[k] * profile.noise()[k] + model * model);
    }
    return weight;
  }

  private static double[] encode(List<PeakShape> shapes) {
    double[] p = new double[PARAMETERS * shapes.size()];
    for (int j = 0; j < shapes.size(); j++) {
      PeakShape s = shapes.get(j);
      p[PARAMETERS * j] = s.centre();
      p[PARAMETERS * j + 1] = StrictMath.log(s.ahead());
      p[PARAMETERS * j + 2] = StrictMath.log(s.behind());
    }
    return p;
  }

  private static List<PeakShape> decode(double[] p, List<PeakShape> start) {
    List<PeakShape> shapes = new ArrayList<>();
    for (int j = 0; j < p.length / PARAMETERS; j++) {
      double ahead = StrictMath.exp(Math.max(-1.2, Math.min(2.6, p[PARAMETERS * j + 1])));
      double behind = StrictMath.exp(Math.max(-1.2, Math.min(2.6, p[PARAMETERS * j + 2])));
      shapes.add(new PeakShape(p[PARAMETERS * j], ahead, behind, start.get(j).streak()));
    }
    return shapes;
  }

  private static double[] residuals(
      LaneProfile profile, double[] p, ShapeBasis basis, double[] weight) {
    int n = profile.size();
    double[] r = new double[3 * n + p.length];
    for (int c = 0; c < 3; c++) {
      double[] left = basis.residuals(c, basis.amounts(c));
      for (int k = 0; k < n; k++) {
        r[c * n + k] = left[k] * Math.sqrt(weight[k]);
      }
    }
    for (int j = 0; j < p.length / PARAMETERS; j++) {
      double ahead = p[PARAMETERS * j + 1];
      double behind = p[PARAMETERS * j + 2];
      r[3 * n + PARAMETERS * j + 1] =
          PRIOR * ((ahead + behind) / 2 - LOG_USUAL_FLANK) / FLANK_SPREAD;
      r[3 * n + PARAMETERS * j + 2] = PRIOR * (ahead - behind) / ASYMMETRY_SPREAD;
    }
    return r;
  }

  /** What is left of the profile, all channels: positive where dye is not accounted for. */
  double[] unexplained(LaneProfile profile) {
    ShapeBasis basis = new ShapeBasis(profile, shapes, weights(profile));
    double[] left = new double[profile.size()];
    for (int c = 0; c < 3; c++) {
      double[] a = new double[amount.length];
      for (int j = 0; j < a.length; j++) {
        a[j] = amount[j][c];
      }
      double[] beyond = basis.residuals(c, a);
      for (int k = 0; k < left.length; k++) {
        left[k] += Math.max(0, beyond[k]);
      }
    }
    return left;
  }

  /** Angle between the colours of two peaks, radians, in the space of the three densities. */
  double colourAngle(int i, int j) {
    return angle(amount[i], amount[j]);
  }

  /** Angle between two colours, radians, in the space of the three densities. */
  static double angle(double[] one, double[] other) {
    double dot = 0;
    double a = 0;
    double b = 0;
    for (int c = 0; c < one.length; c++) {
      dot += one[c] * other[c];
      a += one[c] * one[c];
      b += other[c] * other[c];
    }
    return StrictMath.acos(Math.min(1, dot / Math.sqrt(Math.max(1e-12, a * b))));
  }

  /** Height of the highest peak; 0 without any. */
  double highest() {
    return IntStream.range(0, shapes.size()).mapToDouble(this::height).max().orElse(0);
  }

  /** A peak's height, the norm over the three channels. */
  double height(int j) {
    double[] a = amount[j];
    return Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
  }
}
