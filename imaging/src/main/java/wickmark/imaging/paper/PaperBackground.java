package wickmark.imaging.paper;

import java.util.Arrays;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Selection;
import wickmark.imaging.raster.Smoothing;

/**
 * The blank paper's light everywhere, as it would be seen without dye and pencil.
 *
 * <p>Light falls unevenly and shadows cross the paper, but both change its colour little: dye is
 * first told by hue, against a slowly varying paper hue. What then is dark without hue and compact
 * (a closing by a disk does not keep it) is grey dye or lettering. The rest is paper, smoothed only
 * over places of like brightness, so that the edge of a shadow stays an edge.
 */
final class PaperBackground {
  /** Radius of the disk that no spot contains, mm: spots are hardly ever wider than 14 mm. */
  private static final double SPOT_RADIUS = 7;

  /** Smoothing of the paper's hue, mm. */
  private static final double HUE_SIGMA = 9;

  /** Smoothing of the paper's brightness, mm. */
  private static final double LIGHT_SIGMA = 4;

  /** Densities that differ by this much are across the edge of a shadow. */
  private static final double SHADOW_STEP = 0.025;

  /** Least density that is told from paper, whatever the noise. */
  private static final double LEAST = 0.008;

  private PaperBackground() {}

  /** Returns the background of the three log-light rasters. */
  static Raster[] fit(Raster[] log, Raster paper, double cellsPerMm, double blockMm) {
    BlockGrid grid =
        new BlockGrid(
            paper.width(), paper.height(), (int) Math.max(2, Math.round(blockMm * cellsPerMm)));
    double mm = cellsPerMm / grid.side;
    Raster cover = grid.cover(paper);
    Raster[] block = new Raster[3];
    for (int c = 0; c < 3; c++) {
      block[c] = grid.quantile(log[c], paper, 0.6);
    }
    Raster valid = new Raster(grid.columns, grid.rows);
    for (int i = 0; i < valid.cells().length; i++) {
      valid.cells()[i] = cover.cells()[i] > 0.4f ? 1 : 0;
    }
    Raster clear = withoutHue(block, valid, mm);
    Raster closed = closedBrightness(block, valid, clear, mm);
    clear = withoutDarkBlobs(block, clear, closed);
    Raster[] background = new Raster[3];
    for (int c = 0; c < 3; c++) {
      background[c] = grid.spread(smoothWithinLikeLight(block[c], clear, closed, mm));
    }
    return background;
  }

  /** 1 for paper, 0 where there is a hue that paper does not have there. */
  private static Raster withoutHue(Raster[] block, Raster valid, double mm) {
    int n = valid.cells().length;
    Raster clear = valid.copy();
    for (int pair = 0; pair < 2; pair++) {
      Raster hue = difference(block[pair == 0 ? 0 : 2], block[1]);
      Raster level = medianLevel(hue, valid, (int) Math.round(14 * mm));
      for (int round = 0; round < 4; round++) {
        double spread = Math.max(LEAST, 3 * spread(hue, level, valid));
        Raster weight = new Raster(hue.width(), hue.height());
        for (int i = 0; i < n; i++) {
          double d = Math.abs(hue.cells()[i] - level.cells()[i]);
          weight.cells()[i] = d < spread ? valid.cells()[i] : 0;
        }
        level = Smoothing.weightedGaussian(hue, weight, HUE_SIGMA * mm);
      }
      double limit = Math.max(LEAST, 3.5 * spread(hue, level, valid));
      for (int i = 0; i < n; i++) {
        if (Math.abs(hue.cells()[i] - level.cells()[i]) > limit) {
          clear.cells()[i] = 0;
        }
      }
    }
    return shrunk(clear, valid, (int) Math.round(1.5 * mm));
  }

  private static Raster difference(Raster a, Raster b) {
    Raster out = new Raster(a.width(), a.height());
    for (int i = 0; i < out.cells().length; i++) {
      out.cells()[i] = a.cells()[i] - b.cells()[i];
    }
    return out;
  }

