package wickmark.imaging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickmark.core.colour.LabColour;
import wickmark.core.colour.LinearRgb;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.scale.Graduation;
import wickmark.imaging.scale.RulerEdge;
import wickmark.imaging.strip.StripOutline;

/**
 * How high a ruler's marks lie above the paper, by what the ruler seems to be made of: 0.3 mm (thin
 * steel, bevelled plastic) to 1.5 mm (plastic without a bevel), and 1 to 2 mm on wood, which is too
 * weak to be thinner (common practice). Wood is told by its colour beside the paper's.
 *
 * @param heightMm mean height of the marks
 * @param uncertaintyMm standard uncertainty of that
 */
record RulerFace(double heightMm, double uncertaintyMm) {
  /** Of a ruler of which no more is known. */
  static final RulerFace USUAL = new RulerFace(0.8, 0.6);

  /** Of a wooden one. */
  private static final RulerFace WOODEN = new RulerFace(1.5, 0.6);

  /** Chroma and hue of bare beech, maple and boxwood under varnish, CIELAB (from memory). */
  private static final double WOOD_CHROMA = 33;

  private static final double WOOD_HUE = 80;

  /** Half of the range over which wood, and light that is not the paper's, spread. */
  private static final double CHROMA_SPREAD = 10;

  private static final double HUE_SPREAD = 9;

  /** Places looked at between two marks, and along each side of the strip. */
  private static final int BETWEEN_MARKS = 3;

  private static final int ON_PAPER = 12;

  /** Part of the strip that is left out at each of its edges. */
  private static final double RIM = 0.1;

  /** The face of a ruler beside a strip. */
  static RulerFace of(Photo photo, RulerEdge edge, StripOutline outline) {
    Optional<LinearRgb> face = MedianLight.of(photo, betweenMarks(edge));
    Optional<LinearRgb> paper =
        MedianLight.of(photo, onPaper(outline))
            .filter(p -> p.red() > 0 && p.green() > 0 && p.blue() > 0);
    if (face.isEmpty() || paper.isEmpty()) {
      return USUAL;
    }
    return mixed(wooden(LabColour.of(face.get().relativeTo(paper.get()))));
  }

  /** How much a colour is that of wood, 0 to 1. */
  private static double wooden(LabColour colour) {
    double chroma = Math.hypot(colour.a(), colour.b());
    double hue = Math.toDegrees(StrictMath.atan2(colour.b(), colour.a()));
    double c = (chroma - WOOD_CHROMA) / CHROMA_SPREAD;
    double h = Math.IEEEremainder(hue - WOOD_HUE, 360) / HUE_SPREAD;
    // Flat in the middle: within the spread it is wood, and half so at its corners.
    double off = (c * c + h * h) / 2;
    return 1 / (1 + off * off);
  }

  /** Mean and spread of what may be the one or the other. */
  private static RulerFace mixed(double wood) {
    double height = wood * WOODEN.heightMm + (1 - wood) * USUAL.heightMm;
    double within = wood * square(WOODEN.uncertaintyMm) + (1 - wood) * square(USUAL.uncertaintyMm);
    double apart = wood * (1 - wood) * square(WOODEN.heightMm - USUAL.heightMm);
    return new RulerFace(height, Math.sqrt(within + apart));
  }

  private static double square(double x) {
    return x * x;
  }

  private static List<PhotoPoint> betweenMarks(RulerEdge edge) {
    List<PhotoPoint> places = new ArrayList<>();
    for (int i = 1; i < edge.marks().size(); i++) {
      Graduation before = edge.marks().get(i - 1);
      Graduation mark = edge.marks().get(i);
      for (int k = 1; k <= BETWEEN_MARKS; k++) {
        places.add(between(before.at(), mark.at(), k / (BETWEEN_MARKS + 1.0)));
      }
    }
    return places;
  }

  private static List<PhotoPoint> onPaper(StripOutline outline) {
    List<PhotoPoint> c = outline.corners();
    List<PhotoPoint> places = new ArrayList<>();
    for (int i = 0; i < ON_PAPER; i++) {
      double down = RIM + (1 - 2 * RIM) * i / (ON_PAPER - 1);
      PhotoPoint left = between(c.get(0), c.get(3), down);
      PhotoPoint right = between(c.get(1), c.get(2), down);
      for (int j = 0; j < ON_PAPER; j++) {
        places.add(between(left, right, RIM + (1 - 2 * RIM) * j / (ON_PAPER - 1)));
      }
    }
    return places;
  }

  private static PhotoPoint between(PhotoPoint a, PhotoPoint b, double part) {
    return new PhotoPoint(a.x() + part * (b.x() - a.x()), a.y() + part * (b.y() - a.y()));
  }
}
