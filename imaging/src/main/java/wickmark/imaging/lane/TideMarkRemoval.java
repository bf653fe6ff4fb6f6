package wickmark.imaging.lane;

import wickmark.imaging.line.FittedLine;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.RidgePath;
import wickmark.imaging.raster.Selection;
import wickmark.imaging.raster.Smoothing;

/**
 * Takes the solvent's tide mark at the front out of the density: a brown line that wanders from
 * side to side, sharp towards the blank paper and fading out towards the spots. It lies in the
 * lanes as it does between them, where no dye is, and so it is told from dye that ran with the
 * front.
 */
final class TideMarkRemoval {
  /** How far from the front that was found or drawn the mark may lie, mm. */
  private static final double REACH_MM = 4;

  /** Width of the bins in which its course is followed, mm. */
  private static final double BIN_MM = 1;

  private static final double SMOOTHING_MM = 0.3;

  /** Distance from the crest of where it is compared with, mm. */
  private static final double BESIDE_MM = 1.2;

  /** Least contrast in blue, which such marks absorb most, over that in red (common practice). */
  private static final double LEAST_CONTRAST = 0.01;

  /** Share of the width in which it must have that: lanes alone take less. */
  private static final double THROUGHOUT = 0.7;

  /** What a step of one cell costs the course, density. */
  private static final double STEP_COST = 0.002;

  /** Steepest slope of the course: 45°. */
  private static final double STEEPEST = 1;

  /** What the mark has alike in all columns: from this far outside to so far inside, mm. */
  private static final double OUTSIDE_MM = 1.5;

  private static final double INSIDE_MM = 6;

  /** Rank of the mark's own density among the columns, of which some bear dye. */
  private static final double OWN = 0.4;

  private final Raster paper;
  private final FittedLine front;
  private final double mm;
  private final int bins;
  private final int reach;

  private TideMarkRemoval(DensityMap map, FittedLine front) {
    this.paper = map.paper();
    this.front = front;
    this.mm = map.cellsPerMm();
    this.bins = Math.max(6, (int) (paper.width() / (BIN_MM * mm)));
    this.reach = (int) Math.round(REACH_MM * mm);
  }

  /**
   * Takes it off, if there is one.
   *
   * @param map the densities with all that is on the paper
   * @param withoutLines the same without the lines that were drawn; they are changed
   */
  static void takeOff(DensityMap map, Raster[] withoutLines, FittedLine front) {
    TideMarkRemoval removal = new TideMarkRemoval(map, front);
    double[][] brown = removal.contrasts(brown(map.density()));
    int steepest = (int) Math.max(1, Math.round(STEEPEST * BIN_MM * map.cellsPerMm()));
    int[] course = RidgePath.strongest(brown, steepest, STEP_COST);
    if (removal.isThroughout(course, brown)) {
      double[] rows = removal.rows(course);
      for (Raster channel : withoutLines) {
        removal.takeOffWake(channel, rows);
      }
      LineRemoval.bridge(withoutLines, x -> rows[x], map.cellsPerMm());
    }
  }

  /** Blue less red: pencil, which may run along the mark, has none. */
  private static Raster brown(Raster[] density) {
    Raster brown = density[2].copy();
    for (int i = 0; i < brown.cells().length; i++) {
      brown.cells()[i] -= density[0].cells()[i];
    }
    return brown;
  }

  private double middleOf(int bin) {
    return (bin + 0.5) * paper.width() / bins;
  }

  /** By bin and by row from the reach above the front: how much denser than above and below. */
  private double[][] contrasts(Raster channel) {
    Raster smooth = Smoothing.gaussian(channel, SMOOTHING_MM * mm);
    int beside = (int) Math.max(2, Math.round(BESIDE_MM * mm));
    double[][] contrast = new double[bins][2 * reach + 1];
    for (int b = 0; b < bins; b++) {
      int from = b * paper.width() / bins;
      int to = (b + 1) * paper.width() / bins;
      int middle = (int) Math.floor(front.at(middleOf(b)));
      for (int k = -reach; k <= reach; k++) {
        contrast[b][k + reach] = contrast(smooth, from, to, middle + k, beside);
      }
    }
    return contrast;
  }

  private double contrast(Raster smooth, int from, int to, int y, int beside) {
    if (y - beside < 0 || y + beside >= paper.height()) {
      return 0;
    }
    double sum = 0;
    int n = 0;
    for (int x = from; x < to; x++) {
      if (paper.at(x, y) > 0 && paper.at(x, y - beside) > 0 && paper.at(x, y + beside) > 0) {
        sum += smooth.at(x, y) - (smooth.at(x, y - beside) + smooth.at(x, y + beside)) / 2;
        n++;
      }
    }
    return n == 0 ? 0 : sum / n;
  }

  /** Whether a course is seen from side to side. */
  private boolean isThroughout(int[] course, double[][] contrast) {
    int seen = 0;
    for (int b = 0; b < bins; b++) {
      seen += contrast[b][course[b]] > LEAST_CONTRAST ? 1 : 0;
    }
    return seen >= THROUGHOUT * bins;
  }

  /** The course's row in each column. */
  private double[] rows(int[] course) {
    double[] rows = new double[paper.width()];
    for (int x = 0; x < rows.length; x++) {
      double place = (x + 0.5) * bins / paper.width() - 0.5;
      int b = (int) Raster.within(Math.floor(place), bins - 2.0);
      double share = Raster.within(place - b, 1);
      double aside = course[b] + share * (course[b + 1] - course[b]) - reach;
      rows[x] = front.at(x + 0.5) + aside;
    }
    return rows;
  }

  /** Takes off what all columns have alike at the same distance from the course. */
  private void takeOffWake(Raster channel, double[] rows) {
    int outside = (int) Math.round(OUTSIDE_MM * mm);
    int inside = (int) Math.round(INSIDE_MM * mm);
    double[] column = new double[paper.width()];
    double before = Double.POSITIVE_INFINITY;
    for (int k = -outside; k <= inside; k++) {
      int n = 0;
      for (int x = 0; x < rows.length; x++) {
        int y = (int) Math.floor(rows[x]) + k;
        if (y >= 0 && y < paper.height() && paper.at(x, y) > 0) {
          column[n++] = channel.at(x, y);
        }
      }
      double own = n == 0 ? 0 : Math.max(0, Selection.nth(column, n, (int) (OWN * (n - 1))));
      // Inwards the mark fades out: what grows again is a row of spots.
      own = k > 0 ? Math.min(own, before) : own;
      before = own;
      for (int x = 0; x < rows.length; x++) {
        int y = (int) Math.floor(rows[x]) + k;
        if (y >= 0 && y < paper.height()) {
          channel.set(x, y, (float) (channel.at(x, y) - own));
        }
      }
    }
  }
}
