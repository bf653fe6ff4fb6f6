package wickmark.imaging.line;

import java.util.ArrayList;
import java.util.List;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.RidgePath;
import wickmark.imaging.raster.Selection;

/**
 * Finds thin lines that run across the strip: a ridge filter down the columns, averaged over bins
 * of columns, then the smooth path of the greatest total contrast by dynamic programming; the
 * strongest is taken out and the next is looked for.
 */
final class CrossLineFinder {
  private static final double BIN_MM = 2;
  private static final int MOST = 7;

  /**
   * Middle contrast of a line over the noise, at the least: in noise alone the best of all paths
   * has less (1.49 at most in 144 maps of noise of four sizes and three grains).
   */
  private static final double LEAST_STRENGTH = 1.5;

  private static final double INK_COVERAGE = 0.8;

  /** Least middle contrast of ink, density: a tide mark has less. */
  private static final double INK_CONTRAST = 0.04;

  /** Colour of ink as a part of how dark the same line is, at the least. */
  private static final double LEAST_TINT = 0.33;

  /**
   * Green and red of a brown or yellow mark as parts of its blue, densities, at the most: {@link
   * TideFilter} takes them for 0.65 and 0.45, and paper yellows towards less; of red ink green is
   * as dense as blue, of blue and black ink red.
   */
  private static final double MOST_GREEN = 0.85;

  private static final double MOST_RED = 0.65;

  /** How far beside a tide mark the paper is its own again, mm. */
  private static final double TIDE_REACH_MM = 1.7;

  /** Density that no tide mark reaches; beyond {@link #CREST_LIMIT} none is told from another. */
  private static final double DEEPEST_BROWN = 0.1;

  /** Contrast beyond which a brown mark counts no more. */
  private static final double CREST_LIMIT = 0.12;

  /**
   * Middle steepness of the light along a line, density per millimetre, from which it is an edge.
   * Pencil lines on paper lie at 0.005 and less, also in a shadow that they cross; paper on a grey
   * desk ends with 0.2, on a black one with 0.8.
   */
  private static final double EDGE_STEEPNESS = 0.08;

  /** How far from a line the light changes that it is the edge of, mm. */
  private static final double EDGE_MM = 1;

  /** Lines nearer than this are one, mm. */
  private static final double SAME_LINE_MM = 1.5;

  /** Steepest slope of a path: 4°. */
  private static final double STEEPEST = 0.07;

  private final DensityMap map;
  private final int bins;
  private final double[] middle;

  private CrossLineFinder(DensityMap map) {
    this.map = map;
    this.bins = Math.max(6, (int) (map.width() / (BIN_MM * map.cellsPerMm())));
    this.middle = new double[bins];
    for (int b = 0; b < bins; b++) {
      middle[b] = (b + 0.5) * map.width() / bins;
    }
  }

  /** Returns pencil lines, pairs of ticks, tide marks and lines of ink, strongest of each first. */
  static List<CrossLine> find(DensityMap map, SmoothDensities smooth) {
    CrossLineFinder finder = new CrossLineFinder(map);
    List<CrossLine> lines = new ArrayList<>();
    double mm = map.cellsPerMm();
    Raster pencil = ridge(smooth.grey(), 1.0 * mm, 0.25);
    lines.addAll(finder.trace(LineKind.PENCIL, pencil, map.paper(), 0.12));
    lines.addAll(EndTicks.find(map, pencil, finder.middle));
    Raster brown = TideFilter.combined(map, smooth.channels(), SmoothDensities.CHANNELS_MM * mm);
    Raster tide = crest(brown, TIDE_REACH_MM * mm, CREST_LIMIT);
    lines.addAll(finder.trace(LineKind.TIDE_MARK, tide, undyed(smooth.dye()), 0.05));
    Raster ink = ridge(smooth.chroma(), 1.2 * mm, 0.25);
    List<CrossLine> others = List.copyOf(lines);
    finder.trace(LineKind.INK, ink, map.paper(), 0.12).stream()
        .filter(CrossLineFinder::isInk)
        .filter(
            line -> others.stream().noneMatch(o -> finder.isColourOf(line, o, smooth.channels())))
        .forEach(lines::add);
    lines.removeIf(finder::isEdge);
    return lines;
  }

