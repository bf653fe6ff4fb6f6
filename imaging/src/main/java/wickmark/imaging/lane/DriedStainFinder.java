package wickmark.imaging.lane;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import wickmark.imaging.raster.Figure;
import wickmark.imaging.raster.Hysteresis;
import wickmark.imaging.raster.MaskMorphology;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Selection;
import wickmark.imaging.raster.Smoothing;
import wickmark.imaging.raster.SquareMorphology;

/**
 * Finds what dried on the paper. A drop carries what is dissolved in it to its rim (Deegan et al.,
 * Capillary flow as the cause of ring stains from dried liquid drops, Nature 389, 1997; from
 * memory): a thin coloured line that bends round on itself, or begins and ends at the paper's edge,
 * and little within. No spot of a dye is a thin line, and what a pencil draws is grey.
 */
final class DriedStainFinder {
  /** Half the width of the broadest rim, mm. */
  private static final double RIM_MM = 0.8;

  /** Smoothing before rims are looked for, mm. */
  private static final double SMOOTHING_MM = 0.25;

  /** Least density of a rim over what is beside it, and how far down it is followed. */
  private static final double SURE = 0.02;

  private static final double FLANK = 0.01;

  /** The same, times what the paper's grain has. */
  private static final double SURE_OVER_GRAIN = 6;

  private static final double FLANK_OVER_GRAIN = 3;

  /** Half the gap in a rim that is bridged, mm. */
  private static final double GAP_MM = 1;

  /** By how much more than there is of a channel may be taken off, times the paper's grain. */
  private static final double GRAIN = 2;

  /** How far beyond a line a rim's broad places reach, mm. */
  private static final double BROAD_MM = 2;

  /** How far a rim reaches beyond where it is seen, mm. */
  private static final double BLUR_MM = 0.4;

  /** Least length and breadth of a stain, mm: a ring around a spot is smaller, a line straight. */
  private static final double LEAST_LENGTH_MM = 9;

  private static final double LEAST_BREADTH_MM = 5;

  /** Least part of what a rim surrounds over what it covers. */
  private static final double HOLLOW = 0.5;

  /** Difference of two channels over the greater, from which a rim is no pencil's line. */
  private static final double COLOURED = 0.25;

  /** Rank of the stain's own density among the cells within, of which some bear dye. */
  private static final double OWN = 0.4;

  private final Raster[] density;
  private final Raster paper;
  private final double mm;
  private final int width;

  private DriedStainFinder(Raster[] density, Raster paper, double mm) {
    this.density = density;
    this.paper = paper;
    this.mm = mm;
    this.width = paper.width();
  }

  /**
   * Finds stains and takes them off.
   *
   * @param density red, green and blue; they are changed where there is a stain
   * @param paper 1 on the paper
   * @param mm cells per (nominal) millimetre
   */
  static DriedStain.TakenOff takeOff(Raster[] density, Raster paper, double mm) {
    return new DriedStainFinder(density, paper, mm).takenOff();
  }

  private DriedStain.TakenOff takenOff() {
    Raster mean = new Raster(width, paper.height());
    for (int i = 0; i < mean.cells().length; i++) {
      mean.cells()[i] = (density[0].cells()[i] + density[1].cells()[i] + density[2].cells()[i]) / 3;
    }
    Raster ridges = ridges(Smoothing.gaussian(mean, SMOOTHING_MM * mm));
    double grain = typical(ridges);
    Raster lines =
        Hysteresis.above(
            ridges,
            Math.max(SURE, SURE_OVER_GRAIN * grain),
            Math.max(FLANK, FLANK_OVER_GRAIN * grain));
    Raster bridged = MaskMorphology.closed(lines, (int) Math.round(GAP_MM * mm));
    Raster rims = MaskMorphology.dilated(bridged, (int) Math.round(BLUR_MM * mm));
    List<DriedStain> stains = new ArrayList<>();
    for (Figure rim : Figure.in(rims)) {
      if (takeOff(rim, lines, grain)) {
        stains.add(new DriedStain(rim.left(), rim.right(), rim.top(), rim.bottom()));
      }
    }
    return new DriedStain.TakenOff(density, stains);
  }

