package wickmark.imaging.paper;

import java.util.stream.IntStream;
import wickmark.imaging.raster.DriftingSelection;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Selection;
import wickmark.imaging.raster.Smoothing;

/**
 * The blank paper's light everywhere, as it would be seen without dye and pencil.
 *
 * <p>The brightest channel is the one that a dye takes least from: filled up over whatever is
 * compact and still dark in it (a closing by a disk), it is a guide to how the light falls, shadow
 * edges and all. Paper is then what has the paper's hue among places of like light, and is no dark
 * blob; it is smoothed, again only over places of like light, so that the edge of a shadow stays an
 * edge.
 */
final class PaperBackground {
  /** Radius of the disk that no spot contains, mm: spots are hardly ever wider than 14 mm. */
  private static final double SPOT_RADIUS = 7;

  /** Smoothing of the paper's hue, mm. */
  private static final double HUE_SIGMA = 7;

  /** Smoothing of the paper's brightness, mm. */
  private static final double LIGHT_SIGMA = 4;

  /** How far the paper's hue is looked for, mm. */
  private static final double HUE_REACH = 14;

  /** From block to block of those whose hues are compared: every second one tells as much. */
  private static final int HUE_STEP = 2;

  /** Blocks in like light that tell more of the paper's tint than all blocks around. */
  private static final int LEAST_LIKE = 16;

  /** Part of what is around a place that may be stained: the rest is enough to see the paper. */
  private static final double BLANK = 0.8;

  /** How far light's tint departs from an even slope over the sheet, log light. */
  private static final double COLOURED = 0.03;

  /** The same for what a shadow takes away: the sky's light is left there, or a lamp's. */
  private static final double SHADE_COLOURED = 0.3;

  /** Least density that is told from paper, whatever the noise. */
  private static final double LEAST = 0.008;

  private final Raster[] block;
  private final Raster valid;
  private final double mm;
  private final Raster guide;
  private final Raster depth;

  /** Of a paper whose tint is known: red and blue against green, log light. */
  private PaperBackground(Raster[] block, Raster valid, double mm, Raster[] tint) {
    this.block = block;
    this.valid = valid;
    this.mm = mm;
    Raster brightest = brightest(tint);
    int radius = (int) Math.round(SPOT_RADIUS * mm);
    Raster closed = extreme(extreme(brightest, radius, 1), radius, -1);
    this.guide = Smoothing.gaussian(closed, 0.6 * mm);
    this.depth = difference(guide, brightest);
  }

  /**
   * Returns the background of the three log-light rasters.
   *
   * @param blockMm side of the blocks in which the light is followed
   */
  static Raster[] fit(Raster[] log, Raster paper, double cellsPerMm, double blockMm) {
    BlockGrid grid =
        new BlockGrid(
            paper.width(), paper.height(), (int) Math.max(2, Math.round(blockMm * cellsPerMm)));
    Raster cover = grid.cover(paper);
    Raster[] block = new Raster[3];
    for (int c = 0; c < 3; c++) {
      block[c] = grid.quantile(log[c], paper, 0.6);
    }
    Raster valid = new Raster(grid.columns, grid.rows);
    for (int i = 0; i < valid.cells().length; i++) {
      valid.cells()[i] = cover.cells()[i] > 0.4f ? 1 : 0;
    }
    double mm = cellsPerMm / grid.side;
    // In mixed light the tint changes over the sheet. Which channel a dye leaves alone is seen only
    // against the paper's tint in that place: against that of the whole sheet another channel is
    // the brightest beside the spot than on it, and the light seems to fall off there.
    PaperBackground evenTint = new PaperBackground(block, valid, mm, evenTint(block, valid));
    Paper seen = evenTint.withoutHue();
    PaperBackground paperLight = new PaperBackground(block, valid, mm, seen.tint);
    Raster clear = paperLight.withoutDarkBlobs(seen.clear);
    Raster[] light = paperLight.smoothedLight(clear);
    Raster[] background = new Raster[3];
    for (int c = 0; c < 3; c++) {
      background[c] = grid.spread(light[c]);
    }
    return background;
  }

