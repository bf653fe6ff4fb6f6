package wickmark.imaging.paper;

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

  /** Densities that differ by this much are across the edge of a shadow. */
  private static final double SHADOW_STEP = 0.03;

  /** Least density that is told from paper, whatever the noise. */
  private static final double LEAST = 0.008;

  private final Raster[] block;
  private final Raster valid;
  private final double mm;
  private final Raster guide;
  private final Raster depth;

  private PaperBackground(Raster[] block, Raster valid, double mm) {
    this.block = block;
    this.valid = valid;
    this.mm = mm;
    Raster brightest = brightest();
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
    PaperBackground paperLight = new PaperBackground(block, valid, cellsPerMm / grid.side);
    Raster clear = paperLight.withoutDarkBlobs(paperLight.withoutHue());
    Raster[] background = new Raster[3];
    for (int c = 0; c < 3; c++) {
      background[c] = grid.spread(paperLight.smoothed(block[c], clear, LIGHT_SIGMA, 1));
    }
    return background;
  }

  /** The brightest of the channels at each place, each against its own level on this paper. */
  private Raster brightest() {
    Raster out = new Raster(valid.width(), valid.height());
    java.util.Arrays.fill(out.cells(), Float.NEGATIVE_INFINITY);
    for (Raster channel : block) {
      double[] v = new double[channel.cells().length];
      int n = 0;
      for (int i = 0; i < v.length; i++) {
        if (valid.cells()[i] > 0) {
          v[n++] = channel.cells()[i];
        }
      }
      double level = n == 0 ? 0 : Selection.nth(v, n, (int) (0.85 * n));
      for (int i = 0; i < v.length; i++) {
        out.cells()[i] = (float) Math.max(out.cells()[i], channel.cells()[i] - level);
      }
    }
    return out;
  }

  /** 1 for paper, 0 where there is a hue that paper does not have in such light. */
  private Raster withoutHue() {
    Raster clear = valid.copy();
    for (int pair = 0; pair < 2; pair++) {
      Raster hue = difference(block[pair == 0 ? 0 : 2], block[1]);
      Raster level = medianOfLikeLight(hue);
      for (int round = 0; round < 2; round++) {
        double spread = Math.max(LEAST, 3 * spread(hue, level));
        Raster weight = new Raster(hue.width(), hue.height());
        for (int i = 0; i < weight.cells().length; i++) {
          double d = Math.abs(hue.cells()[i] - level.cells()[i]);
          weight.cells()[i] = d < spread ? valid.cells()[i] : 0;
        }
        level = smoothedPlain(hue, weight);
      }
      double limit = Math.max(LEAST, 3.5 * spread(hue, level));
      for (int i = 0; i < clear.cells().length; i++) {
        if (Math.abs(hue.cells()[i] - level.cells()[i]) > limit) {
          clear.cells()[i] = 0;
        }
      }
    }
    return shrunk(clear, (int) Math.round(1.5 * mm));
  }

  private static Raster difference(Raster a, Raster b) {
    Raster out = new Raster(a.width(), a.height());
    for (int i = 0; i < out.cells().length; i++) {
      out.cells()[i] = a.cells()[i] - b.cells()[i];
    }
    return out;
  }

  /** Median over the neighbourhood (every third block) of what lies in like light. */
  private Raster medianOfLikeLight(Raster in) {
    int radius = (int) Math.round(HUE_REACH * mm);
    int step = Math.max(1, radius / 5);
    Raster out = new Raster(in.width(), in.height());
    double[] like = new double[(2 * radius / step + 2) * (2 * radius / step + 2)];
    double[] any = new double[like.length];
    for (int y = 0; y < in.height(); y++) {
      for (int x = 0; x < in.width(); x++) {
        int n = 0;
        int m = 0;
        for (int j = y - radius; j <= y + radius; j += step) {
          for (int i = x - radius; i <= x + radius; i += step) {
            if (i < 0 || j < 0 || i >= in.width() || j >= in.height() || valid.at(i, j) == 0) {
              continue;
            }
            any[m++] = in.at(i, j);
            if (Math.abs(guide.at(i, j) - guide.at(x, y)) < 1.5 * SHADOW_STEP) {
              like[n++] = in.at(i, j);
            }
          }
        }
        if (n > 15) {
          out.set(x, y, (float) Selection.median(like, n));
        } else if (m > 0) {
          out.set(x, y, (float) Selection.median(any, m));
        }
      }
    }
    return out;
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

  private Raster extreme(Raster in, int radius, int sign) {
    Raster out = in.copy();
    for (int y = 0; y < in.height(); y++) {
      for (int x = 0; x < in.width(); x++) {
        float best = sign * in.at(x, y);
        for (int j = -radius; j <= radius; j++) {
          int row = y + j;
          int span = (int) Math.sqrt(radius * radius - j * j);
          if (row < 0 || row >= in.height()) {
            continue;
          }
          for (int i = Math.max(0, x - span); i <= Math.min(in.width() - 1, x + span); i++) {
            if (valid.at(i, row) > 0) {
              best = Math.max(best, sign * in.at(i, row));
            }
          }
        }
        out.set(x, y, sign * best);
      }
    }
    return out;
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

  /** The hue's mean over every second block around, weighted by nearness and likeness of light. */
  private Raster smoothedPlain(Raster hue, Raster weight) {
    return mean(hue, weight, HUE_SIGMA, Math.max(1, (int) Math.round(2 * mm)), 0);
  }

  /**
   * The light's mean over the clear blocks around. Between unlike lights the ratio to the guide is
   * carried over, not the light itself.
   */
  private Raster smoothed(Raster in, Raster clear, double sigma, int step) {
    return mean(in, clear, sigma, step, 1);
  }

  /** The first of from, from + step, … that is not negative. */
  private static int firstFrom(int from, int step) {
    return from >= 0 ? from : from + (-from + step - 1) / step * step;
  }

  private Raster mean(Raster in, Raster weight, double sigma, int step, int carry) {
    int radius = (int) Math.ceil(2.6 * sigma * mm);
    double[] near = new double[2 * radius * radius + 1];
    for (int i = 0; i < near.length; i++) {
      near[i] = StrictMath.exp(-i / (2 * sigma * mm * sigma * mm));
    }
    Raster out = in.copy();
    for (int y = 0; y < in.height(); y++) {
      for (int x = 0; x < in.width(); x++) {
        double sum = 0;
        double total = 0;
        double anySum = 0;
        double any = 0;
        double here = guide.at(x, y);
        int left = firstFrom(x - radius, step);
        int right = Math.min(in.width() - 1, x + radius);
        int bottom = Math.min(in.height() - 1, y + radius);
        for (int j = firstFrom(y - radius, step); j <= bottom; j += step) {
          for (int i = left; i <= right; i += step) {
            int at = j * in.width() + i;
            if (weight.cells()[at] == 0) {
              continue;
            }
            double w = near[(i - x) * (i - x) + (j - y) * (j - y)];
            double apart = guide.cells()[at] - here;
            double d = apart / SHADOW_STEP;
            double like = w / (1 + d * d * d * d);
            double value = in.cells()[at] - carry * apart;
            sum += like * value;
            total += like;
            anySum += w * value;
            any += w;
          }
        }
        if (total > 1e-3) {
          out.set(x, y, (float) (sum / total));
        } else if (any > 1e-6) {
          out.set(x, y, (float) (anySum / any));
        }
      }
    }
    return out;
  }
}