  /** What is higher than all around and narrower than a rim. */
  private Raster ridges(Raster in) {
    Raster out = SquareMorphology.opened(in, (int) Math.round(RIM_MM * mm));
    for (int i = 0; i < out.cells().length; i++) {
      out.cells()[i] = paper.cells()[i] > 0 ? in.cells()[i] - out.cells()[i] : 0;
    }
    return out;
  }

  /** What blank paper's grain has: the middle value, for most of a strip is blank. */
  private double typical(Raster ridges) {
    return Selection.median(ridges, paper, 5);
  }

  private boolean takeOff(Figure rim, Raster lines, double grain) {
    double length = Math.max(rim.columns(), rim.rows()) / mm;
    double breadth = Math.min(rim.columns(), rim.rows()) / mm;
    if (length < LEAST_LENGTH_MM || breadth < LEAST_BREADTH_MM) {
      return false;
    }
    int[] within = rim.within(paper).cells();
    if (within.length < HOLLOW * rim.cells().length) {
      return false;
    }
    int[] seen = Arrays.stream(rim.cells()).filter(i -> lines.cells()[i] > 0).toArray();
    double[] level = new double[3];
    double[] height = new double[3];
    for (int c = 0; c < 3; c++) {
      Raster ridge = ridges(density[c]);
      level[c] = own(density[c], within);
      height[c] = Math.max(0, mean(ridge, seen) - typical(ridge));
    }
    if (!isColoured(height) || sum(level) > sum(height)) {
      return false;
    }
    for (int c = 0; c < 3; c++) {
      for (int i : within) {
        density[c].cells()[i] -= (float) level[c];
      }
    }
    takeOffRim(rim, height, grain);
    return true;
  }

  /**
   * Takes off what has the stain's colour on its rim and close to it, where the rim is broader than
   * a line: the least squares' amount, but hardly more than there is in each channel, so that a dye
   * of another colour stays.
   */
  private void takeOffRim(Figure rim, double[] colour, double grain) {
    Raster near = new Raster(width, paper.height());
    for (int i : rim.cells()) {
      near.cells()[i] = 1;
    }
    near = MaskMorphology.dilated(near, (int) Math.round(BROAD_MM * mm));
    double squares = 0;
    Raster[] smooth = new Raster[3];
    for (int c = 0; c < 3; c++) {
      squares += colour[c] * colour[c];
      smooth[c] = Smoothing.gaussian(density[c], SMOOTHING_MM * mm);
    }
    for (int i = 0; i < near.cells().length; i++) {
      if (near.cells()[i] > 0) {
        double along = 0;
        double most = Double.POSITIVE_INFINITY;
        for (int c = 0; c < 3; c++) {
          double d = smooth[c].cells()[i];
          along += d * colour[c];
          most = colour[c] > 0 ? Math.min(most, (d + GRAIN * grain) / colour[c]) : most;
        }
        double share = Math.max(0, Math.min(along / squares, most));
        for (int c = 0; c < 3; c++) {
          density[c].cells()[i] -= (float) (share * colour[c]);
        }
      }
    }
  }

  private static boolean isColoured(double[] height) {
    double most = Math.max(height[0], Math.max(height[1], height[2]));
    double least = Math.min(height[0], Math.min(height[1], height[2]));
    return most - least > COLOURED * most;
  }

  private static double sum(double[] channels) {
    return channels[0] + channels[1] + channels[2];
  }

  private static double own(Raster in, int[] cells) {
    double[] v = Arrays.stream(cells).mapToDouble(i -> in.cells()[i]).toArray();
    return Selection.nth(v, v.length, (int) (OWN * (v.length - 1)));
  }

  private static double mean(Raster in, int[] cells) {
    return Arrays.stream(cells).mapToDouble(i -> in.cells()[i]).average().orElse(0);
  }
}
