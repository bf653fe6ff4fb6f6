package wickmark.imaging.line;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Selection;
import wickmark.imaging.raster.Smoothing;

/** Where on the strip there is colour and where there is writing, for telling its ends apart. */
final class StripContent {
  /** Least smoothed chroma that counts as dye. */
  private static final float DYE = 0.02f;

  /** How far ink runs out of a line, mm. */
  static final double INK_RUN_MM = 9;

  /** Grey density that no paper has, even in shadow. */
  private static final float DARK = 0.45f;

  /**
   * Share of what is dark around a cell that lies in a thing: of a pen it is 1, on a pencil's
   * stroke of 0.5 mm a third.
   */
  private static final float IN_DARK = 0.7f;

  /** Share of a dark thing around a cell from which it is the blurred rim of that, not dye. */
  private static final float AT_DARK = 0.02f;

  /** Smoothing of what is dark (standard deviation), mm. */
  private static final double DARK_SMOOTHING_MM = 0.6;

  /** Least grey density over its surroundings that counts as pencil, whatever the noise. */
  private static final double INK = 0.02;

  /** Share of the lower of two neighbouring peaks of stain below which they are two lanes. */
  private static final double DIP = 0.6;

  /**
   * How far the light is followed wrongly where it changes steeply, mm: density there is off by as
   * much as the light changes within this.
   */
  private static final float LIGHT_SLIP_MM = 0.5f;

  private final DensityMap map;
  private final Raster dye;
  private final Raster ink;
  private final ColumnSums dyeSums;

  /** Without what comes in over an end of the sheet. */
  private final ColumnSums innerSums;

  private final double darkShare;

  private StripContent(DensityMap map, Raster dye, Raster ink, double darkShare) {
    this.map = map;
    this.dye = dye;
    this.ink = ink;
    this.dyeSums = new ColumnSums(dye);
    this.innerSums = new ColumnSums(EndStains.removed(dye, map.paper(), map.cellsPerMm()));
    this.darkShare = darkShare;
  }

  /**
   * The same content of the map turned a quarter clockwise.
   *
   * @param turned that map
   */
  StripContent turned(DensityMap turned) {
    return new StripContent(turned, dye.turned(), ink.turned(), darkShare);
  }

  static StripContent of(DensityMap map) {
    double mm = map.cellsPerMm();
    Raster grey = map.neutral();
    Raster chroma = Smoothing.gaussian(map.chroma(), 0.6 * mm);
    double level = Selection.median(chroma, map.paper(), 5);
    Raster neutral = Smoothing.gaussian(grey, 0.12 * mm);
    Raster around = Smoothing.gaussian(grey, 1.3 * mm);
    double strokes = strokeLevel(neutral, around, map.paper());
    Raster dark = darkThings(neutral, DARK_SMOOTHING_MM * mm);
    Raster dye = new Raster(map.width(), map.height());
    Raster ink = new Raster(map.width(), map.height());
    for (int i = 0; i < dye.cells().length; i++) {
      // A pen that lies on the strip has colour, too, and no place among the dyes.
      if (map.paper().cells()[i] == 0 || dark.cells()[i] > AT_DARK) {
        continue;
      }
      float c = (float) (chroma.cells()[i] - level);
      dye.cells()[i] = c > DYE ? c : 0;
      float stroke = neutral.cells()[i] - around.cells()[i];
      double enough = strokes + LIGHT_SLIP_MM * map.steepness().cells()[i];
      ink.cells()[i] = stroke > enough && neutral.cells()[i] > 0.7f * c ? 1 : 0;
    }
    return new StripContent(map, dye, ink, darkShare(neutral, map.paper()));
  }

  /** Share of dark things around each cell: pens and clips, but no strokes of a soft pencil. */
  private static Raster darkThings(Raster neutral, double smoothing) {
    Raster around = Smoothing.gaussian(above(neutral, DARK), smoothing);
    return Smoothing.gaussian(above(around, IN_DARK), 1.5 * smoothing);
  }

  /** 1 where it is more than a level. */
  private static Raster above(Raster raster, float level) {
    Raster above = new Raster(raster.width(), raster.height());
    for (int i = 0; i < above.cells().length; i++) {
      above.cells()[i] = raster.cells()[i] > level ? 1 : 0;
    }
    return above;
  }

