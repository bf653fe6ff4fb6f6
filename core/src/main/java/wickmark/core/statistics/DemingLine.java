package wickmark.core.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A straight line through points both of whose coordinates have errors (Deming regression), with 95
 * % confidence intervals by the jackknife.
 *
 * <p>Reference: Statistical Adjustment of Data, 1943 (from memory); the interval by leaving out one
 * point after the other is common practice in comparing methods.
 */
public record DemingLine(
    double intercept, double slope, Interval interceptConfidence, Interval slopeConfidence) {

  /** A point. */
  public record Point(double x, double y) {}

  private record Line(double intercept, double slope) {}

  /**
   * Returns the line through at least three points; empty where they, or all but one of them, have
   * no common trend.
   *
   * @param varianceRatio variance of the errors in y over that in x, above 0; some manuals turn it
   *     over
   */
  public static Optional<DemingLine> through(List<Point> points, double varianceRatio) {
    int n = points.size();
    if (n < 3) {
      throw new IllegalArgumentException("a line needs at least three points, was " + n);
    }
    Optional<Line> line = line(points, varianceRatio);
    List<Line> pseudo = new ArrayList<>();
    for (int i = 0; i < n && line.isPresent(); i++) {
      List<Point> others = new ArrayList<>(points);
      others.remove(i);
      Optional<Line> without = line(others, varianceRatio);
      if (without.isEmpty()) {
        return Optional.empty();
      }
      pseudo.add(
          new Line(
              n * line.get().intercept() - (n - 1) * without.get().intercept(),
              n * line.get().slope() - (n - 1) * without.get().slope()));
    }
    return line.map(
        l ->
            new DemingLine(
                l.intercept(),
                l.slope(),
                confidence(l.intercept(), pseudo.stream().map(Line::intercept).toList()),
                confidence(l.slope(), pseudo.stream().map(Line::slope).toList())));
  }

  private static Optional<Line> line(List<Point> points, double varianceRatio) {
    double meanX = SampleMean.mean(points.stream().map(Point::x).toList());
    double meanY = SampleMean.mean(points.stream().map(Point::y).toList());
    double xx = 0;
    double yy = 0;
    double xy = 0;
    for (Point point : points) {
      xx += (point.x() - meanX) * (point.x() - meanX);
      yy += (point.y() - meanY) * (point.y() - meanY);
      xy += (point.x() - meanX) * (point.y() - meanY);
    }
    if (xy == 0) {
      return Optional.empty();
    }
    double spread = yy - varianceRatio * xx;
    double root = StrictMath.sqrt(spread * spread + 4 * varianceRatio * xy * xy);
    double slope = (spread + root) / (2 * xy);
    return Optional.of(new Line(meanY - slope * meanX, slope));
  }

  private static Interval confidence(double value, List<Double> pseudoValues) {
    int n = pseudoValues.size();
    double mean = SampleMean.mean(pseudoValues);
    double error = StrictMath.sqrt(SampleMean.sumOfSquares(pseudoValues, mean) / (n - 1) / n);
    return Interval.around(value, SampleMean.studentFactor(n - 2) * error);
  }
}