  /** What is paper by its hue, and its tint: red and blue against green. */
  private record Paper(Raster clear, Raster[] tint) {}

  /** One tint for the whole sheet. */
  private static Raster[] evenTint(Raster[] block, Raster valid) {
    double[] level = new double[3];
    for (int c = 0; c < 3; c++) {
      level[c] = level(block[c], valid);
    }
    Raster[] tint = {
      new Raster(valid.width(), valid.height()), new Raster(valid.width(), valid.height())
    };
    java.util.Arrays.fill(tint[0].cells(), (float) (level[0] - level[1]));
    java.util.Arrays.fill(tint[1].cells(), (float) (level[2] - level[1]));
    return tint;
  }

  /** What blank paper has where the light is good. */
  private static double level(Raster channel, Raster valid) {
    double[] v = new double[valid.cells().length];
    int n = 0;
    for (int i = 0; i < v.length; i++) {
      if (valid.cells()[i] > 0) {
        v[n++] = channel.cells()[i];
      }
    }
    return n == 0 ? 0 : Selection.nth(v, n, (int) (0.85 * n));
  }

  /** The brightest of the channels at each place, each against this paper's tint there. */
  private Raster brightest(Raster[] tint) {
    Raster out = block[1].copy();
    for (int i = 0; i < out.cells().length; i++) {
      float red = block[0].cells()[i] - tint[0].cells()[i];
      float blue = block[2].cells()[i] - tint[1].cells()[i];
      out.cells()[i] = Math.max(out.cells()[i], Math.max(red, blue));
    }
    return out;
  }

  /** Clear is 1 for paper, 0 where there is a hue that paper does not have in such light. */
  private Paper withoutHue() {
    Raster clear = valid.copy();
    Raster[] hues = {difference(block[0], block[1]), difference(block[2], block[1])};
    Raster[] start = tintOfLikeLight();
    Raster[] tint = new Raster[2];
    for (int pair = 0; pair < 2; pair++) {
      Raster hue = hues[pair];
      Raster level = start[pair];
      for (int round = 0; round < 2; round++) {
        double spread = Math.max(LEAST, 3 * spread(hue, level));
        Raster weight = new Raster(hue.width(), hue.height());
        for (int i = 0; i < weight.cells().length; i++) {
          double d = Math.abs(hue.cells()[i] - level.cells()[i]);
          weight.cells()[i] = d < spread ? valid.cells()[i] : 0;
        }
        level = smoothedPlain(hue, weight, level);
      }
      tint[pair] = level;
      double limit = Math.max(LEAST, 3.5 * spread(hue, level));
      for (int i = 0; i < clear.cells().length; i++) {
        if (Math.abs(hue.cells()[i] - level.cells()[i]) > limit) {
          clear.cells()[i] = 0;
        }
      }
    }
    return new Paper(shrunk(clear, (int) Math.round(1.5 * mm)), tint);
  }

  private static Raster difference(Raster a, Raster b) {
    Raster out = new Raster(a.width(), a.height());
    for (int i = 0; i < out.cells().length; i++) {
      out.cells()[i] = a.cells()[i] - b.cells()[i];
    }
    return out;
  }

  /**
   * The tint of the paper around each place, from some of its blocks that lie in like light. A dye
   * only takes light away, so that blank paper is what has the most of a channel for the brightest
   * one there: a high quantile, not the middle one, since in the midst of a column of dyes on a
   * ribbon most of what is around is stained.
   */
  private Raster[] tintOfLikeLight() {
    Raster[] out = {
      new Raster(valid.width(), valid.height()), new Raster(valid.width(), valid.height())
    };
    // In mixed light the tint has a slope, and a high quantile would be that of the one side.
    TintPlane[] planes = new TintPlane[3];
    Raster[] tints = new Raster[3];
    for (int c = 0; c < 3; c++) {
      tints[c] = difference(block[c], guide);
      planes[c] = TintPlane.of(tints[c], valid);
      planes[c].takeOff(tints[c]);
    }
    double brightest = level(guide, valid);
    IntStream.range(0, valid.height())
        .parallel()
        .forEach(y -> tintOfLikeLight(y, planes, tints, brightest, out));
    return out;
  }