  /**
   * Whether the paper ends along a line: a drawn line has the same light on both of its sides, the
   * sheet's edge has the desk on one of them.
   */
  private boolean isEdge(CrossLine line) {
    double[] steepness = new double[bins];
    int reach = (int) Math.ceil(EDGE_MM * map.cellsPerMm());
    for (int b = 0; b < bins; b++) {
      int x = (int) Math.min(map.width() - 1.0, line.x()[b]);
      int from = (int) Math.max(0, line.y()[b] - reach);
      int to = (int) Math.min(map.height() - 1.0, line.y()[b] + reach);
      for (int y = from; y <= to; y++) {
        steepness[b] = Math.max(steepness[b], map.steepness().at(x, y));
      }
    }
    return Selection.median(steepness, bins) > EDGE_STEEPNESS;
  }

  /** A line of one colour from side to side: a row of spots has gaps. */
  private static boolean isInk(CrossLine line) {
    return line.coverage() > INK_COVERAGE && line.strength() > INK_CONTRAST;
  }

  /**
   * Whether a line of colour is what another line is coloured. On brown paper pencil is a little
   * coloured, too, where ink has as much colour as it is dark. A strong tide mark is as deep as
   * pale ink, but brown to yellow; ink that answers to the filter for brown does so as far as it
   * can.
   */
  private boolean isColourOf(CrossLine ink, CrossLine other, Raster[] channels) {
    if (Math.abs(ink.level() - other.level()) > SAME_LINE_MM * map.cellsPerMm()) {
      return false;
    }
    return switch (other.kind()) {
      case PENCIL -> ink.strength() < LEAST_TINT * other.strength();
      case TIDE_MARK -> other.strength() < DEEPEST_BROWN && isBrown(ink, channels);
      default -> false;
    };
  }

  /** Whether a line absorbs blue most and red least, as brown and yellow do. */
  private boolean isBrown(CrossLine line, Raster[] channels) {
    double red = middleCrest(line, channels[0]);
    double green = middleCrest(line, channels[1]);
    double blue = middleCrest(line, channels[2]);
    return green < MOST_GREEN * blue && red < MOST_RED * blue;
  }

  /** How much denser a line is than what lies beside it, in the middle of its bins. */
  private double middleCrest(CrossLine line, Raster channel) {
    int beside = (int) Math.max(2, Math.round(TIDE_REACH_MM * map.cellsPerMm()));
    double[] crest = new double[bins];
    for (int b = 0; b < bins; b++) {
      int x = (int) line.x()[b];
      int y = (int) line.y()[b];
      int above = Math.max(0, y - beside);
      int below = Math.min(channel.height() - 1, y + beside);
      crest[b] = channel.at(x, y) - (channel.at(x, above) + channel.at(x, below)) / 2;
    }
    return Selection.median(crest, bins);
  }

  /** How much a place is denser than both places above and below, limited to a reasonable line. */
  private static Raster ridge(Raster smooth, double reach, double limit) {
    int d = (int) Math.max(2, Math.round(reach));
    Raster out = new Raster(smooth.width(), smooth.height());
    for (int y = 0; y < smooth.height(); y++) {
      int above = Math.max(0, y - d);
      int below = Math.min(smooth.height() - 1, y + d);
      for (int x = 0; x < smooth.width(); x++) {
        float here = smooth.at(x, y);
        float side = Math.max(smooth.at(x, above), smooth.at(x, below));
        out.set(x, y, (float) Math.min(limit, Math.max(-limit, here - side)));
      }
    }
    return out;
  }

  /** 1 where there is no strong colour: the rim of a spot is not a tide mark. */
  private static Raster undyed(Raster chroma) {
    Raster out = new Raster(chroma.width(), chroma.height());
    for (int i = 0; i < out.cells().length; i++) {
      out.cells()[i] = chroma.cells()[i] < 0.08f ? 1 : 0;
    }
    return out;
  }

  /** How much a place is denser than the mean of the places above and below. */
  private static Raster crest(Raster smooth, double reach, double limit) {
    int d = (int) Math.max(2, Math.round(reach));
    Raster out = new Raster(smooth.width(), smooth.height());
    for (int y = 0; y < smooth.height(); y++) {
      int above = Math.max(0, y - d);
      int below = Math.min(smooth.height() - 1, y + d);
      for (int x = 0; x < smooth.width(); x++) {
        float value = smooth.at(x, y) - (smooth.at(x, above) + smooth.at(x, below)) / 2;
        out.set(x, y, (float) Math.min(limit, Math.max(-limit, value)));
      }
    }
    return out;
  }

