package wickmark.imaging.line;

import org.jspecify.annotations.Nullable;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Selection;
import wickmark.imaging.raster.Smoothing;

/** Where on the strip there is colour and where there is writing, for telling its ends apart. */
final class StripContent {
  /** Least smoothed chroma that counts as dye. */
  private static final float DYE = 0.02f;

  /** Grey density that no paper has, even in shadow. */
  private static final float DARK = 0.45f;

  /** Least grey density that counts as pencil. */
  private static final float INK = 0.045f;

  /** Four letters of 4 mm; bins are 2 mm. */
  private static final double LONGEST_NAME_MM = 12;

  private final DensityMap map;
  private final Raster dye;
  private final Raster ink;
  private final Raster neutral;
  private final double totalDye;

  private StripContent(DensityMap map, Raster dye, Raster ink, Raster neutral) {
    this.map = map;
    this.dye = dye;
    this.ink = ink;
    this.neutral = neutral;
    double sum = 0;
    for (float d : dye.cells()) {
      sum += d;
    }
    this.totalDye = sum;
  }

  static StripContent of(DensityMap map) {
    double mm = map.cellsPerMm();
    Raster chroma = Smoothing.gaussian(map.chroma(), 0.6 * mm);
    double level = median(chroma, map.paper());
    Raster neutral = Smoothing.gaussian(map.neutral(), 0.12 * mm);
    Raster dye = new Raster(map.width(), map.height());
    Raster ink = new Raster(map.width(), map.height());
    for (int i = 0; i < dye.cells().length; i++) {
      if (map.paper().cells()[i] == 0) {
        continue;
      }
      float c = (float) (chroma.cells()[i] - level);
      dye.cells()[i] = c > DYE ? c : 0;
      ink.cells()[i] = neutral.cells()[i] > INK && neutral.cells()[i] > c ? 1 : 0;
    }
    return new StripContent(map, dye, ink, neutral);
  }

  private static double median(Raster in, Raster paper) {
    double[] v = new double[in.cells().length / 5 + 1];
    int n = 0;
    for (int i = 0; i < in.cells().length; i += 5) {
      if (paper.cells()[i] > 0) {
        v[n++] = in.cells()[i];
      }
    }
    return n == 0 ? 0 : Selection.median(v, n);
  }

  /**
   * Share of all dye that lies on the far side of a line.
   *
   * @param towards −1 for the side away from the map's first row seen from the line, 1 for the side
   *     towards it; less a margin of 2.5 mm for what sits on the line
   */
  double dyeShareBeyond(CrossLine line, int towards) {
    if (totalDye <= 0) {
      return 0;
    }
    double margin = 2.5 * map.cellsPerMm();
    double sum = 0;
    for (int x = 0; x < map.width(); x++) {
      double at = line.at(x + 0.5);
      int from = towards > 0 ? 0 : (int) Math.max(0, Math.ceil(at + margin));
      int to = towards > 0 ? (int) Math.min(map.height(), at - margin) : map.height();
      for (int y = from; y < to; y++) {
        sum += dye.at(x, y);
      }
    }
    return sum / totalDye;
  }

  /**
   * Area of the dye above the baseline and, where there is one, below the front, less a margin of
   * 2.5 mm for what sits on the baseline.
   *
   * @param down 1 if the strip's bottom is at the map's last row, −1 if at its first
   */
  double dyeMm2(CrossLine baseline, @Nullable CrossLine front, int down) {
    double margin = 2.5 * map.cellsPerMm();
    double sum = 0;
    for (int x = 0; x < map.width(); x++) {
      double start = baseline.at(x + 0.5) - down * margin;
      double end = front == null ? (down > 0 ? 0 : map.height()) : front.at(x + 0.5);
      int from = (int) Math.max(0, Math.min(start, end));
      int to = (int) Math.min(map.height(), Math.max(start, end));
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
    double dark = 0;
    double all = 0;
    for (int i = 0; i < neutral.cells().length; i++) {
      if (map.paper().cells()[i] > 0) {
        all++;
        dark += neutral.cells()[i] > DARK ? 1 : 0;
      }
    }
    return Math.max(0, dark / Math.max(1, all) - 0.012);
  }

  /**
   * Names below the line less names above it, −1 to 1. A name is short; what runs on for longer is
   * a word, as people write it at the front.
   */
  double writingBalance(CrossLine line, int down) {
    double below = names(inkPerBin(line, 1.3, 11, down));
    double above = names(inkPerBin(line, 1.3, 11, -down));
    return (below - above) / (below + above + 2);
  }

  /** Short marks, dots and left-over dye that start on the line, 0 to 1. */
  double marksOn(CrossLine line, int down) {
    double up = 0;
    for (double amount : inkPerBin(line, 0.7, 2.2, -down)) {
      up += hasInk(amount) ? 1 : 0;
    }
    return up / (up + 3);
  }

  private boolean hasInk(double amount) {
    return amount > 0.4 * map.cellsPerMm();
  }

  /** Runs of neighbouring bins with ink; one that is longer than a lane's name counts for less. */
  private double names(double[] ink) {
    double binMm = map.width() / map.cellsPerMm() / ink.length;
    double names = 0;
    int run = 0;
    for (int b = 0; b <= ink.length; b++) {
      if (b < ink.length && hasInk(ink[b])) {
        run++;
      } else {
        names += run == 0 ? 0 : Math.min(1, LONGEST_NAME_MM / (run * binMm));
        run = 0;
      }
    }
    return names;
  }

  private double[] inkPerBin(CrossLine line, double fromMm, double toMm, int direction) {
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
