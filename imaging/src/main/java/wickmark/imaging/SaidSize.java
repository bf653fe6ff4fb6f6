package wickmark.imaging;

import java.util.List;
import java.util.Locale;
import wickmark.imaging.ReadingRequest.SaidScale;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.pose.PlanePoint;
import wickmark.imaging.scale.PixelScale;

/** Gives a strip's plane the scale that the person says, once it is known which end is below. */
final class SaidSize {
  /** A length measured with a ruler, mm: half a division, rectangular. */
  private static final double MEASURED_MM = 0.5 / 1.7320508;

  /** A place set by hand in the picture, pixels. */
  private static final double PLACE_PX = 1.5;

  /** Sides of a sheet cut by hand differ by this part of their length (common practice). */
  private static final double CUT = 0.003;

  private final PlaneScale plane;
  private final List<PhotoPoint> corners;
  private final double edgePx;

  private SaidSize(PlaneScale plane, List<PhotoPoint> corners, double edgePx) {
    this.plane = plane;
    this.corners = corners;
    this.edgePx = edgePx;
  }

  /**
   * Returns the plane with the scale said; a resolution was put in when the view was found.
   *
   * @param corners top-left, top-right, bottom-right, bottom-left
   * @param edgePx how far off the outline may be, photo pixels
   */
  static PlaneScale apply(
      PlaneScale plane, SaidScale said, List<PhotoPoint> corners, double edgePx) {
    SaidSize size = new SaidSize(plane, corners, Math.max(1, edgePx));
    if (said instanceof SaidScale.Span span) {
      return size.span(span);
    }
    if (said instanceof SaidScale.StripWidth width) {
      return size.one(size.side(0, 1, 3, 2), width.mm());
    }
    if (said instanceof SaidScale.StripHeight height) {
      return size.one(size.side(0, 3, 1, 2), height.mm());
    }
    return said instanceof SaidScale.StripSize both ? size.both(both) : plane;
  }

  private PlaneScale span(SaidScale.Span span) {
    PlanePoint from = plane.view().toPlane(span.from());
    PlanePoint to = plane.view().toPlane(span.to());
    double pixels = Math.hypot(span.to().x() - span.from().x(), span.to().y() - span.from().y());
    double relative = Math.hypot(PLACE_PX * Math.sqrt(2) / pixels, MEASURED_MM / span.mm());
    return plane.said(span.mm() / from.distanceTo(to), PixelScale.Source.SPAN, relative);
  }

  private PlaneScale one(Side side, double mm) {
    return plane.said(mm / side.units, PixelScale.Source.STRIP_SIZE, side.relative(mm));
  }

  private PlaneScale both(SaidScale.StripSize size) {
    Side across = side(0, 1, 3, 2);
    Side along = side(0, 3, 1, 2);
    double wide = size.widthMm() / across.units;
    double high = size.heightMm() / along.units;
    double apart = wide / high - 1;
    double relative = Math.hypot(across.relative(size.widthMm()), along.relative(size.heightMm()));
    PlaneScale scaled =
        plane.said(Math.sqrt(wide * high), PixelScale.Source.STRIP_SIZE, relative / 2);
    if (Math.abs(apart) <= 3 * Math.hypot(relative, proportion())) {
      return scaled;
    }
    return scaled.with(
        new Doubt(
            "proportions-differ",
            String.format(
                Locale.ROOT,
                "The strip's width said gives a scale %.1f %% away from its height said. Check both"
                    + " figures, and that --corners or the outline in the report is the strip's.",
                100 * Math.abs(apart))));
  }

  /** Standard uncertainty of width over height that the view leaves, relative. */
  private double proportion() {
    return ViewPropagation.proportion(plane, corners);
  }

  /** Mean of two opposite sides, in plane units. */
  private Side side(int a, int b, int c, int d) {
    PlanePoint[] p = new PlanePoint[4];
    for (int i = 0; i < 4; i++) {
      p[i] = plane.view().toPlane(corners.get(i));
    }
    double units = (p[a].distanceTo(p[b]) + p[c].distanceTo(p[d])) / 2;
    double pixels =
        Math.hypot(
            corners.get(b).x() - corners.get(a).x(), corners.get(b).y() - corners.get(a).y());
    return new Side(units, edgePx / pixels);
  }

  private record Side(double units, double edge) {
    double relative(double mm) {
      return Math.sqrt(edge * edge + CUT * CUT + MEASURED_MM * MEASURED_MM / (mm * mm));
    }
  }
}
