package wickmark.imaging;

import java.util.ArrayList;
import java.util.List;
import wickmark.core.card.Box;
import wickmark.imaging.card.CardView;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoArea;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.straight.PaperShape;
import wickmark.imaging.straight.StraightStrip;
import wickmark.imaging.straight.StripFrame;
import wickmark.imaging.strip.SheetOutlines;
import wickmark.imaging.strip.StripFinder;
import wickmark.imaging.strip.StripOutline;

/**
 * The card's grey place as a picture of its own, laid straight: strips are looked for in it alone,
 * so that nothing printed around it is taken for an edge of paper.
 */
final class CardPlace {
  /** Cells per millimetre of the straight place: as fine as the photo, between these. */
  private static final double LEAST_CELLS_PER_MM = 4;

  private static final double MOST_CELLS_PER_MM = 8;

  /** The place's own rim is left out, mm: print and plane are known to less. */
  private static final double RIM_MM = 0.6;

  /** An outline with a side as near as this to the rim goes on beyond it, or is the place, mm. */
  private static final double AT_RIM_MM = 1;

  /** A part of a sheet that goes on beyond the place ends nearer than this to its rim, mm. */
  private static final double WELL_WITHIN_MM = 6;

  private final CardView card;
  private final StripFrame frame;
  private final Photo straight;

  CardPlace(Photo photo, CardView card) {
    this.card = card;
    Box place = card.layout().place().grown(-RIM_MM);
    List<PhotoPoint> corners = card.corners(place);
    double cells =
        Math.max(LEAST_CELLS_PER_MM, Math.min(MOST_CELLS_PER_MM, pixelsPerMm(card, place)));
    double unitsPerMm = 1 / card.millimetresPerUnit(card.view());
    this.frame = StripFrame.around(card.view(), corners, unitsPerMm / cells);
    this.straight = StraightStrip.of(photo, frame, new PaperShape(corners, List.of())).toPhoto();
  }

  private static double pixelsPerMm(CardView card, Box place) {
    double x = (place.left() + place.right()) / 2;
    double y = (place.top() + place.bottom()) / 2;
    PhotoPoint a = card.toPhoto(x - 1, y);
    PhotoPoint b = card.toPhoto(x + 1, y);
    return Math.hypot(b.x() - a.x(), b.y() - a.y()) / 2;
  }

  /** Outlines of sheets that lie wholly on the place, in the photo. */
  SheetOutlines outlines(int best, int most, List<PhotoArea> ignored) {
    return StripFinder.in(straight, ignored.stream().map(this::inPlace).toList())
        .outlines(best, most, List.of(), false)
        .map(this::inPhoto)
        .where(this::isWithin);
  }

  private PhotoArea inPlace(PhotoArea area) {
    List<double[]> corners = area.corners().stream().map(frame::fromPhoto).toList();
    return new PhotoArea(
        corners.stream().mapToDouble(c -> c[0]).min().orElseThrow(),
        corners.stream().mapToDouble(c -> c[1]).min().orElseThrow(),
        corners.stream().mapToDouble(c -> c[0]).max().orElseThrow(),
        corners.stream().mapToDouble(c -> c[1]).max().orElseThrow());
  }

  private StripOutline inPhoto(StripOutline outline) {
    List<List<PhotoPoint>> sides = new ArrayList<>();
    for (List<PhotoPoint> side : outline.sides()) {
      sides.add(side.stream().map(this::inPhoto).toList());
    }
    PhotoPoint middle = frame.toPhoto(frame.width() / 2.0, frame.height() / 2.0);
    PhotoPoint beside = frame.toPhoto(frame.width() / 2.0 + 1, frame.height() / 2.0);
    double pixelsPerCell = Math.hypot(beside.x() - middle.x(), beside.y() - middle.y());
    return new StripOutline(
        outline.corners().stream().map(this::inPhoto).toList(),
        sides,
        outline.sidesSigmaPx() * pixelsPerCell,
        outline.score());
  }

  private PhotoPoint inPhoto(PhotoPoint cell) {
    return frame.toPhoto(cell.x(), cell.y());
  }

  private boolean isWithin(StripOutline outline) {
    return holds(card, outline, RIM_MM + AT_RIM_MM);
  }

  /** Whether a sheet of this outline lies on the card's grey place, well within its rim. */
  static boolean holds(CardView card, StripOutline outline) {
    return holds(card, outline, WELL_WITHIN_MM);
  }

  private static boolean holds(CardView card, StripOutline outline, double fromRimMm) {
    Box inner = card.layout().place().grown(-fromRimMm);
    return outline.corners().stream()
        .map(card::fromPhoto)
        .allMatch(p -> inner.contains(p[0], p[1]));
  }

  /** Whether an outline elsewhere is the card itself: it holds a square, or is the grey place. */
  static boolean isCard(CardView card, StripOutline outline) {
    List<double[]> corners = outline.corners().stream().map(card::fromPhoto).toList();
    Box place = card.layout().place();
    boolean isPlace =
        corners.stream()
            .allMatch(
                p -> place.grown(3).contains(p[0], p[1]) && !place.grown(-6).contains(p[0], p[1]));
    PaperShape shape = new PaperShape(outline.corners(), List.of());
    return isPlace
        || card.layout().fiducials().stream()
            .map(f -> f.box())
            .anyMatch(
                b ->
                    shape.contains(
                        card.toPhoto((b.left() + b.right()) / 2, (b.top() + b.bottom()) / 2)));
  }
}
