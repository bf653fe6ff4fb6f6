package wickmark.testdata.strip;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.noise.ValueNoise;
import wickmark.testdata.truth.PointMm;

/** Where the paper ends: four edges as they were cut, and punched holes. */
public final class SheetEdges {
  private static final double STEP_MM = 0.1;

  private final List<PointMm> corners;
  private final double[] left;
  private final double[] right;
  private final double[] bottom;
  private final double[] top;
  private final double width;
  private final double height;
  private final List<Blemish.Hole> holes = new ArrayList<>();
  private final List<Blemish.TrimmedCorner> trims = new ArrayList<>();

  SheetEdges(Sheet sheet, List<Blemish> blemishes, long seed) {
    this.corners = corners(sheet, new Dice(seed));
    double w = sheet.widthMm();
    double h = sheet.heightMm();
    this.width = w;
    this.height = h;
    PointMm tl = corners.get(0);
    PointMm tr = corners.get(1);
    PointMm br = corners.get(2);
    PointMm bl = corners.get(3);
    double round = sheet.cut().roundMm();
    Figure figure = sheet.cut().figure();
    this.left = edge(h, bl.x(), tl.x(), sheet.cut(), share -> 0, seed + 1);
    this.right = edge(h, br.x(), tr.x(), sheet.cut(), share -> 0, seed + 2);
    this.bottom =
        edge(
            w,
            bl.y(),
            br.y(),
            sheet.cut(),
            share -> figure.riseAt(share) - bulge(round, share),
            seed + 3);
    this.top = edge(w, tl.y(), tr.y(), sheet.cut(), share -> bulge(round, share), seed + 4);
    for (Blemish blemish : blemishes) {
      if (blemish instanceof Blemish.Hole hole) {
        holes.add(hole);
      } else if (blemish instanceof Blemish.TrimmedCorner trim) {
        trims.add(trim);
      }
    }
  }

  /** Returns the four corners as cut: top-left, top-right, bottom-right, bottom-left. */
  List<PointMm> corners() {
    return corners;
  }

  /** Returns whether there is paper at a place. */
  public boolean hasPaperAt(double x, double y) {
    if (x < at(left, y) || x > at(right, y) || y < at(bottom, x) || y > at(top, x)) {
      return false;
    }
    for (Blemish.Hole hole : holes) {
      double dx = x - hole.centre().x();
      double dy = y - hole.centre().y();
      if (dx * dx + dy * dy < hole.radiusMm() * hole.radiusMm()) {
        return false;
      }
    }
    for (Blemish.TrimmedCorner trim : trims) {
      if ((trim.right() ? width - x : x) + (trim.upper() ? height - y : y) < trim.sideMm()) {
        return false;
      }
    }
    return true;
  }

  private static List<PointMm> corners(Sheet sheet, Dice dice) {
    double skew = sheet.cut().skewMm();
    List<PointMm> corners = new ArrayList<>();
    for (PointMm corner : sheet.cut().figure().corners(sheet.widthMm(), sheet.heightMm())) {
      corners.add(
          new PointMm(
              corner.x() + dice.between(-skew, skew), corner.y() + dice.between(-skew, skew)));
    }
    return corners;
  }

  private static double[] edge(
      double length, double from, double to, Cut cut, DoubleUnaryOperator bowed, long seed) {
    double[] edge = new double[(int) (length / STEP_MM) + 2];
    ValueNoise noise = new ValueNoise(seed);
    for (int i = 0; i < edge.length; i++) {
      double along = i * STEP_MM;
      double share = along / length;
      double ends = Math.min(1, 8 * Math.min(share, Math.max(0, 1 - share)));
      edge[i] =
          from
              + share * (to - from)
              + bowed.applyAsDouble(share)
              + ends * cut.waverMm() * noise.octaves(along / 28, 0.5, 2)
              + 2.2 * cut.roughMm() * noise.octaves(along / 0.7, 7.5, 3);
    }
    return edge;
  }

  private static double bulge(double middleMm, double share) {
    return middleMm * 4 * share * (1 - share);
  }

  private static double at(double[] edge, double place) {
    double index = place / STEP_MM;
    int low = Math.max(0, Math.min(edge.length - 2, (int) Math.floor(index)));
    double rest = Math.max(0, Math.min(1, index - low));
    return edge[low] + rest * (edge[low + 1] - edge[low]);
  }
}