  private void tintOfLikeLight(
      int y, TintPlane[] planes, Raster[] tints, double brightest, Raster[] out) {
    int radius = (int) Math.round(HUE_REACH * mm);
    int w = valid.width();
    int h = valid.height();
    float[] light = guide.cells();
    float[] on = valid.cells();
    int[] around = new int[(2 * radius / HUE_STEP + 2) * (2 * radius / HUE_STEP + 2)];
    int[] like = new int[around.length];
    float[] values = new float[around.length];
    double[] most = new double[3];
    DriftingSelection[] selection = {
      new DriftingSelection(), new DriftingSelection(), new DriftingSelection()
    };
    for (int x = 0; x < w; x++) {
      int n = 0;
      int m = 0;
      float here = light[y * w + x];
      for (int j = firstFrom(y - radius, HUE_STEP);
          j <= Math.min(h - 1, y + radius);
          j += HUE_STEP) {
        for (int i = firstFrom(x - radius, HUE_STEP);
            i <= Math.min(w - 1, x + radius);
            i += HUE_STEP) {
          int at = j * w + i;
          if (on[at] != 0) {
            around[m++] = at;
            if (Math.abs(light[at] - here) < 1.5 * LikeLight.SHADOW_STEP) {
              like[n++] = at;
            }
          }
        }
      }
      int[] which = n >= LEAST_LIKE ? like : around;
      int count = n >= LEAST_LIKE ? n : m;
      if (count == 0) {
        continue;
      }
      for (int c = 0; c < 3; c++) {
        float[] tint = tints[c].cells();
        for (int k = 0; k < count; k++) {
          values[k] = tint[which[k]];
        }
        most[c] = selection[c].nth(values, count, (int) (BLANK * (count - 1)));
      }
      double least = Math.min(most[0], Math.min(most[1], most[2]));
      if (least < -(COLOURED + SHADE_COLOURED * Math.max(0, brightest - here))) {
        // No light is so coloured: nearly all around is stained, and the sheet's tint must do.
        java.util.Arrays.fill(most, 0);
      }
      for (int c = 0; c < 3; c++) {
        most[c] += planes[c].at(x, y);
      }
      out[0].set(x, y, (float) (most[0] - most[1]));
      out[1].set(x, y, (float) (most[2] - most[1]));
    }
  }

  private double spread(Raster in, Raster level) {
    double[] d = new double[in.cells().length];
    int n = 0;
    for (int i = 0; i < d.length; i++) {
      if (valid.cells()[i] > 0) {
        d[n++] = Math.abs(in.cells()[i] - level.cells()[i]);
      }
    }
    if (n == 0) {
      return LEAST;
    }
    return 1.4826 * Selection.median(d, n);
  }

  /** Takes a margin off the clear places around what is not clear (the rim of a spot is faint). */
  private Raster shrunk(Raster clear, int margin) {
    Raster out = clear.copy();
    for (int y = 0; y < clear.height(); y++) {
      for (int x = 0; x < clear.width(); x++) {
        if (clear.at(x, y) > 0 || valid.at(x, y) == 0) {
          continue;
        }
        for (int j = Math.max(0, y - margin); j <= Math.min(clear.height() - 1, y + margin); j++) {
          for (int i = Math.max(0, x - margin); i <= Math.min(clear.width() - 1, x + margin); i++) {
            out.set(i, j, 0);
          }
        }
      }
    }
    return out;
  }

