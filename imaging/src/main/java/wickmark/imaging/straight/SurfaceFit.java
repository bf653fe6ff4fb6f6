package wickmark.imaging.straight;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.pose.PlanePoint;

/** Estimates the {@link PaperSurface} from the four sides as they were seen. */
final class SurfaceFit {
  private static final int SAMPLES = 41;

  /** Part of a side that is left out at each end: corners are torn and rounded. */
  private static final double START = 0.03;

  /** Bow, lopsided bow, and waves of three to six half waves along a side. */
  private static final List<DoubleUnaryOperator> SHAPES =
      List.of(
          t -> 4 * t * (1 - t),
          t -> 4 * t * (1 - t) * (2 * t - 1),
          t -> StrictMath.sin(3 * Math.PI * t),
          t -> StrictMath.sin(4 * Math.PI * t),
          t -> StrictMath.sin(5 * Math.PI * t),
          t -> StrictMath.sin(6 * Math.PI * t));

  /** What guillotine and good scissors leave in each wave, as a part of how straight they cut. */
  private static final double WAVY_CUT = 0.3;

  /** How much more scissors wander over the whole length than in a wave. */
  private static final double BOWS_PER_WAVE = 2;

  /**
   * Height of a bow over the length that it spans, from which it is not believed: paper that is
   * curled more is held flat. What would be higher was cut so; a strip of round paper has round
   * ends.
   */
  private static final double MOST_BOW = 0.1;

  /**
   * Part of a bow that only one of the two sides has, from which it is not believed: a side that
   * was cut so, or followed along something else. What is raised pushes both outwards.
   */
  private static final double MOST_ONE_SIDED = 0.6;

  /** How sharply belief ends there: at half of it 1 part in 64 is lost. */
  private static final int FADING = 6;

  /** Uncertainty of what a bow does to lengths, as a part of what was seen and not believed. */
  private static final double UNBELIEVED = 0.3;

  /** Mean of a bow over its length as a part of its greatest height. */
  private static final double MEAN_OF_BOW = 2.0 / 3;

  private SurfaceFit() {}

  /**
   * The coefficients of one direction.
   *
   * @param doubt standard uncertainty of lengths by the bow, relative
   */
  private record Bend(List<Double> coefficients, double doubt) {}

  /**
   * Fits.
   *
   * @param frame laid flat around the corners
   * @param sides top, right, bottom and left, clockwise, as points in the photo
   * @param cellsPerMm cells per (nominal) millimetre
   */
  static PaperSurface fit(StripFrame frame, List<List<PhotoPoint>> sides, double cellsPerMm) {
    double[] nadir = frame.fromPlane(new PlanePoint(0, 0));
    double w = frame.width();
    double h = frame.height();
    double cut = PaperSurface.CUT_MM * cellsPerMm;
    Bend along = bend(frame, sides.get(3), sides.get(1), true, h, nadir[0], cut);
    Bend across = bend(frame, sides.get(0), sides.get(2), false, w, nadir[1], cut);
    return new PaperSurface(
        w,
        h,
        nadir[0],
        nadir[1],
        1 / frame.cell(),
        along.coefficients(),
        across.coefficients(),
        Math.hypot(along.doubt(), across.doubt()));
  }