  private List<CrossLine> trace(LineKind kind, Raster ridge, Raster use, double enough) {
    double[][] mean = binMeans(ridge, use);
    double noise = noise(mean);
    List<CrossLine> found = new ArrayList<>();
    for (int k = 0; k < MOST; k++) {
      CrossLine line = strongest(kind, mean, noise, enough);
      if (line.strength() < LEAST_STRENGTH * noise) {
        break;
      }
      found.add(line);
      suppress(mean, line);
    }
    return found;
  }

  private double[][] binMeans(Raster ridge, Raster use) {
    int h = map.height();
    int w = map.width();
    double[][] mean = new double[bins][h];
    double[][] count = new double[bins][h];
    float[] paper = map.paper().cells();
    for (int y = 0; y < h; y++) {
      for (int b = 0; b < bins; b++) {
        double sum = 0;
        int n = 0;
        for (int i = y * w + firstOf(b); i < y * w + firstOf(b + 1); i++) {
          if (paper[i] > 0 && use.cells()[i] > 0) {
            sum += ridge.cells()[i];
            n++;
          }
        }
        mean[b][y] = sum;
        count[b][y] = n;
      }
    }
    for (int b = 0; b < bins; b++) {
      for (int y = 0; y < h; y++) {
        // A bin that lies mostly beside the paper says nothing.
        mean[b][y] = count[b][y] > 0.4 * map.width() / bins ? mean[b][y] / count[b][y] : 0;
      }
    }
    return mean;
  }

  /** The first column of a bin. */
  private int firstOf(int bin) {
    return (bin * map.width() + bins - 1) / bins;
  }

  private static double noise(double[][] mean) {
    int n = 0;
    double[] all = new double[mean.length * mean[0].length];
    for (double[] row : mean) {
      for (double v : row) {
        if (v != 0) {
          all[n++] = v;
        }
      }
    }
    if (n < 20) {
      return 1e-3;
    }
    double middle = Selection.median(all, n);
    return Math.max(2e-4, 2.19 * (middle - Selection.nth(all, n, n / 4)));
  }

  private CrossLine strongest(LineKind kind, double[][] mean, double noise, double enough) {
    double[][] gain = new double[bins][map.height()];
    for (int b = 0; b < bins; b++) {
      for (int y = 0; y < gain[b].length; y++) {
        gain[b][y] = Math.min(mean[b][y], enough);
      }
    }
    int steepest = (int) Math.max(1, Math.ceil(STEEPEST * map.width() / bins));
    int[] path = RidgePath.strongest(gain, steepest, 0.15 * noise);
    double[] y = new double[bins];
    double[] contrast = new double[bins];
    for (int b = 0; b < bins; b++) {
      double here = mean[b][path[b]];
      y[b] = path[b] + 0.5;
      // A pencil line goes on straight where it cannot be seen, a tide mark anywhere.
      boolean silent =
          kind == LineKind.PENCIL && here < CrossLine.SEEN * noise && isWhite(b, path[b]);
      contrast[b] = silent ? Double.NaN : here;
    }
    return new CrossLine(kind, middle.clone(), y, contrast, noise);
  }

  /** Whether most of a bin's paper is too white to show a line. */
  private boolean isWhite(int bin, int y) {
    int white = 0;
    for (int x = firstOf(bin); x < firstOf(bin + 1); x++) {
      white += map.paper().at(x, y) > 0 && map.white().all(x, y) ? 1 : 0;
    }
    return white > 0.5 * map.width() / bins;
  }

  private void suppress(double[][] mean, CrossLine line) {
    int margin = (int) Math.ceil(1.5 * map.cellsPerMm());
    for (int b = 0; b < bins; b++) {
      int from = (int) Math.max(0, line.y()[b] - margin);
      int to = (int) Math.min(map.height() - 1.0, line.y()[b] + margin);
      for (int y = from; y <= to; y++) {
        mean[b][y] = Math.min(mean[b][y], 0);
      }
    }
  }
}