  /** Median over a square, taken on every third block and spread between. */
  private static Raster medianLevel(Raster in, Raster valid, int radius) {
    int step = 3;
    int columns = (in.width() + step - 1) / step;
    int rows = (in.height() + step - 1) / step;
    Raster coarse = new Raster(columns, rows);
    double[] values = new double[(2 * radius + 1) * (2 * radius + 1)];
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int n = 0;
        for (int y = Math.max(0, row * step - radius);
            y <= Math.min(in.height() - 1, row * step + radius);
            y++) {
          for (int x = Math.max(0, column * step - radius);
              x <= Math.min(in.width() - 1, column * step + radius);
              x++) {
            if (valid.at(x, y) > 0) {
              values[n++] = in.at(x, y);
            }
          }
        }
        if (n > 0) {
          coarse.set(column, row, (float) Selection.median(values, n));
        }
      }
    }
    Raster out = new Raster(in.width(), in.height());
    for (int y = 0; y < in.height(); y++) {
      for (int x = 0; x < in.width(); x++) {
        out.set(x, y, (float) coarse.sample(x / (double) step + 0.5, y / (double) step + 0.5));
      }
    }
    return out;
  }

  private static double spread(Raster in, Raster level, Raster valid) {
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
  private static Raster shrunk(Raster clear, Raster valid, int margin) {
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

  /** Brightness with every compact dark figure filled up to what surrounds it. */
  private static Raster closedBrightness(Raster[] block, Raster valid, Raster clear, double mm) {
    Raster mean = new Raster(valid.width(), valid.height());
    for (int i = 0; i < mean.cells().length; i++) {
      mean.cells()[i] = (block[0].cells()[i] + block[1].cells()[i] + block[2].cells()[i]) / 3;
    }
    // Fill the coloured places from around, in steps, so that the closing only meets grey figures.
    Raster filled = mean.copy();
    Raster known = clear.copy();
    for (double sigma = mm; sigma < 40 * mm; sigma *= 2) {
      Raster near = Smoothing.weightedGaussian(filled, known, sigma);
      Raster share = Smoothing.gaussian(known, sigma);
      for (int i = 0; i < filled.cells().length; i++) {
        if (known.cells()[i] == 0 && share.cells()[i] > 0.02f) {
          filled.cells()[i] = near.cells()[i];
          known.cells()[i] = 1;
        }
      }
    }
    int radius = (int) Math.round(SPOT_RADIUS * mm);
    Raster high = extreme(filled, known, radius, 1);
    return Smoothing.gaussian(extreme(high, known, radius, -1), 0.7 * mm);
  }

  private static Raster extreme(Raster in, Raster valid, int radius, int sign) {
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

  private static Raster withoutDarkBlobs(Raster[] block, Raster clear, Raster closed) {
    double[] d = new double[clear.cells().length];
    int n = 0;
    Raster depth = new Raster(clear.width(), clear.height());
    for (int i = 0; i < d.length; i++) {
      depth.cells()[i] =
          closed.cells()[i] - (block[0].cells()[i] + block[1].cells()[i] + block[2].cells()[i]) / 3;
      if (clear.cells()[i] > 0) {
        d[n++] = depth.cells()[i];
      }
    }
    if (n == 0) {
      return clear;
    }
    Arrays.sort(d, 0, n);
    double typical = d[n / 2];
    double limit = typical + Math.max(LEAST, 3 * 1.4826 * (d[n / 2] - d[n / 4]) * 1.5);
    Raster out = clear.copy();
    for (int i = 0; i < d.length; i++) {
      if (depth.cells()[i] > limit) {
        out.cells()[i] = 0;
      }
    }
    return out;
  }

  /** Mean of the clear blocks around, weighted by nearness and by likeness of the light. */
  private static Raster smoothWithinLikeLight(Raster in, Raster clear, Raster closed, double mm) {
    int radius = (int) Math.ceil(3 * LIGHT_SIGMA * mm);
    double[] near = new double[2 * radius * radius + 1];
    for (int i = 0; i < near.length; i++) {
      near[i] = StrictMath.exp(-i / (2 * LIGHT_SIGMA * mm * LIGHT_SIGMA * mm));
    }
    Raster out = in.copy();
    for (int y = 0; y < in.height(); y++) {
      for (int x = 0; x < in.width(); x++) {
        out.set(x, y, around(in, clear, closed, near, radius, x, y));
      }
    }
    return out;
  }

  private static float around(
      Raster in, Raster clear, Raster closed, double[] near, int radius, int x, int y) {
    double sum = 0;
    double total = 0;
    double anySum = 0;
    double any = 0;
    double here = closed.at(x, y);
    for (int j = Math.max(0, y - radius); j <= Math.min(in.height() - 1, y + radius); j++) {
      for (int i = Math.max(0, x - radius); i <= Math.min(in.width() - 1, x + radius); i++) {
        if (clear.at(i, j) == 0) {
          continue;
        }
        double w = near[(i - x) * (i - x) + (j - y) * (j - y)];
        double d = (closed.at(i, j) - here) / SHADOW_STEP;
        double like = w / (1 + d * d * d * d);
        // Between unlike lights the ratio to the closed brightness is carried over, not the light.
        double value = in.at(i, j) - closed.at(i, j) + here;
        sum += like * value;
        total += like;
        anySum += w * value;
        any += w;
      }
    }
    if (total > 1e-3) {
      return (float) (sum / total);
    }
    return any > 1e-6 ? (float) (anySum / any) : (float) here;
  }
}
