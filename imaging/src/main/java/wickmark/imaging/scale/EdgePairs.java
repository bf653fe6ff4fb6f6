package wickmark.imaging.scale;

import java.util.ArrayList;
import java.util.List;

/**
 * Compares the edges of one ruler: an inch comb and a millimetre comb side by side show the same
 * scale if both are read right (25.4 mm to the inch), and hardly otherwise.
 */
final class EdgePairs {
  /**
   * Scales of two edges of one ruler differ by the perspective across the ruler, by less than this;
   * a unit mistaken for another makes a factor of 1.27 (twentieths for millimetres) or more.
   */
  private static final double SAME_SCALE = 0.17;

  private static final double OTHER_SCALE = 0.22;

  private static final double MOST_TURN = Math.toRadians(8);

  /** Edges further apart than this, in millimetres, are not those of one ruler. */
  private static final double WIDEST = 70;

  /** Marks over which a scale is taken, to both sides. */
  private static final int AROUND = 8;

  /** What is left of the confidence of the weaker of two edges that contradict each other. */
  private static final double CONTRADICTED = 0.3;

  private EdgePairs() {}

  static List<RulerEdge> compared(List<RulerEdge> edges) {
    List<RulerEdge> out = new ArrayList<>();
    for (RulerEdge edge : edges) {
      double confidence = edge.confidence();
      for (RulerEdge other : edges) {
        if (other.unit() != edge.unit() && beside(edge, other)) {
          double ratio = scaleBeside(edge, other) / scaleBeside(other, edge);
          double apart = Math.abs(StrictMath.log(ratio));
          if (apart < SAME_SCALE) {
            confidence = Math.max(confidence, 1 - (1 - confidence) * (1 - other.confidence()));
          } else if (apart > OTHER_SCALE && other.confidence() >= edge.confidence()) {
            confidence = Math.min(confidence, CONTRADICTED * edge.confidence());
          }
        }
      }
      out.add(
          new RulerEdge(
              edge.marks(),
              edge.unit(),
              confidence,
              edge.residualPx(),
              edge.asideSigmaPx(),
              edge.shownShare()));
    }
    return out;
  }

  private static boolean beside(RulerEdge a, RulerEdge b) {
    double[] da = direction(a);
    double[] db = direction(b);
    double turn = Math.abs(da[0] * db[1] - da[1] * db[0]);
    int near = nearest(b, a);
    Graduation from = a.marks().get(a.marks().size() / 2);
    double dx = b.marks().get(near).at().x() - from.at().x();
    double dy = b.marks().get(near).at().y() - from.at().y();
    double apartMm = Math.sqrt(dx * dx + dy * dy) * scaleAt(a, a.marks().size() / 2);
    return turn < StrictMath.sin(MOST_TURN) && apartMm < WIDEST && overlaps(a, b) && overlaps(b, a);
  }

  /** Beside each other, not one behind the other, where perspective makes other scales. */
  private static boolean overlaps(RulerEdge a, RulerEdge b) {
    boolean shorter =
        b.marks().size() * b.millimetresPerMark() < a.marks().size() * a.millimetresPerMark();
    int near = nearest(a, b);
    return !shorter || (near > AROUND / 2 && near < a.marks().size() - 1 - AROUND / 2);
  }

  private static double[] direction(RulerEdge edge) {
    Graduation first = edge.marks().get(0);
    Graduation last = edge.marks().get(edge.marks().size() - 1);
    double dx = last.at().x() - first.at().x();
    double dy = last.at().y() - first.at().y();
    double length = Math.sqrt(dx * dx + dy * dy);
    return new double[] {dx / length, dy / length};
  }

  /** Returns the number in the list of the edge's mark that is nearest to the other's middle. */
  private static int nearest(RulerEdge edge, RulerEdge other) {
    Graduation middle = other.marks().get(other.marks().size() / 2);
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < edge.marks().size(); i++) {
      double dx = edge.marks().get(i).at().x() - middle.at().x();
      double dy = edge.marks().get(i).at().y() - middle.at().y();
      if (dx * dx + dy * dy < least) {
        least = dx * dx + dy * dy;
        best = i;
      }
    }
    return best;
  }

  /** Returns the edge's millimetres per photo pixel at that end of the pair that both share. */
  private static double scaleBeside(RulerEdge edge, RulerEdge other) {
    boolean longer =
        edge.marks().size() * edge.millimetresPerMark()
            > other.marks().size() * other.millimetresPerMark();
    return scaleAt(edge, longer ? nearest(edge, other) : edge.marks().size() / 2);
  }

  private static double scaleAt(RulerEdge edge, int number) {
    Graduation low = edge.marks().get(Math.max(0, number - AROUND));
    Graduation high = edge.marks().get(Math.min(edge.marks().size() - 1, number + AROUND));
    double dx = high.at().x() - low.at().x();
    double dy = high.at().y() - low.at().y();
    return (high.index() - low.index()) * edge.millimetresPerMark() / Math.sqrt(dx * dx + dy * dy);
  }
}
