package wickmark.imaging;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.photo.Resolution;
import wickmark.imaging.pose.PlaneEvidence;
import wickmark.imaging.pose.PlaneView;
import wickmark.imaging.pose.SheetView;
import wickmark.imaging.scale.PixelScale;
import wickmark.imaging.scale.RulerEdge;
import wickmark.imaging.strip.StripOutline;

/** Finds the plane of a strip and its scale: a scan's resolution, or a ruler in a photo. */
final class PlaneScaleFinder {

  /**
   * Scale marks of a lawful school ruler between any two marks (class II, up to 1 m: 0.5 mm, UK SI
   * 2016/1153, Schedule 1I, table 1), as a rectangular distribution over 150 mm.
   */
  private static final double RULER_ERROR = 0.5 / 1.7320508 / 150;

  /** Scanners keep their resolution within about 0.3 % (common practice), rectangular. */
  private static final double SCANNER_ERROR = 0.003 / 1.7320508;

  /** Angle by which the corners of a sheet cut with care, as a scanner sees them, may be off. */
  private static final double SQUARE = 0.02;

  /** How far off its place scissors may put the end of a side, mm (common practice). */
  private static final double CUT_MM = 0.6;

  /** Graduated edges that have a say in the view; rulers have two. */
  private static final int MOST_EDGES = 2;

  private PlaneScaleFinder() {}

  static PlaneScale of(Photo photo, StripOutline outline, List<RulerEdge> edges) {
    Optional<Resolution> resolution = ScanResolution.of(photo);
    boolean flat = resolution.isPresent() && isRectangle(outline, resolution.get().dpiX());
    List<RulerEdge> rulers = RulerRow.usable(edges);
    return flat
        ? ofScan(photo, resolution.get(), rulers)
        : ofPhoto(photo, outline, rulers, resolution.isPresent());
  }

  /** The plane of a scan whose resolution the person says. */
  static PlaneScale ofDpi(Photo photo, StripOutline outline, List<RulerEdge> edges, double dpi) {
    PlaneScale scan = ofScan(photo, new Resolution(dpi, dpi), RulerRow.usable(edges));
    Optional<Resolution> claimed = ScanResolution.of(photo);
    if (claimed.isPresent() && Math.abs(claimed.get().dpiX() / dpi - 1) > 3 * SCANNER_ERROR) {
      scan =
          scan.with(
              new Doubt(
                  "scales-disagree",
                  String.format(
                      Locale.ROOT,
                      "%.0f dpi were said, the file says %.0f dpi. What was said was used.",
                      dpi,
                      claimed.get().dpiX())));
    }
    if (!isRectangle(outline, dpi)) {
      scan =
          scan.with(
              new Doubt(
                  "not-flat",
                  "A resolution was said, but the strip's corners are further from right"
                      + " angles than scissors leave them. If this is a photo and no scan, say --span or --strip-height in"
                      + " place of --dpi."));
    }
    return scan;
  }

  /**
   * A scan shows cut paper as a rectangle; a photo from straight above nearly so. The end of a
   * narrow ribbon tells little of it: what scissors do there turns it by degrees.
   */
  private static boolean isRectangle(StripOutline outline, double dpi) {
    for (int i = 0; i < 4; i++) {
      PhotoPoint a = outline.corners().get(i);
      PhotoPoint b = outline.corners().get((i + 1) % 4);
      PhotoPoint z = outline.corners().get((i + 3) % 4);
      double one = StrictMath.atan2(b.y() - a.y(), b.x() - a.x());
      double two = StrictMath.atan2(z.y() - a.y(), z.x() - a.x());
      double angle = Math.abs(two - one);
      angle = angle > Math.PI ? 2 * Math.PI - angle : angle;
      double shorterPx =
          Math.min(
              Math.hypot(b.x() - a.x(), b.y() - a.y()), Math.hypot(z.x() - a.x(), z.y() - a.y()));
      double byCut = CUT_MM / (25.4 * shorterPx / dpi);
      if (Math.abs(angle - Math.PI / 2) > SQUARE + byCut) {
        return false;
      }
    }
    return true;
  }

