package wickmark.imaging;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import wickmark.imaging.line.Layout;
import wickmark.imaging.line.LayoutSearch;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.scale.RulerEdge;
import wickmark.imaging.straight.PaperShape;
import wickmark.imaging.straight.StraightStrip;
import wickmark.imaging.straight.StripFrame;
import wickmark.imaging.strip.StripOutline;

/**
 * Which sheet in the picture is the strip: outlines are looked at quickly and coarsely for what is
 * on them, and edges and content vote together.
 */
final class StripChoice {
  /** Cells per (nominal) millimetre of the quick look. */
  private static final double CELLS_PER_MM = 5;

  private static final double BLOCK_MM = 2;

  /** Half the outline of a usual strip, mm: what a millimetre is where there is no scale. */
  private static final double USUAL_HALF_OUTLINE_MM = 210;

  /** Weight of the outline's score (0 to 1) against the content's. */
  private static final double OUTLINE_WEIGHT = 4;

  private StripChoice() {}

  /**
   * An outline with what is on it.
   *
   * @param total evidence of outline and content together
   * @param lead over the best other outline; infinite for the only one
   */
  record Candidate(
      StripOutline outline, PlaneScale plane, Layout layout, double total, double lead) {
    /** The corners from the top-left on, the baseline's end being the bottom. */
    List<PhotoPoint> corners() {
      List<PhotoPoint> corners = new ArrayList<>(outline.corners());
      Collections.rotate(corners, layout.quarterTurns());
      return corners;
    }

    PaperShape shape() {
      return StripChoice.shape(outline);
    }

    /** Plane units of a (nominal) millimetre. */
    double unitsPerMm() {
      if (plane.millimetresPerUnit().isPresent()) {
        return 1 / plane.millimetresPerUnit().getAsDouble();
      }
      double sum = 0;
      for (int i = 0; i < 4; i++) {
        sum +=
            plane
                .view()
                .toPlane(outline.corners().get(i))
                .distanceTo(plane.view().toPlane(outline.corners().get((i + 1) % 4)));
      }
      return sum / 2 / USUAL_HALF_OUTLINE_MM;
    }
  }

  private static PaperShape shape(StripOutline outline) {
    List<PhotoPoint> around = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      around.add(outline.corners().get(i));
      around.addAll(outline.sides().get(i));
    }
    return new PaperShape(around);
  }

  /** Weighs the outlines; best first. */
  static List<Candidate> weigh(Photo photo, List<StripOutline> outlines, List<RulerEdge> edges) {
    List<Candidate> all = new ArrayList<>();
    for (StripOutline outline : outlines) {
      PlaneScale plane = PlaneScale.of(photo, outline, outside(edges, outline));
      Candidate bare = new Candidate(outline, plane, new Layout(0, null, null, 0, 0, 0), 0, 0);
      Layout layout = layout(photo, bare);
      double total = OUTLINE_WEIGHT * outline.score() + layout.score();
      all.add(new Candidate(outline, plane, layout, total, 0));
    }
    all.sort(Comparator.comparingDouble(Candidate::total).reversed());
    List<Candidate> ranked = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      Candidate c = all.get(i);
      double next = i + 1 < all.size() ? all.get(i + 1).total() : Double.NEGATIVE_INFINITY;
      ranked.add(new Candidate(c.outline(), c.plane(), c.layout(), c.total(), c.total() - next));
    }
    return ranked;
  }

  /** Graduated edges that do not run through the strip: pencilled rows are no ruler. */
  private static List<RulerEdge> outside(List<RulerEdge> edges, StripOutline outline) {
    PaperShape shape = shape(outline);
    return edges.stream()
        .filter(
            edge -> {
              long inside = edge.marks().stream().filter(m -> shape.contains(m.at())).count();
              return inside < 0.5 * edge.marks().size();
            })
        .toList();
  }

  private static Layout layout(Photo photo, Candidate candidate) {
    StripFrame frame =
        StripFrame.around(
            candidate.plane().view(),
            candidate.outline().corners(),
            candidate.unitsPerMm() / CELLS_PER_MM);
    StraightStrip strip = StraightStrip.of(photo, frame, candidate.shape());
    DensityMap map = DensityMap.of(strip, CELLS_PER_MM, BLOCK_MM);
    return LayoutSearch.find(map, map.turned());
  }
}
