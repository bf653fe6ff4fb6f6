package wickmark.cli.calibration;

import java.util.Locale;

/** How many of some things are as they should be. */
final class Share {
  private int right;
  private int all;

  void add(boolean isRight) {
    right += isRight ? 1 : 0;
    all++;
  }

  void add(Share more) {
    right += more.right;
    all += more.all;
  }

  int right() {
    return right;
  }

  int all() {
    return all;
  }

  int wrong() {
    return all - right;
  }

  /** "3/4". */
  String fraction() {
    return right + "/" + all;
  }

  /** "75.0%". */
  String percent() {
    return all == 0 ? "–" : String.format(Locale.ROOT, "%.1f%%", 100.0 * right / all);
  }

  /** "0.750". */
  String part() {
    return all == 0 ? "–" : String.format(Locale.ROOT, "%.3f", (double) right / all);
  }
}