  /**
   * How the distance between two opposite sides departs from running straight between its ends, as
   * a part of it: coefficients of the bow, of the lopsided bow and of waves, each drawn towards 0
   * as far as the scissors could have made it. What height does to the one side it does to the
   * other, in proportion to how far each lies from the nadir; how far the two sides are from that
   * tells how well this sheet is cut. A bow that no paper on a desk has is not believed.
   */
  private static Bend bend(
      StripFrame frame,
      List<PhotoPoint> first,
      List<PhotoPoint> second,
      boolean down,
      double length,
      double nadir,
      double cut) {
    double[] low = new double[SAMPLES];
    double[] high = new double[SAMPLES];
    double lowMean = 0;
    double highMean = 0;
    for (int k = 0; k < SAMPLES; k++) {
      double at = length * part(k);
      double a = place(frame, first, down, at);
      double b = place(frame, second, down, at);
      low[k] = Math.min(a, b);
      high[k] = Math.max(a, b);
      lowMean += low[k] / SAMPLES;
      highMean += high[k] / SAMPLES;
    }
    double mean = highMean - lowMean;
    double[] off = new double[SAMPLES];
    double[] shift = new double[SAMPLES];
    for (int k = 0; k < SAMPLES; k++) {
      double gap = high[k] - low[k];
      double straight = chord(high, k) - chord(low, k);
      off[k] = gap / straight - 1;
      shift[k] = (low[k] - chord(low, k) + high[k] - chord(high, k)) / mean;
    }
    double[] heights = coefficients(off);
    double[] shifts = coefficients(shift);
    double lever = (lowMean - nadir + highMean - nadir) / mean;
    double usual = WAVY_CUT * cut / mean;
    double[] byOneSide = new double[SHAPES.size()];
    double wavy = usual * usual / 2;
    for (int i = 0; i < SHAPES.size(); i++) {
      byOneSide[i] = shifts[i] - lever * heights[i];
      wavy += i < 2 ? 0 : byOneSide[i] * byOneSide[i] / (SHAPES.size() - 2) / 2;
    }
    wavy = Math.sqrt(wavy);
    // Who cuts waves cuts bows.
    double sigma = Math.max(cut / mean, BOWS_PER_WAVE * wavy);
    List<Double> believed = new ArrayList<>();
    double bow =
        shrunk(heights[0], 0.5 * sigma)
            * plausible(heights[0] / frame.cell() / length, MOST_BOW)
            * plausible(byOneSide[0] / heights[0], MOST_ONE_SIDED);
    believed.add(bow);
    believed.add(
        shrunk(heights[1], 1.2 * sigma) * plausible(byOneSide[1] / heights[1], MOST_ONE_SIDED));
    for (int i = 2; i < SHAPES.size(); i++) {
      double cutSo = Math.hypot(usual, byOneSide[i]);
      believed.add(shrunk(heights[i], 1.5 * Math.max(wavy, cutSo)));
    }
    double doubt = Math.hypot(0.5 * sigma, UNBELIEVED * (heights[0] - bow));
    return new Bend(believed, MEAN_OF_BOW * doubt);
  }

  /** Belief in a bow of which a figure is this where it ends at that, 1 to 0. */
  private static double plausible(double figure, double end) {
    return Double.isNaN(figure) ? 1 : 1 / (1 + StrictMath.pow(figure / end, FADING));
  }

  private static double part(int k) {
    return START + (1 - 2 * START) * k / (SAMPLES - 1.0);
  }

  /** The straight line between the ends of a run of values. */
  private static double chord(double[] values, int k) {
    return values[0] + (values[SAMPLES - 1] - values[0]) * k / (SAMPLES - 1.0);
  }

  /** A shape with its own chord taken off, as the measured ones have. */
  private static double shape(DoubleUnaryOperator of, int k) {
    double begin = of.applyAsDouble(part(0));
    double end = of.applyAsDouble(part(SAMPLES - 1));
    return of.applyAsDouble(part(k)) - begin - (end - begin) * k / (SAMPLES - 1.0);
  }

  /** How much of each shape there is in a run of values that begins and ends with 0. */
  private static double[] coefficients(double[] values) {
    double[][] shapes = new double[SAMPLES][SHAPES.size()];
    for (int k = 0; k < SAMPLES; k++) {
      for (int i = 0; i < SHAPES.size(); i++) {
        shapes[k][i] = shape(SHAPES.get(i), k);
      }
    }
    return new QRDecomposition(new Array2DRowRealMatrix(shapes, false))
        .getSolver()
        .solve(new ArrayRealVector(values, false))
        .toArray();
  }

  private static double shrunk(double value, double sigma) {
    return value * value * value / (value * value + 2 * sigma * sigma + 1e-18);
  }

  /** Column (or row) of a side at a row (or column), linearly between its points. */
  private static double place(StripFrame frame, List<PhotoPoint> side, boolean down, double at) {
    double[] before = frame.fromPhoto(side.get(0));
    for (int i = 1; i < side.size(); i++) {
      double[] here = frame.fromPhoto(side.get(i));
      double u0 = down ? before[1] : before[0];
      double u1 = down ? here[1] : here[0];
      if ((u0 - at) * (u1 - at) <= 0 && u0 != u1) {
        double f = (at - u0) / (u1 - u0);
        double v0 = down ? before[0] : before[1];
        double v1 = down ? here[0] : here[1];
        return v0 + f * (v1 - v0);
      }
      before = here;
    }
    double[] first = frame.fromPhoto(side.get(0));
    double[] last = frame.fromPhoto(side.get(side.size() - 1));
    double toFirst = Math.abs((down ? first[1] : first[0]) - at);
    double toLast = Math.abs((down ? last[1] : last[0]) - at);
    double[] nearest = toFirst < toLast ? first : last;
    return down ? nearest[0] : nearest[1];
  }
}