  /** Density over the surroundings that paper texture alone hardly reaches. */
  private static double strokeLevel(Raster neutral, Raster around, Raster paper) {
    double[] v = new double[neutral.cells().length / 5 + 1];
    int n = 0;
    for (int i = 0; i < neutral.cells().length; i += 5) {
      if (paper.cells()[i] > 0) {
        v[n++] = Math.abs(neutral.cells()[i] - around.cells()[i]);
      }
    }
    return Math.max(INK, n == 0 ? INK : 4.5 * 1.4826 * Selection.median(v, n));
  }

  /**
   * Share of all dye that lies beyond a front.
   *
   * @param down 1 if the strip's bottom is at the map's last row, −1 if at its first
   */
  double dyeShareBeyond(CrossLine front, int down) {
    return share(dyeSums, front, down);
  }

  /**
   * Share of all dye that lies below a baseline. What comes in over the sheet's end, as a finger
   * that holds it, is none.
   *
   * @param down 1 if the strip's bottom is at the map's last row, −1 if at its first
   */
  double dyeShareBelow(CrossLine baseline, int down) {
    return share(innerSums, baseline, -down);
  }

  /**
   * Share of dye on the side of a line towards the map's first row (1) or its last (−1), less a
   * margin of 2.5 mm for what sits on the line.
   */
  private double share(ColumnSums sums, CrossLine line, int towards) {
    double margin = 2.5 * map.cellsPerMm();
    double sum = 0;
    double all = 0;
    for (int x = 0; x < map.width(); x++) {
      double at = line.at(x + 0.5);
      int from = towards > 0 ? 0 : (int) Math.max(0, Math.ceil(at + margin));
      int to = towards > 0 ? (int) Math.min(map.height(), at - margin) : map.height();
      sum += sums.between(x, from, to);
      all += sums.between(x, 0, map.height());
    }
    return all > 0 ? sum / all : 0;
  }

  /**
   * Area of the dye above the baseline and, where there is one, below the front, less a margin of
   * 2.5 mm for what sits on either line: the dots of an unused strip taken upside down.
   *
   * @param down 1 if the strip's bottom is at the map's last row, −1 if at its first
   */
  double dyeMm2(CrossLine baseline, @Nullable CrossLine front, int down) {
    double margin = 2.5 * map.cellsPerMm();
    double sum = 0;
    for (int x = 0; x < map.width(); x++) {
      double start = baseline.at(x + 0.5) - down * margin;
      double end =
          front == null ? (down > 0 ? 0 : map.height()) : front.at(x + 0.5) + down * margin;
      int from = (int) Math.max(0, down > 0 ? end : start);
      int to = (int) Math.min(map.height(), down > 0 ? start : end);
      for (int y = from; y < to; y++) {
        sum += dye.at(x, y) > 0 ? 1 : 0;
      }
    }
    return sum / (map.cellsPerMm() * map.cellsPerMm());
  }

  /**
   * Share of the area, less what writing takes, that is far darker than paper can be: the desk
   * beside it.
   */
  double darkShare() {
    return darkShare;
  }

  private static double darkShare(Raster neutral, Raster paper) {
    double dark = 0;
    double all = 0;
    for (int i = 0; i < neutral.cells().length; i++) {
      if (paper.cells()[i] > 0) {
        all++;
        dark += neutral.cells()[i] > DARK ? 1 : 0;
      }
    }
    return Math.max(0, dark / Math.max(1, all) - 0.012);
  }

  /** Writing below the line less writing above it, −1 to 1, by how many places across have it. */
  double writingBalance(CrossLine line, int down) {
    double below = placesWithInk(line, 1.3, 11, down);
    double above = placesWithInk(line, 1.3, 11, -down);
    return (below - above) / (below + above + 2);
  }

  /**
   * How well the writing beyond a line goes with the stain between the lines, 0 to 1: lanes' names
   * stand below their lanes, a remark at the front stands anywhere.
   *
   * @param outwards the direction away from the other line: 1 towards the map's last row
   */
  double namesUnderLanes(CrossLine line, int outwards) {
    List<Integer> lanes = stainedLanes(line, outwards);
    boolean[] written = writtenBins(line, outwards);
    int named = 0;
    for (int lane : lanes) {
      named += any(written, lane - 1, lane + 1) ? 1 : 0;
    }
    int ink = 0;
    int placed = 0;
    for (int b = 0; b < written.length; b++) {
      int bin = b;
      ink += written[b] ? 1 : 0;
      placed += written[b] && lanes.stream().anyMatch(lane -> Math.abs(lane - bin) <= 2) ? 1 : 0;
    }
    return lanes.isEmpty() || ink == 0 ? 0 : 0.75 * named / lanes.size() + 0.25 * placed / ink;
  }

