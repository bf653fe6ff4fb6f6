package wickmark.cli.plot;

import java.util.ArrayList;
import java.util.List;
import wickmark.core.uncertainty.Decimals;

/**
 * A straight scale from values to places in a drawing.
 *
 * @param low value at {@code start}
 * @param high value at {@code end}
 */
public record Axis(double low, double high, double start, double end) {
  private static final int MOST_TICKS = 9;

  /** A mark on the axis. */
  public record Tick(String at, String text) {}

  /** Returns an axis that holds all values with some room beyond them. */
  public static Axis around(List<Double> values, double start, double end) {
    double least = values.stream().mapToDouble(v -> v).min().orElse(0);
    double most = values.stream().mapToDouble(v -> v).max().orElse(0);
    double room = Math.max(0.06 * (most - least), 0.05);
    return new Axis(least - room, most + room, start, end);
  }

  /** Returns where a value lies. */
  public double at(double value) {
    return start + (value - low) / (high - low) * (end - start);
  }

  /** Returns where a value lies, as the text of an attribute. */
  public String place(double value) {
    return Decimals.text(at(value), 1);
  }

  /** Marks at a step of 1, 2 or 5 times a power of ten. */
  public List<Tick> ticks() {
    double step = 0.001;
    int[] factors = {2, 5, 10};
    double base = step;
    for (int i = 0; (high - low) / step > MOST_TICKS; i++) {
      step = base * factors[i % 3];
      base = i % 3 == 2 ? step : base;
    }
    int decimals = step >= 1 ? 0 : step >= 0.1 ? 1 : step >= 0.01 ? 2 : 3;
    List<Tick> ticks = new ArrayList<>();
    for (long k = (long) Math.ceil(low / step); k * step <= high; k++) {
      ticks.add(new Tick(place(k * step), Decimals.text(k * step, decimals)));
    }
    return ticks;
  }
}
