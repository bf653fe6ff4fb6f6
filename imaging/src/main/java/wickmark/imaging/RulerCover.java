package wickmark.imaging;

import java.util.ArrayList;
import java.util.List;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.scale.Graduation;
import wickmark.imaging.scale.RulerEdge;
import wickmark.imaging.straight.PaperShape;

/**
 * The part of an outline that a ruler covers: where a row of its marks runs through the outline,
 * everything from the marks outwards, away from the outline's bulk, is ruler or beside the paper.
 */
final class RulerCover {
  /** Fewer marks inside than this touch the outline rather than lie in it. */
  private static final int LEAST_MARKS = 4;

  /** Half a mark's length and a shadow, in steps from mark to mark. */
  private static final double MARGIN_STEPS = 4;

  private RulerCover() {}

  /** Returns a polygon for each edge that runs through the outline. */
  static List<List<PhotoPoint>> of(
      List<PhotoPoint> corners, PaperShape shape, List<RulerEdge> edges) {
    List<List<PhotoPoint>> covers = new ArrayList<>();
    for (RulerEdge edge : edges) {
      if (marksInside(shape, edge) >= LEAST_MARKS) {
        covers.add(beyond(corners, edge));
      }
    }
    return covers;
  }

  /** The largest share of an edge's marks that lies inside, 0 to 1. */
  static double shareInside(PaperShape shape, List<RulerEdge> edges) {
    double most = 0;
    for (RulerEdge edge : edges) {
      most = Math.max(most, marksInside(shape, edge) / (double) edge.marks().size());
    }
    return most;
  }

  private static long marksInside(PaperShape shape, RulerEdge edge) {
    return edge.marks().stream().filter(m -> shape.contains(m.at())).count();
  }

  private static List<PhotoPoint> beyond(List<PhotoPoint> corners, RulerEdge edge) {
    Graduation first = edge.marks().get(0);
    Graduation last = edge.marks().get(edge.marks().size() - 1);
    double dx = last.at().x() - first.at().x();
    double dy = last.at().y() - first.at().y();
    double length = Math.hypot(dx, dy);
    double step = length / Math.max(1, Math.abs(last.index() - first.index()));
    double ux = dx / length;
    double uy = dy / length;
    double cx = corners.stream().mapToDouble(PhotoPoint::x).average().orElse(0);
    double cy = corners.stream().mapToDouble(PhotoPoint::y).average().orElse(0);
    double side = (cx - first.at().x()) * -uy + (cy - first.at().y()) * ux;
    double towards = side > 0 ? 1 : -1;
    double nx = -uy * towards;
    double ny = ux * towards;
    double margin = MARGIN_STEPS * step;
    double far = 4 * length;
    return List.of(
        place(first, -length * ux + margin * nx, -length * uy + margin * ny),
        place(last, length * ux + margin * nx, length * uy + margin * ny),
        place(last, length * ux - far * nx, length * uy - far * ny),
        place(first, -length * ux - far * nx, -length * uy - far * ny));
  }

  private static PhotoPoint place(Graduation from, double dx, double dy) {
    return new PhotoPoint(from.at().x() + dx, from.at().y() + dy);
  }
}
