package wickmark.imaging.paper;

import java.util.Arrays;
import java.util.stream.IntStream;
import wickmark.imaging.raster.DriftingSelection;
import wickmark.imaging.raster.Raster;

/**
 * The tint of the paper around each place, from some of its blocks that lie in like light. A dye
 * only takes light away, so that blank paper is what has the most of a channel for the brightest
 * one there: a high quantile, not the middle one, since in the midst of a column of dyes on a
 * ribbon most of what is around is stained.
 */
final class LocalTint {
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

  private final Raster valid;
  private final Raster guide;
  private final double brightest;
  private final double mm;

  /** Slopes of the channels' tints over the sheet, and what is left of the tints without them. */
  private final TintPlane[] planes = new TintPlane[3];

  private final Raster[] tints = new Raster[3];

  private LocalTint(Raster[] block, Raster valid, Raster guide, double brightest, double mm) {
    this.valid = valid;
    this.guide = guide;
    this.brightest = brightest;
    this.mm = mm;
    // In mixed light the tint has a slope, and a high quantile would be that of the one side.
    for (int c = 0; c < 3; c++) {
      tints[c] = PaperBackground.difference(block[c], guide);
      planes[c] = TintPlane.of(tints[c], valid);
      planes[c].takeOff(tints[c]);
    }
  }

  /**
   * Returns red and blue against green, log light.
   *
   * @param block the channels' log light
   * @param guide how the light falls
   * @param brightest the guide where the light is good
   * @param mm blocks in a millimetre
   */
  static Raster[] of(Raster[] block, Raster valid, Raster guide, double brightest, double mm) {
    return new LocalTint(block, valid, guide, brightest, mm).everywhere();
  }

  private Raster[] everywhere() {
    Raster[] out = {
      new Raster(valid.width(), valid.height()), new Raster(valid.width(), valid.height())
    };
    IntStream.range(0, valid.height()).parallel().forEach(y -> row(y, out));
    return out;
  }

  private void row(int y, Raster[] out) {
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
      for (int j = BlockGrid.firstFrom(y - radius, HUE_STEP);
          j <= Math.min(h - 1, y + radius);
          j += HUE_STEP) {
        for (int i = BlockGrid.firstFrom(x - radius, HUE_STEP);
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
        Arrays.fill(most, 0);
      }
      for (int c = 0; c < 3; c++) {
        most[c] += planes[c].at(x, y);
      }
      out[0].set(x, y, (float) (most[0] - most[1]));
      out[1].set(x, y, (float) (most[2] - most[1]));
    }
  }
}
