package wickmark.imaging.spot;

import java.util.List;

/**
 * What each peak gives at each sample of a profile, at height 1, and the normal equations of the
 * weighted least squares that find the heights. All three channels share both, and a basis in which
 * one peak has another shape shares all but a row with this one: both matter, because a fit asks
 * for some hundred of them.
 */
final class ShapeBasis {
  private static final int CHANNELS = 3;

  /** Coordinate descent ends where no amount changes by more than this, density · mm. */
  private static final double SETTLED = 1e-9;

  private static final int MOST_ROUNDS = 200;

  private final LaneProfile profile;
  private final double[] weight;
  private final double[][] rows;
  private final double[][] normal;
  private final double[][] right;

  /**
   * Works out the basis of some shapes.
   *
   * @param weight of each sample
   */
  ShapeBasis(LaneProfile profile, List<PeakShape> shapes, double[] weight) {
    int peaks = shapes.size();
    this.profile = profile;
    this.weight = weight;
    this.rows = new double[peaks][];
    this.normal = new double[peaks][peaks];
    this.right = new double[peaks][];
    for (int j = 0; j < peaks; j++) {
      rows[j] = row(shapes.get(j));
    }
    for (int j = 0; j < peaks; j++) {
      equate(j);
    }
  }

  private ShapeBasis(ShapeBasis other) {
    this.profile = other.profile;
    this.weight = other.weight;
    this.rows = other.rows.clone();
    this.right = other.right.clone();
    this.normal = new double[other.normal.length][];
    for (int i = 0; i < normal.length; i++) {
      normal[i] = other.normal[i].clone();
    }
  }

  /** Returns the basis in which one peak has another shape. */
  ShapeBasis with(int peak, PeakShape shape) {
    ShapeBasis changed = new ShapeBasis(this);
    changed.rows[peak] = row(shape);
    changed.equate(peak);
    return changed;
  }

  private double[] row(PeakShape shape) {
    double[] row = new double[profile.size()];
    for (int k = 0; k < row.length; k++) {
      row[k] = shape.at(profile.place(k));
    }
    return row;
  }

  /** Works out one peak's part of the normal equations. */
  private void equate(int peak) {
    int n = weight.length;
    double[] own = new double[CHANNELS];
    for (int c = 0; c < CHANNELS; c++) {
      double[] data = profile.density()[c];
      for (int k = 0; k < n; k++) {
        own[c] += weight[k] * rows[peak][k] * data[k];
      }
    }
    right[peak] = own;
    for (int other = 0; other < rows.length; other++) {
      double[] first = rows[Math.min(peak, other)];
      double[] second = rows[Math.max(peak, other)];
      double sum = 0;
      for (int k = 0; k < n; k++) {
        sum += weight[k] * first[k] * second[k];
      }
      normal[peak][other] = sum;
      normal[other][peak] = sum;
    }
    normal[peak][peak] += 1e-12;
  }

  /** The heights in one channel, none below 0, that fit the profile best: coordinate descent. */
  double[] amounts(int channel) {
    int peaks = rows.length;
    double[] amount = new double[peaks];
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double change = 0;
      for (int i = 0; i < peaks; i++) {
        double r = right[i][channel];
        for (int j = 0; j < peaks; j++) {
          r -= j == i ? 0 : normal[i][j] * amount[j];
        }
        double next = Math.max(0, r / normal[i][i]);
        change = Math.max(change, Math.abs(next - amount[i]));
        amount[i] = next;
      }
      if (change < SETTLED) {
        break;
      }
    }
    return amount;
  }

  /** What the profile has in a channel beyond these amounts, at each sample. */
  double[] residuals(int channel, double[] amount) {
    double[] left = profile.density()[channel].clone();
    for (int j = 0; j < amount.length; j++) {
      double[] row = rows[j];
      double a = amount[j];
      for (int k = 0; k < left.length; k++) {
        left[k] -= a * row[k];
      }
    }
    return left;
  }
}