  private static PlaneScale ofScan(Photo photo, Resolution resolution, List<RulerEdge> edges) {
    double focal = photo.widthPx();
    PlaneView view = new PlaneView(photo.widthPx() / 2.0, photo.heightPx() / 2.0, focal, 0, 0, 0);
    double mmPerUnit = focal * 25.4 / ((resolution.dpiX() + resolution.dpiY()) / 2);
    List<Doubt> doubts = new ArrayList<>();
    if (!edges.isEmpty()) {
      PlaneEvidence.Division marks = RulerRow.division(edges.get(0));
      double byRuler = RulerRow.millimetresPerUnit(view, marks);
      double apart = byRuler / mmPerUnit - 1;
      if (Math.abs(apart) > 3 * Math.hypot(RULER_ERROR, SCANNER_ERROR)) {
        doubts.add(
            new Doubt(
                "scales-disagree",
                String.format(
                    Locale.ROOT,
                    "The scan's resolution gives %.4f mm per pixel, the ruler in it %.4f mm per"
                        + " pixel (%+.1f %%). The resolution was used; say which is right with"
                        + " --dpi or --span.",
                    mmPerUnit / focal,
                    byRuler / focal,
                    100 * apart)));
      }
    }
    return new PlaneScale(
        view,
        new double[0][0],
        OptionalDouble.of(mmPerUnit),
        PixelScale.Source.RESOLUTION,
        SCANNER_ERROR,
        1,
        Optional.empty(),
        true,
        1,
        doubts);
  }

  private static PlaneScale ofPhoto(
      Photo photo, StripOutline outline, List<RulerEdge> edges, boolean claimsResolution) {
    List<PlaneEvidence.Division> divisions =
        edges.stream().limit(MOST_EDGES).map(RulerRow::division).toList();
    double cornerSigma = Math.max(0.7, outline.sidesSigmaPx());
    SheetView fit =
        SheetView.of(
            new PlaneEvidence(
                photo.widthPx(),
                photo.heightPx(),
                photo.focalLength35mm(),
                outline.corners(),
                outline.sides(),
                cornerSigma,
                divisions));
    List<Doubt> doubts = new ArrayList<>();
    if (claimsResolution && edges.isEmpty()) {
      doubts.add(
          new Doubt(
              "resolution-not-used",
              "The file carries a resolution, but the strip is seen in perspective as a camera sees"
                  + " it, so it is no scan and the resolution no scale. Lay a ruler beside the"
                  + " strip, or say the scale with --span or --strip-height."));
    }
    if (edges.isEmpty()) {
      return new PlaneScale(
          fit.view(),
          fit.covariance(),
          OptionalDouble.empty(),
          PixelScale.Source.NONE,
          0,
          1,
          Optional.empty(),
          false,
          fit.careful(),
          doubts);
    }
    // The plane's unit is the camera's distance from it, and the marks are nearer by their height.
    RulerFace face = RulerFace.of(photo, edges.get(0), outline);
    double mmPerUnit = fit.ruler().millimetresPerUnit(fit.view()) + face.heightMm();
    if (divisions.size() > 1 && !fit.ruler().together()) {
      doubts.add(disagree(fit.view(), face, edges.get(0), edges.get(1)));
    }
    return new PlaneScale(
        fit.view(),
        fit.covariance(),
        OptionalDouble.of(mmPerUnit),
        PixelScale.Source.RULER,
        rulerUncertainty(mmPerUnit, face),
        RulerRow.confidence(edges),
        Optional.of(fit.ruler()::millimetresPerUnit),
        false,
        fit.careful(),
        doubts);
  }

  /** Millimetres of the unit of the plane that a ruler lies on. */
  static double onPaper(PlaneView view, PlaneEvidence.Division marks, RulerFace face) {
    return RulerRow.millimetresPerUnit(view, marks) + face.heightMm();
  }

  /** Standard uncertainty of a scale by a ruler, relative: its marks, and how high they lie. */
  static double rulerUncertainty(double mmPerUnit, RulerFace face) {
    return Math.hypot(RULER_ERROR, face.uncertaintyMm() / mmPerUnit);
  }

  private static Doubt disagree(PlaneView view, RulerFace face, RulerEdge first, RulerEdge other) {
    double one = onPaper(view, RulerRow.division(first), face);
    double two = onPaper(view, RulerRow.division(other), face);
    return new Doubt(
        "scales-disagree",
        String.format(
            Locale.ROOT,
            "Two graduated edges give scales %.1f %% apart: %s marks %.4f mm per pixel, %s"
                + " marks %.4f mm per pixel. The first was used; check the millimetres"
                + " against a known length, or say it with --span.",
            100 * Math.abs(two / one - 1),
            first.unit().name().toLowerCase(Locale.ROOT).replace('_', ' '),
            one / view.focalPx(),
            other.unit().name().toLowerCase(Locale.ROOT).replace('_', ' '),
            two / view.focalPx()));
  }
}
