package wickmark.imaging.spot;

import java.util.List;
import wickmark.imaging.lane.DyeMap;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.raster.Figure;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;

/**
 * Which stained cells belong to which lane. A figure goes whole to the lane that its centre of mass
 * is nearest to (lanes drift sideways on the way up); one that is as wide as the lanes are apart,
 * and of which another lane has a fair part or a maximum of its own, is cut halfway between them: a
 * pale spot may touch a strong one of the next lane. What rises towards a spot of the next lane is
 * that spot's fringe, and no stain of the lane in whose half it lies.
 */
final class LaneStain {
  /** Part of a figure that is no fringe of it. */
  private static final double FAIR_PART = 0.15;

  /** A figure as wide as this part of the way from lane to lane may belong to two. */
  private static final double WIDE = 0.9;

  /** A maximum across the lanes is one's own if it is so much higher than the valley before it. */
  private static final double ABOVE_VALLEY = 1.25;

  /** Density that is surely dye, at the least at one place of what is cut off. */
  private static final double SURE = 0.03;

  /** Columns are summed over this to both sides before their maxima are looked at, mm. */
  private static final double SMOOTHING_MM = 0.6;

  /** Part of the way from a lane to the next within which all stain is its own. */
  private static final double MIDDLE = 0.25;

  /** Smoothing before hills are looked for (standard deviation), mm: the paper's grain has many. */
  private static final double HILLS_MM = 1.2;

  private final Raster owner;
  private final int width;

  private LaneStain(Raster owner) {
    this.owner = owner;
    this.width = owner.width();
  }

  static LaneStain of(DyeMap dye, List<LaneTrack> lanes, double mm) {
    Raster mask = dye.mask();
    Raster owner = new Raster(mask.width(), mask.height());
    Raster hills = Smoothing.gaussian(dye.strength(), HILLS_MM * mm);
    for (Figure figure : Figure.in(mask)) {
      give(figure, dye.strength(), hills, owner, lanes, mm);
    }
    return new LaneStain(widened(owner, (int) Math.ceil(0.8 * mm)));
  }

  private static void give(
      Figure figure,
      Raster strength,
      Raster hills,
      Raster owner,
      List<LaneTrack> lanes,
      double mm) {
    int w = owner.width();
    if (figure.cells().length < 0.8 * mm * mm) {
      return;
    }
    double sum = 0;
    double moment = 0;
    double[] perLane = new double[lanes.size()];
    for (int i : figure.cells()) {
      double x = i % w + 0.5;
      double s = strength.cells()[i];
      sum += s;
      moment += s * x;
      perLane[laneAt(lanes, x)] += s;
    }
    int nearest = laneAt(lanes, moment / sum);
    int strong = 0;
    for (double p : perLane) {
      strong += p > FAIR_PART * sum ? 1 : 0;
    }
    boolean cut =
        figure.right() - figure.left() > WIDE * narrowest(lanes)
            && (strong > 1 || hasMaxima(figure, strength, lanes, (int) (SMOOTHING_MM * mm)));
    for (int i : figure.cells()) {
      if (!cut) {
        owner.cells()[i] = 1 + nearest;
      } else if (isOwn(i, hills, lanes)) {
        owner.cells()[i] = 1 + laneAt(lanes, i % w + 0.5);
      }
    }
  }

  /**
   * Whether a cell of a figure that is parted is its own lane's: what lies in the middle of a lane
   * is, and between two what rises towards a summit of that lane. The fringe of a spot of the next
   * lane is left to nobody: whether it is dye is as open as where the light changes beside one.
   */
  private static boolean isOwn(int cell, Raster hills, List<LaneTrack> lanes) {
    double x = cell % hills.width() + 0.5;
    int lane = laneAt(lanes, x);
    return Math.abs(lanes.get(lane).originX() - x) < MIDDLE * narrowest(lanes)
        || laneAt(lanes, summit(hills, cell) % hills.width() + 0.5) == lane;
  }

  /** The cell to which the steepest way up leads. */
  private static int summit(Raster hills, int start) {
    int w = hills.width();
    int at = start;
    int next = start;
    do {
      at = next;
      int x = at % w;
      int y = at / w;
      for (int ny = Math.max(0, y - 1); ny <= Math.min(hills.height() - 1, y + 1); ny++) {
        for (int nx = Math.max(0, x - 1); nx <= Math.min(w - 1, x + 1); nx++) {
          next = hills.at(nx, ny) > hills.cells()[next] ? ny * w + nx : next;
        }
      }
    } while (next != at);
    return at;
  }

