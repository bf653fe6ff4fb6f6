package wickmark.cli.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Errors of one quantity, and how many of them lie within twice their stated uncertainty. */
final class Errors {
  private final List<Double> errors = new ArrayList<>();
  private final Share covered = new Share();

  /** Adds an error without a stated uncertainty. */
  void add(double error) {
    errors.add(error);
  }

  /** Adds an error with the standard uncertainty that was stated, if one was. */
  void add(double error, @Nullable Double uncertainty) {
    errors.add(error);
    if (uncertainty != null) {
      covered.add(Math.abs(error) <= 2 * uncertainty);
    }
  }

  void add(Errors more) {
    errors.addAll(more.errors);
    covered.add(more.covered);
  }

  Share covered() {
    return covered;
  }

  /** The largest absolute error; 0 of none. */
  double largest() {
    return errors.stream().mapToDouble(Math::abs).max().orElse(0);
  }

  /** Mean of the signed errors. */
  String bias() {
    return errors.isEmpty()
        ? "–"
        : String.format(
            Locale.ROOT,
            "%+.2f",
            errors.stream().mapToDouble(Double::doubleValue).average().orElseThrow());
  }

  /** Median, 95 % and largest of the absolute error, with so many decimals. */
  String trio(int decimals) {
    if (errors.isEmpty()) {
      return "–";
    }
    List<Double> sorted = errors.stream().map(Math::abs).sorted().toList();
    String each = "%." + decimals + "f";
    return String.format(
        Locale.ROOT,
        each + "/" + each + "/" + each,
        quantile(sorted, 0.5),
        quantile(sorted, 0.95),
        quantile(sorted, 1));
  }

  /** Straight between the two nearest. */
  private static double quantile(List<Double> sorted, double share) {
    double place = share * (sorted.size() - 1);
    int below = (int) place;
    int above = Math.min(below + 1, sorted.size() - 1);
    return sorted.get(below) + (sorted.get(above) - sorted.get(below)) * (place - below);
  }
}