  private static boolean any(boolean[] flags, int from, int to) {
    for (int b = Math.max(0, from); b <= Math.min(flags.length - 1, to); b++) {
      if (flags[b]) {
        return true;
      }
    }
    return false;
  }

  /**
   * Bins across in the middle of the lanes, by the dye on the inner side of a line: the peaks that
   * a clear dip parts from each other. Lanes that touch are still as many as their peaks.
   */
  private List<Integer> stainedLanes(CrossLine line, int outwards) {
    int bins = line.x().length;
    double[] amount = new double[bins];
    double margin = (line.kind() == LineKind.INK ? INK_RUN_MM : 3) * map.cellsPerMm();
    for (int x = 0; x < map.width(); x++) {
      double at = line.at(x + 0.5) - outwards * margin;
      int b = Math.min(bins - 1, x * bins / map.width());
      // The rows on the inner side of the line, which itself belongs to neither.
      int from = outwards > 0 ? 0 : (int) Math.max(0, Math.floor(at) + 1);
      int to = outwards > 0 ? (int) Math.min(map.height(), Math.ceil(at)) : map.height();
      amount[b] += dyeSums.between(x, from, to);
    }
    double[] sorted = amount.clone();
    java.util.Arrays.sort(sorted);
    // A twentieth of a strong lane: the rim of a spot, but no paper stain.
    double enough = Math.max(0.05 * sorted[(int) (0.9 * (bins - 1))], 0.2 * map.cellsPerMm());
    List<Integer> lanes = new ArrayList<>();
    double dip = 0;
    for (int b = 0; b < bins; b++) {
      dip = Math.min(dip, amount[b]);
      boolean peak =
          amount[b] > enough
              && (b == 0 || amount[b] >= amount[b - 1])
              && (b == bins - 1 || amount[b] > amount[b + 1]);
      if (!peak) {
        continue;
      }
      int last = lanes.size() - 1;
      if (last >= 0 && dip > DIP * Math.min(amount[lanes.get(last)], amount[b])) {
        lanes.set(last, amount[b] > amount[lanes.get(last)] ? b : lanes.get(last));
      } else {
        lanes.add(b);
      }
      dip = amount[b];
    }
    return lanes;
  }

  private boolean[] writtenBins(CrossLine line, int outwards) {
    double mm = map.cellsPerMm();
    double[] amount = inkAmounts(line, 1.3, 11, outwards);
    boolean[] written = new boolean[amount.length];
    for (int b = 0; b < amount.length; b++) {
      written[b] = amount[b] > 0.4 * mm;
    }
    return written;
  }

  /** Short marks, dots and left-over dye that start on the line, 0 to 1. */
  double marksOn(CrossLine line, int down) {
    double up = placesWithInk(line, 0.7, 2.2, -down);
    return up / (up + 3);
  }

  /**
   * Share of the lanes, by the stain on the inner side of a line, that have a dot on it: where the
   * sample was put, in pencil or of what stayed there. Of two lines that look alike it tells which
   * is the baseline.
   *
   * @param outwards the direction away from the other line: 1 towards the map's last row
   */
  double dotsAtLanes(CrossLine line, int outwards) {
    List<Integer> lanes = stainedLanes(line, outwards);
    boolean[] dotted = new LineDots(map).bins(line);
    int with = 0;
    for (int lane : lanes) {
      with += any(dotted, lane - 1, lane + 1) ? 1 : 0;
    }
    return lanes.isEmpty() ? 0 : with / (double) lanes.size();
  }

  private double placesWithInk(CrossLine line, double fromMm, double toMm, int direction) {
    int places = 0;
    for (double a : inkAmounts(line, fromMm, toMm, direction)) {
      places += a > 0.4 * map.cellsPerMm() ? 1 : 0;
    }
    return places;
  }

  /** Cells of ink in a band beside a line, for each bin across. */
  private double[] inkAmounts(CrossLine line, double fromMm, double toMm, int direction) {
    double mm = map.cellsPerMm();
    int bins = line.x().length;
    double[] amount = new double[bins];
    for (int x = 0; x < map.width(); x++) {
      double at = line.at(x + 0.5);
      int b = Math.min(bins - 1, x * bins / map.width());
      for (double d = fromMm * mm; d < toMm * mm; d++) {
        int y = (int) Math.floor(at + direction * d);
        if (y >= 0 && y < map.height()) {
          amount[b] += ink.at(x, y);
        }
      }
    }
    return amount;
  }
}
