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

  private static final int MOST_MARKS = 70;

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
    int step = Math.max(1, marks.size() / MOST_MARKS);
    List<PhotoPoint> at = new ArrayList<>();
    List<Integer> index = new ArrayList<>();
    for (int i = 0; i < marks.size(); i += step) {
      at.add(marks.get(i).at());
      index.add(marks.get(i).index());
    }
    double sigma = Math.max(0.25, 1.5 * edge.residualPx());
    return new PlaneEvidence.Division(
        index.stream().mapToInt(Integer::intValue).toArray(), at, sigma);
  }

  /** From the evenly divided row that fits the marks best on the plane. */
  static double millimetresPerUnit(PlaneView view, PlaneEvidence.Division marks, double mmPerMark) {
    return mmPerMark / EvenRow.fit(view, marks).step();
  }
}