  /** The greatest value (sign 1) or the least (sign −1) of the valid blocks in a disk around. */
  private Raster extreme(Raster in, int radius, int sign) {
    int w = in.width();
    int h = in.height();
    float[] signed = new float[w * h];
    for (int i = 0; i < signed.length; i++) {
      signed[i] = valid.cells()[i] > 0 ? sign * in.cells()[i] : Float.NEGATIVE_INFINITY;
    }
    float[][] across = greatestAcross(signed, w, radius);
    Raster out = in.copy();
    float[] best = new float[w];
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        best[x] = sign * in.cells()[y * w + x];
      }
      for (int row = Math.max(0, y - radius); row <= Math.min(h - 1, y + radius); row++) {
        float[] span = across[(int) Math.sqrt(radius * radius - (row - y) * (row - y))];
        for (int x = 0; x < w; x++) {
          best[x] = Math.max(best[x], span[row * w + x]);
        }
      }
      for (int x = 0; x < w; x++) {
        out.cells()[y * w + x] = sign * best[x];
      }
    }
    return out;
  }

  /** For each reach up to a radius the greatest value so far to both sides in the row. */
  private static float[][] greatestAcross(float[] values, int w, int radius) {
    float[][] greatest = new float[radius + 1][];
    greatest[0] = values;
    for (int reach = 1; reach <= radius; reach++) {
      float[] wider = greatest[reach - 1].clone();
      for (int row = 0; row < values.length; row += w) {
        for (int x = reach; x < w; x++) {
          wider[row + x] = Math.max(wider[row + x], values[row + x - reach]);
        }
        for (int x = 0; x < w - reach; x++) {
          wider[row + x] = Math.max(wider[row + x], values[row + x + reach]);
        }
      }
      greatest[reach] = wider;
    }
    return greatest;
  }

  private Raster withoutDarkBlobs(Raster clear) {
    double[] d = new double[clear.cells().length];
    int n = 0;
    for (int i = 0; i < d.length; i++) {
      if (clear.cells()[i] > 0) {
        d[n++] = depth.cells()[i];
      }
    }
    if (n == 0) {
      return clear;
    }
    double middle = Selection.median(d, n);
    double quarter = Selection.nth(d, n, n / 4);
    double limit = middle + Math.max(LEAST, 6.7 * (middle - quarter));
    Raster out = clear.copy();
    for (int i = 0; i < out.cells().length; i++) {
      if (depth.cells()[i] > limit) {
        out.cells()[i] = 0;
      }
    }
    return out;
  }

  /**
   * The hue's mean over the blocks around, weighted by nearness and likeness of light; blocks half
   * a standard deviation apart say it all.
   */
  private Raster smoothedPlain(Raster hue, Raster weight, Raster otherwise) {
    int step = Math.max(1, (int) Math.round(HUE_SIGMA / 2 * mm));
    Raster[] start = {otherwise};
    return new LikeLight(guide, weight, HUE_SIGMA, mm, step, 0).means(start, hue)[0];
  }

  /**
   * The light's mean over the clear blocks around. Between unlike lights the ratio to the guide is
   * carried over, not the light itself.
   */
  private Raster[] smoothedLight(Raster clear) {
    return new LikeLight(guide, clear, LIGHT_SIGMA, mm, 1, 1).means(sheetLight(), block);
  }

  /**
   * The light by the guide and the whole sheet's tint, for the midst of a column of dyes on a
   * narrow ribbon: there is no blank paper near, and what is there must not be taken for it.
   */
  private Raster[] sheetLight() {
    Raster[] light = new Raster[3];
    for (int c = 0; c < 3; c++) {
      TintPlane plane = TintPlane.of(difference(block[c], guide), valid);
      light[c] = guide.copy();
      float[] cells = light[c].cells();
      for (int i = 0; i < cells.length; i++) {
        cells[i] += (float) plane.at(i % guide.width(), i / guide.width());
      }
    }
    return light;
  }

  /** The first of from, from + step, … that is not negative. */
  static int firstFrom(int from, int step) {
    return from >= 0 ? from : from + (-from + step - 1) / step * step;
  }
}
