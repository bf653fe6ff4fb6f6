package wickmark.imaging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.pose.EvenRow;
import wickmark.imaging.pose.PlaneEvidence;
import wickmark.imaging.pose.PlaneView;
import wickmark.imaging.scale.Graduation;
import wickmark.imaging.scale.GraduationUnit;
import wickmark.imaging.scale.RulerEdge;
import wickmark.imaging.strip.MarkRow;

/** A ruler's marks as an evenly divided row on the paper's plane. */
final class RulerRow {
  /** A ruler edge below this confidence is not a scale. */
  private static final double LEAST_RULER = 0.5;

  /** Places of one edge from which the view is found, each the middle of neighbouring marks. */
  private static final int MOST_GROUPS = 14;

  /** Neighbouring marks whose errors are taken for independent: lenses and rulers bend a little. */
  private static final int MOST_INDEPENDENT = 5;

  /**
   * Independent errors across the ruler over one edge: where marks begin and end is seen less well
   * where they are blurred, worn or shine, and all marks about that place share it.
   */
  private static final double INDEPENDENT_ASIDE = 4;

  /** Least standard uncertainty of one mark. */
  private static final double LEAST_SIGMA_PX = 0.25;

  private static final double INCH_ONLY = 0.6;

  private RulerRow() {}

  /** The edges that are sure enough to be a scale, best first. */
  static List<RulerEdge> usable(List<RulerEdge> edges) {
    return edges.stream()
        .filter(e -> e.confidence() >= LEAST_RULER)
        .sorted(Comparator.comparingDouble((RulerEdge e) -> -e.confidence() * e.marks().size()))
        .toList();
  }

  /**
   * How sure the divisions' length is: that of the best edge, and less where only an edge in inches
   * was read, for these are rarely alone on a ruler.
   */
  static double confidence(List<RulerEdge> edges) {
    RulerEdge best = edges.get(0);
    boolean metric = edges.stream().anyMatch(RulerRow::isMetric);
    return best.confidence() * (metric ? 1 : INCH_ONLY);
  }

  private static boolean isMetric(RulerEdge edge) {
    return edge.unit() == GraduationUnit.MILLIMETRE
        || edge.unit() == GraduationUnit.HALF_MILLIMETRE;
  }

  /** The rows that are sure enough to be rulers, as they lie in the photo. */
  static List<MarkRow> marks(List<RulerEdge> edges) {
    List<MarkRow> rows = new ArrayList<>();
    for (RulerEdge edge : usable(edges)) {
      Graduation first = edge.marks().get(0);
      Graduation last = edge.marks().get(edge.marks().size() - 1);
      double lengthPx = Math.hypot(last.at().x() - first.at().x(), last.at().y() - first.at().y());
      double lengthMm = Math.abs(last.index() - first.index()) * edge.millimetresPerMark();
      rows.add(new MarkRow(first.at(), last.at(), lengthPx / lengthMm));
    }
    return rows;
  }

  static PlaneEvidence.Division division(RulerEdge edge) {
    List<Graduation> marks = edge.marks();
    int size = (marks.size() + MOST_GROUPS - 1) / MOST_GROUPS;
    int groups = (marks.size() + size - 1) / size;
    double[] index = new double[groups];
    List<PhotoPoint> at = new ArrayList<>();
    for (int g = 0; g < groups; g++) {
      List<Graduation> group =
          marks.subList(g * marks.size() / groups, (g + 1) * marks.size() / groups);
      index[g] = group.stream().mapToInt(Graduation::index).average().orElseThrow();
      at.add(
          new PhotoPoint(
              group.stream().mapToDouble(m -> m.at().x()).average().orElseThrow(),
              group.stream().mapToDouble(m -> m.at().y()).average().orElseThrow()));
    }
    double sigma = Math.max(LEAST_SIGMA_PX, 1.5 * edge.residualPx());
    double along = sigma / Math.sqrt(Math.min(size, MOST_INDEPENDENT));
    double aside = edge.asideSigmaPx() * Math.sqrt(Math.max(1, groups / INDEPENDENT_ASIDE));
    return new PlaneEvidence.Division(
        index, at, along, Math.max(along, aside), edge.millimetresPerMark());
  }

  /** From the evenly divided row that fits the marks best on the plane. */
  static double millimetresPerUnit(PlaneView view, PlaneEvidence.Division marks) {
    return marks.millimetresPerMark() / EvenRow.fit(view, marks).step();
  }
}
