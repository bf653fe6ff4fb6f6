package wickmark.testdata.strip;

import java.util.ArrayList;
import java.util.List;
import wickmark.testdata.colour.Cielab;
import wickmark.testdata.colour.ColourNames;
import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.truth.PointMm;
import wickmark.testdata.truth.SegmentMm;
import wickmark.testdata.truth.SpotExtent;
import wickmark.testdata.truth.SpotLook;
import wickmark.testdata.truth.SpotPlace;
import wickmark.testdata.truth.SpotTruth;

/** Works out a spot's truth from the density that was painted for it. */
final class SpotTruthFinder {
  private static final double SEEN_SHARE = 0.1;
  private static final double SEEN_DIFFERENCE = 3;

  private final Raster raster;
  private final LinearRgb paper;
  private final Cielab paperLab;
  private final LaneWay way;

  SpotTruthFinder(Raster raster, LinearRgb paper, LaneWay way) {
    this.raster = raster;
    this.paper = paper;
    this.paperLab = Cielab.of(paper);
    this.way = way;
  }

  SpotTruth truth(SpotPatch patch) {
    SpotPlan plan = patch.plan();
    SpotPlace place = place(patch);
    double least = Math.max(SEEN_SHARE * plan.absorbance(), seenAbsorbance(plan));
    boolean visible = least <= plan.absorbance();
    SpotExtent extent = extent(patch, visible ? least : SEEN_SHARE * plan.absorbance());
    double middleRf = extent.middleDistanceMm() / way.frontMm();
    return new SpotTruth(
        0,
        plan.dye().name(),
        plan.residue(),
        flags(plan, place, extent),
        new SpotTruth.Where(place, extent, middleRf),
        look(plan, visible, mean(patch, least)));
  }

  private SpotPlace place(SpotPatch patch) {
    double sum = 0;
    double sumX = 0;
    double sumY = 0;
    int peak = 0;
    for (int i = 0; i < patch.density().length; i++) {
      double density = patch.density()[i];
      sum += density;
      sumX += density * x(patch, i);
      sumY += density * y(patch, i);
      if (patch.density()[i] > patch.density()[peak]) {
        peak = i;
      }
    }
    PointMm centroid = new PointMm(sumX / sum, sumY / sum);
    double distance = way.baseline().heightOf(centroid);
    return new SpotPlace(
        new PointMm(x(patch, peak), y(patch, peak)), centroid, distance, distance / way.frontMm());
  }

  private SpotExtent extent(SpotPatch patch, double least) {
    double top = Double.NEGATIVE_INFINITY;
    double bottom = Double.POSITIVE_INFINITY;
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double half = 0.5 / raster.pxPerMm();
    SegmentMm baseline = way.baseline();
    for (int i = 0; i < patch.density().length; i++) {
      if (patch.density()[i] >= least) {
        double height = baseline.heightOf(new PointMm(x(patch, i), y(patch, i)));
        top = Math.max(top, height + half);
        bottom = Math.min(bottom, height - half);
        left = Math.min(left, x(patch, i) - half);
        right = Math.max(right, x(patch, i) + half);
      }
    }
    return new SpotExtent(top, bottom, left, right);
  }

  /** Returns the absorbance at which this dye is 3 CIELAB units from the paper, or infinity. */
  private double seenAbsorbance(SpotPlan plan) {
    double low = 0;
    double high = plan.absorbance();
    if (difference(plan, high) < SEEN_DIFFERENCE) {
      return Double.POSITIVE_INFINITY;
    }
    for (int i = 0; i < 40; i++) {
      double middle = (low + high) / 2;
      if (difference(plan, middle) < SEEN_DIFFERENCE) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private double difference(SpotPlan plan, double absorbance) {
    return Cielab.of(paper.behind(absorbance, plan.dye().absorption())).differenceFrom(paperLab);
  }

  private LinearRgb mean(SpotPatch patch, double least) {
    double level = Math.min(least, SEEN_SHARE * patch.plan().absorbance());
    LinearRgb share = patch.plan().dye().absorption();
    double[] sum = new double[3];
    int count = 0;
    for (float density : patch.density()) {
      if (density >= level) {
        for (int c = 0; c < 3; c++) {
          sum[c] += Decadic.left((float) (density * share.channel(c)));
        }
        count++;
      }
    }
    return paper.times(new LinearRgb(sum[0] / count, sum[1] / count, sum[2] / count));
  }

  private SpotLook look(SpotPlan plan, boolean visible, LinearRgb mean) {
    Cielab core = Cielab.of(paper.behind(plan.absorbance(), plan.dye().absorption()));
    return new SpotLook(
        plan.absorbance(),
        visible,
        plan.dye().colour(),
        ColourNames.of(core, paperLab),
        Cielab.of(mean),
        core);
  }

  private List<String> flags(SpotPlan plan, SpotPlace place, SpotExtent extent) {
    List<String> flags = new ArrayList<>();
    if (plan.shape().tailMm() > 0) {
      flags.add("tailing");
    }
    if (Math.abs(plan.shape().crescentMm()) > 0.4 * plan.shape().alongMm()) {
      flags.add("crescent");
    }
    if (plan.shape().flatness() >= 2 && !plan.residue()) {
      flags.add("overloaded");
    }
    if (extent.topDistanceMm() > way.frontMm() - 0.5) {
      flags.add("at_front");
    }
    if (place.distanceMm() < 0.03 * way.frontMm()) {
      flags.add("at_origin");
    }
    return flags;
  }

  private double x(SpotPatch patch, int index) {
    return raster.x(patch.firstColumn() + index % patch.columns());
  }

  private double y(SpotPatch patch, int index) {
    return raster.y(patch.firstRow() + index / patch.columns());
  }
}
