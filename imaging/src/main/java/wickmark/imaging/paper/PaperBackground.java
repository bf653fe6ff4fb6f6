package wickmark.imaging.paper;

import java.util.Arrays;
import java.util.Optional;
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
  static final double SPOT_RADIUS = 7;

  /** Smoothing of the paper's hue, mm. */
  private static final double HUE_SIGMA = 7;

  /** Smoothing of the paper's brightness, mm. */
  private static final double LIGHT_SIGMA = 4;

  /** Least density that is told from paper, whatever the noise. */
  private static final double LEAST = 0.008;

  /** Quantile of a block that is its blank paper: what is drawn or grainy on it is darker. */
  private static final double CLEAR_SHARE = 0.6;

  /** Share of the paper that must not be white to tell of all of it. */
  private static final double LEAST_TELLING = 0.2;

  private final Raster[] block;
  private final Raster valid;
  private final Raster telling;
  private final double mm;
  private final Raster[] tint;
  private final Raster brightest;
  private final Raster guide;
  private final Raster depth;

  /**
   * Of a paper whose tint is known: red and blue against green, log light.
   *
   * @param telling 1 for the valid blocks that tell of the paper's tint
   */
  private PaperBackground(Raster[] block, Raster valid, Raster telling, double mm, Raster[] tint) {
    this.block = block;
    this.valid = valid;
    this.telling = telling;
    this.mm = mm;
    this.tint = tint;
    this.brightest = brightest();
    int radius = (int) Math.round(SPOT_RADIUS * mm);
    this.guide = Smoothing.gaussian(DiskClosing.of(brightest, valid, radius), 0.6 * mm);
    this.depth = difference(guide, brightest);
  }

  /**
   * The background.
   *
   * @param light log light of each channel
   * @param shade the part of the direct light that is missing in the shadow of a narrow thing
   */
  record Fitted(Raster[] light, Raster shade) {}

  /**
   * Returns the background of the three log-light rasters.
   *
   * @param blockMm side of the blocks in which the light is followed
   */
  static Fitted fit(Raster[] log, Raster paper, double cellsPerMm, double blockMm) {
    BlockGrid grid =
        new BlockGrid(
            paper.width(), paper.height(), (int) Math.max(2, Math.round(blockMm * cellsPerMm)));
    Raster cover = grid.cover(paper);
    Raster valid = new Raster(grid.columns, grid.rows);
    for (int i = 0; i < valid.cells().length; i++) {
      valid.cells()[i] = cover.cells()[i] > 0.4f ? 1 : 0;
    }
    double mm = cellsPerMm / grid.side;
    PaperBackground evenTint = ofEvenTint(blocks(grid, log, paper, CLEAR_SHARE), valid, mm);
    Optional<CastShadow> shadow = evenTint.castShadow();
    if (shadow.isPresent()) {
      // Across a shadow's rim the light changes within a block, and its middle is the median's.
      evenTint = ofEvenTint(blocks(grid, log, paper, 0.5), valid, mm);
      shadow = evenTint.castShadow();
    }
    Raster[] light;
    if (shadow.isPresent()) {
      Raster[] shaded = evenTint.block;
      PaperBackground unshaded = ofEvenTint(shadow.get().takenOff(shaded), valid, mm);
      light = shadow.get().putOn(unshaded.light(), shaded);
    } else {
      light = evenTint.light();
    }
    Raster[] background = new Raster[3];
    for (int c = 0; c < 3; c++) {
      background[c] = grid.spread(light[c]);
    }
    Raster shade =
        shadow
            .map(cast -> grid.spread(cast.shade()))
            .orElseGet(() -> new Raster(paper.width(), paper.height()));
    return new Fitted(background, shade);
  }

  private static Raster[] blocks(BlockGrid grid, Raster[] log, Raster paper, double quantile) {
    Raster[] block = new Raster[3];
    for (int c = 0; c < 3; c++) {
      block[c] = grid.quantile(log[c], paper, quantile);
    }
    return block;
  }

  private static PaperBackground ofEvenTint(Raster[] block, Raster valid, double mm) {
    Raster telling = withoutWhite(valid, block);
    return new PaperBackground(block, valid, telling, mm, evenTint(block, telling));
  }

  private Optional<CastShadow> castShadow() {
    return CastShadow.in(block, valid, brightest, tint, depth, mm);
  }

  /** The blocks' light, if this has the same tint everywhere. */
  private Raster[] light() {
    // In mixed light the tint changes over the sheet. Which channel a dye leaves alone is seen only
    // against the paper's tint in that place: against that of the whole sheet another channel is
    // the brightest beside the spot than on it, and the light seems to fall off there.
    Paper seen = withoutHue();
    PaperBackground paperLight = new PaperBackground(block, valid, telling, mm, seen.tint);
    Raster clear = paperLight.withoutDarkBlobs(seen.clear);
    Raster[] light = paperLight.smoothedLight(clear);
    if (telling != valid) {
      paperLight.whiten(light, seen.tint);
    }
    return light;
  }

  /**
   * The valid blocks less those that are white in all channels: what such light would be is not in
   * the picture, and white beside a shadow seems to have another hue than the paper in it. All, if
   * hardly any are left.
   */
  private static Raster withoutWhite(Raster valid, Raster[] block) {
    Raster telling = valid.copy();
    int all = 0;
    int left = 0;
    for (int i = 0; i < telling.cells().length; i++) {
      if (valid.cells()[i] == 0) {
        continue;
      }
      all++;
      if (WhiteChannels.isAtEnd(block, i)) {
        telling.cells()[i] = 0;
      } else {
        left++;
      }
    }
    return left == all || left < LEAST_TELLING * all ? valid : telling;
  }

  /** Makes the light white where it is so all around, also on a spot there. */
  private void whiten(Raster[] light, Raster[] tint) {
    for (int i = 0; i < guide.cells().length; i++) {
      float red = tint[0].cells()[i];
      float blue = tint[1].cells()[i];
      double white = -Math.min(0, Math.min(red, blue)) - LEAST;
      if (guide.cells()[i] > white) {
        for (int c = 0; c < 3; c++) {
          light[c].cells()[i] = 0;
        }
      }
    }
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
    Arrays.fill(tint[0].cells(), (float) (level[0] - level[1]));
    Arrays.fill(tint[1].cells(), (float) (level[2] - level[1]));
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
  private Raster brightest() {
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
    Raster clear = telling.copy();
    Raster[] hues = {difference(block[0], block[1]), difference(block[2], block[1])};
    Raster[] start = LocalTint.of(block, telling, guide, level(guide, telling), mm);
    Raster[] tint = new Raster[2];
    for (int pair = 0; pair < 2; pair++) {
      Raster hue = hues[pair];
      Raster level = start[pair];
      for (int round = 0; round < 2; round++) {
        double spread = Math.max(LEAST, 3 * spread(hue, level));
        Raster weight = new Raster(hue.width(), hue.height());
        for (int i = 0; i < weight.cells().length; i++) {
          double d = Math.abs(hue.cells()[i] - level.cells()[i]);
          weight.cells()[i] = d < spread ? telling.cells()[i] : 0;
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

  static Raster difference(Raster a, Raster b) {
    Raster out = new Raster(a.width(), a.height());
    for (int i = 0; i < out.cells().length; i++) {
      out.cells()[i] = a.cells()[i] - b.cells()[i];
    }
    return out;
  }

  private double spread(Raster in, Raster level) {
    double[] d = new double[in.cells().length];
    int n = 0;
    for (int i = 0; i < d.length; i++) {
      if (telling.cells()[i] > 0) {
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
      TintPlane plane = TintPlane.of(difference(block[c], guide), telling);
      light[c] = guide.copy();
      float[] cells = light[c].cells();
      for (int i = 0; i < cells.length; i++) {
        cells[i] += (float) plane.at(i % guide.width(), i / guide.width());
      }
    }
    return light;
  }
}
