package wickmark.imaging.line;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wickmark.imaging.straight.StripFrame;

/**
 * Which end is the bottom, and where baseline and front run: the hypothesis that explains best what
 * is seen.
 *
 * @param quarterTurns how often the corners' order must be turned clockwise so that the bottom is
 *     below, 0 to 3
 * @param baseline in the map so turned; null where there is none
 * @param front in the map so turned; null where there is none
 * @param score of this hypothesis, in units of about one clear piece of evidence
 * @param lead how much better it is than the best hypothesis with another end at the bottom
 * @param baselineLead how much better it is than the best hypothesis with another baseline
 * @param frontLead how much better its front is than the next
 * @param dyeMm2 area that is clearly coloured above the baseline, below the front where there is
 *     one, square millimetres (nominal without a scale)
 */
public record Layout(
    int quarterTurns,
    @Nullable LinePath baseline,
    @Nullable LinePath front,
    double score,
    double lead,
    double baselineLead,
    double frontLead,
    double dyeMm2) {

  /** Nothing known yet. */
  public static Layout none() {
    return new Layout(0, null, null, 0, 0, 0, 0, 0);
  }

  /**
   * A line's course.
   *
   * @param x columns, as parts of the strip's width
   * @param y rows, as parts of the strip's height, from the top
   * @param certainty 0 to 1
   */
  public record LinePath(LineKind kind, List<Double> x, List<Double> y, double certainty) {
    public LinePath {
      x = List.copyOf(x);
      y = List.copyOf(y);
    }

    /** The same course in another frame around the same strip. */
    public LinePath in(StripFrame from, StripFrame to) {
      List<Double> columns = new ArrayList<>();
      List<Double> rows = new ArrayList<>();
      for (int i = 0; i < x.size(); i++) {
        double[] at = to.fromPhoto(from.toPhoto(x.get(i) * from.width(), y.get(i) * from.height()));
        columns.add(at[0] / to.width());
        rows.add(at[1] / to.height());
      }
      return new LinePath(kind, columns, rows, certainty);
    }

    /** Row (part of the height) at a column (part of the width), linear between bins and beyond. */
    public double at(double column) {
      int n = x.size();
      int i = 1;
      while (i < n - 1 && x.get(i) < column) {
        i++;
      }
      if (n == 1) {
        return y.get(0);
      }
      double f = (column - x.get(i - 1)) / (x.get(i) - x.get(i - 1));
      f = Math.max(-0.5, Math.min(1.5, f));
      return y.get(i - 1) + f * (y.get(i) - y.get(i - 1));
    }
  }
}
