package wickmark.core.statistics;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight line through points both of whose coordinates have errors (Deming regression), with 95
 * % confidence intervals by the jackknife.
 */
public record DemingLine(
    double intercept, double slope, Interval interceptConfidence, Interval slopeConfidence) {

  /** A point. */
  public record Point(double x, double y) {}

  private record Line(double intercept, double slope) {}

  /**
   * Returns the line through at least three points.
   *
   * @param varianceRatio variance of the errors in y over that in x, above 0; some manuals turn it
   *     over
   */
  public static DemingLine through(List<Point> points, double varianceRatio) {
    int n = points.size();
    if (n < 3) {
      throw new IllegalArgumentException("a line needs at least three points, was " + n);
    }
    Line line = line(points, varianceRatio);
    List<Double> intercepts = new ArrayList<>();
    List<Double> slopes = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      List<Point> others = new ArrayList<>(points);
      others.remove(i);
      Line without = line(others, varianceRatio);
      intercepts.add(n * line.intercept() - (n - 1) * without.intercept());
      slopes.add(n * line.slope() - (n - 1) * without.slope());
    }
    return new DemingLine(
        line.intercept(),
        line.slope(),
        confidence(line.intercept(), intercepts),
        confidence(line.slope(), slopes));
  }

  private static Line line(List<Point> points, double varianceRatio) {
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
      throw new IllegalArgumentException("the points have no common trend");
    }
    double spread = yy - varianceRatio * xx;
    double root = StrictMath.sqrt(spread * spread + 4 * varianceRatio * xy * xy);
    double slope = (spread + root) / (2 * xy);
    return new Line(meanY - slope * meanX, slope);
  }

  private static Interval confidence(double value, List<Double> pseudoValues) {
    int n = pseudoValues.size();
    double mean = SampleMean.mean(pseudoValues);
    double error = StrictMath.sqrt(SampleMean.sumOfSquares(pseudoValues, mean) / (n - 1) / n);
    return Interval.around(value, SampleMean.studentFactor(n - 2) * error);
  }
}