  /** Whether the columns' sums rise again, after a valley, in another lane than the strongest. */
  private static boolean hasMaxima(
      Figure figure, Raster strength, List<LaneTrack> lanes, int half) {
    double[] most = new double[strength.width()];
    double[] single = new double[strength.width()];
    for (int i : figure.cells()) {
      int x = i % strength.width();
      single[x] += strength.cells()[i];
      most[x] = Math.max(most[x], strength.cells()[i]);
    }
    double[] sums = boxed(single, half);
    int top = 0;
    for (int x = 0; x < sums.length; x++) {
      top = sums[x] > sums[top] ? x : top;
    }
    return risesAgain(sums, most, lanes, top, 1) || risesAgain(sums, most, lanes, top, -1);
  }

  private static boolean risesAgain(
      double[] sums, double[] most, List<LaneTrack> lanes, int top, int way) {
    int home = laneAt(lanes, top + 0.5);
    double valley = sums[top];
    for (int x = top; x >= 0 && x < sums.length; x += way) {
      valley = Math.min(valley, sums[x]);
      if (sums[x] > ABOVE_VALLEY * valley && most[x] > SURE && laneAt(lanes, x + 0.5) != home) {
        return true;
      }
    }
    return false;
  }

  private static double[] boxed(double[] values, int half) {
    double[] sums = new double[values.length];
    double sum = 0;
    for (int x = 0; x < values.length + half; x++) {
      sum += x < values.length ? values[x] : 0;
      sum -= x - 2 * half - 1 >= 0 ? values[x - 2 * half - 1] : 0;
      if (x >= half) {
        sums[x - half] = sum;
      }
    }
    return sums;
  }

  private static double narrowest(List<LaneTrack> lanes) {
    double least = Double.POSITIVE_INFINITY;
    for (int k = 1; k < lanes.size(); k++) {
      least = Math.min(least, lanes.get(k).originX() - lanes.get(k - 1).originX());
    }
    return least;
  }

  private static int laneAt(List<LaneTrack> lanes, double x) {
    int best = 0;
    for (int k = 1; k < lanes.size(); k++) {
      if (Math.abs(lanes.get(k).originX() - x) < Math.abs(lanes.get(best).originX() - x)) {
        best = k;
      }
    }
    return best;
  }

  /**
   * The rim of a spot is fainter than the threshold: take a margin around, first come first served.
   */
  private static Raster widened(Raster owner, int margin) {
    int w = owner.width();
    int h = owner.height();
    Raster rows = owner.copy();
    for (int y = 0; y < h; y++) {
      widen(owner.cells(), rows.cells(), y * w, 1, w, margin);
    }
    Raster out = rows.copy();
    for (int x = 0; x < w; x++) {
      widen(rows.cells(), out.cells(), x, w, h, margin);
    }
    return out;
  }

  /** Gives the cells of a row or column to the nearest owner in it, of two as near to the first. */
  private static void widen(float[] in, float[] out, int start, int step, int count, int margin) {
    int before = -1;
    int after = 0;
    for (int i = 0; i < count; i++) {
      if (in[start + i * step] > 0) {
        before = i;
        continue;
      }
      while (after < count && (after <= i || in[start + after * step] <= 0)) {
        after++;
      }
      int back = before < 0 ? Integer.MAX_VALUE : i - before;
      int ahead = after == count ? Integer.MAX_VALUE : after - i;
      if (Math.min(back, ahead) <= margin) {
        out[start + i * step] = in[start + (back <= ahead ? before : after) * step];
      }
    }
  }

  /** The cells of a lane, as indices row by row. */
  int[] cells(int lane) {
    int n = 0;
    for (float o : owner.cells()) {
      n += o == lane + 1 ? 1 : 0;
    }
    int[] cells = new int[n];
    int k = 0;
    for (int i = 0; i < owner.cells().length; i++) {
      if (owner.cells()[i] == lane + 1) {
        cells[k++] = i;
      }
    }
    return cells;
  }

  int width() {
    return width;
  }
}
