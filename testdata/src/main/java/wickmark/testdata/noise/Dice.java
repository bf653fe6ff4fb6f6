package wickmark.testdata.noise;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Chance from a seed. Only the raw 64-bit numbers of {@link SplittableRandom} are used, whose
 * sequence its documentation fixes; the rest is derived here, so that no Java version changes it.
 */
public final class Dice {
  private final SplittableRandom source;

  public Dice(long seed) {
    this.source = new SplittableRandom(seed);
  }

  /** Returns a number from 0 inside to 1 outside. */
  public double unit() {
    return (source.nextLong() >>> 11) * 0x1.0p-53;
  }

  /** Returns a number between the two bounds, evenly spread. */
  public double between(double low, double high) {
    return low + (high - low) * unit();
  }

  /** Returns a whole number from 0 inside to {@code bound} outside. */
  public int below(int bound) {
    return (int) (unit() * bound);
  }

  /** Returns true with the given probability, 0 to 1. */
  public boolean chance(double probability) {
    return unit() < probability;
  }

  /** Returns a number from the standard normal distribution (Box-Muller). */
  public double normal() {
    double radius = Math.sqrt(-2 * StrictMath.log(1 - unit()));
    return radius * StrictMath.cos(2 * Math.PI * unit());
  }

  /** Returns one element of the list, each as likely as the others. */
  public <T> T pick(List<T> choices) {
    return choices.get(below(choices.size()));
  }

  /**
   * Returns a seed for a part of the picture, so that other parts do not shift when this one
   * changes.
   */
  public long seed() {
    return source.nextLong();
  }
}
