package wickmark.imaging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.photo.Resolution;
import wickmark.imaging.pose.PlaneEvidence;
import wickmark.imaging.pose.PlaneFit;
import wickmark.imaging.pose.PlanePoint;
import wickmark.imaging.pose.PlaneView;
import wickmark.imaging.scale.Graduation;
import wickmark.imaging.scale.PixelScale;
import wickmark.imaging.scale.RulerEdge;
import wickmark.imaging.strip.StripOutline;

/**
 * How the camera or scanner sees the paper's plane, and how many millimetres its unit has.
 *
 * @param view the view
 * @param covariance of the view's parameters; empty for a scan, which has none
 * @param millimetresPerUnit of the plane's unit, which is its distance from the camera; empty
 *     without a scale
 * @param source where the scale comes from
 * @param relativeUncertainty of the scale along its source
 * @param ruler the marks that the scale was taken from, for propagating the view's uncertainty
 * @param flat whether the picture is a scan
 * @param doubts two sources that disagree, a resolution that is none
 */
record PlaneScale(
    PlaneView view,
    double[][] covariance,
    OptionalDouble millimetresPerUnit,
    PixelScale.Source source,
    double relativeUncertainty,
    Optional<PlaneEvidence.Division> ruler,
    double millimetresPerMark,
    boolean flat,
    List<Doubt> doubts) {

  /**
   * A ruler's printed face lies above the paper: 0.3 mm (thin steel, bevelled plastic) to 2 mm
   * (wood), common practice. It is nearer to the camera than the paper by that much, and the
   * plane's unit is the distance from the camera, so that the mean is simply added to it.
   */
  private static final double FACE_HEIGHT_MM = 0.8;

  /** Standard uncertainty of the face's height. */
  private static final double FACE_HEIGHT_U_MM = 0.6;

  /**
   * Scale marks of a lawful school ruler between any two marks (class II, up to 1 m: 0.5 mm, UK SI
   * 2016/1153, Schedule 1I, table 1), as a rectangular distribution over 150 mm.
   */
  private static final double RULER_ERROR = 0.5 / 1.7320508 / 150;

  /** Scanners keep their resolution within about 0.3 % (common practice), rectangular. */
  private static final double SCANNER_ERROR = 0.003 / 1.7320508;

  /** A ruler edge below this confidence is not a scale. */
  private static final double LEAST_RULER = 0.5;

  private static final int MOST_MARKS = 70;

  static PlaneScale of(Photo photo, StripOutline outline, List<RulerEdge> edges) {
    Optional<Resolution> resolution = ScanResolution.of(photo);
    boolean flat = resolution.isPresent() && isRectangle(outline);
    List<RulerEdge> rulers = usable(edges);
    return flat
        ? ofScan(photo, resolution.get(), rulers)
        : ofPhoto(photo, outline, rulers, resolution.isPresent());
  }

  /** The plane of a scan whose resolution the person says. */
  static PlaneScale ofDpi(Photo photo, StripOutline outline, List<RulerEdge> edges, double dpi) {
    PlaneScale scan = ofScan(photo, new Resolution(dpi, dpi), usable(edges));
    Optional<Resolution> claimed = ScanResolution.of(photo);
    if (claimed.isPresent() && Math.abs(claimed.get().dpiX() / dpi - 1) > 3 * SCANNER_ERROR) {
      scan =
          scan.with(
              new Doubt(
                  "scales-disagree",
                  String.format(
                      java.util.Locale.ROOT,
                      "%.0f dpi were said, the file says %.0f dpi. What was said was used.",
                      dpi,
                      claimed.get().dpiX())));
    }
    if (!isRectangle(outline)) {
      scan =
          scan.with(
              new Doubt(
                  "not-flat",
                  "A resolution was said, but the strip's corners are more than 2° off a right"
                      + " angle. If this is a photo and no scan, say --span or --strip-height in"
                      + " place of --dpi."));
    }
    return scan;
  }

  private static List<RulerEdge> usable(List<RulerEdge> edges) {
    return edges.stream()
        .filter(e -> e.confidence() >= LEAST_RULER)
        .sorted(Comparator.comparingDouble((RulerEdge e) -> -e.confidence() * e.marks().size()))
        .toList();
  }

  /** A scan shows cut paper as a rectangle; a photo from straight above nearly so. */
  private static boolean isRectangle(StripOutline outline) {
    for (int i = 0; i < 4; i++) {
      PhotoPoint a = outline.corners().get(i);
      PhotoPoint b = outline.corners().get((i + 1) % 4);
      PhotoPoint z = outline.corners().get((i + 3) % 4);
      double one = StrictMath.atan2(b.y() - a.y(), b.x() - a.x());
      double two = StrictMath.atan2(z.y() - a.y(), z.x() - a.x());
      double angle = Math.abs(two - one);
      angle = angle > Math.PI ? 2 * Math.PI - angle : angle;
      if (Math.abs(angle - Math.PI / 2) > 0.035) {
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
      PlaneEvidence.Division marks = division(edges.get(0));
      double byRuler = millimetresPerUnit(view, marks, edges.get(0).millimetresPerMark());
      double apart = byRuler / mmPerUnit - 1;
      if (Math.abs(apart) > 3 * Math.hypot(RULER_ERROR, SCANNER_ERROR)) {
        doubts.add(
            new Doubt(
                "scales-disagree",
                String.format(
                    java.util.Locale.ROOT,
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
        Optional.empty(),
        1,
        true,
        doubts);
  }

  private static PlaneScale ofPhoto(
      Photo photo, StripOutline outline, List<RulerEdge> edges, boolean claimsResolution) {
    List<PlaneEvidence.Division> divisions = new ArrayList<>();
    for (RulerEdge edge : edges.subList(0, Math.min(1, edges.size()))) {
      divisions.add(division(edge));
    }
    double cornerSigma = Math.max(0.7, outline.sidesSigmaPx());
    PlaneFit.Result fit =
        PlaneFit.of(
            new PlaneEvidence(
                photo.widthPx(),
                photo.heightPx(),
                photo.focalLength35mm(),
                outline.corners(),
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
          Optional.empty(),
          1,
          false,
          doubts);
    }
    double mmPerMark = edges.get(0).millimetresPerMark();
    double mmPerUnit = millimetresPerUnit(fit.view(), divisions.get(0), mmPerMark) + FACE_HEIGHT_MM;
    if (edges.size() > 1) {
      compare(fit.view(), edges, mmPerUnit, doubts);
    }
    double face = FACE_HEIGHT_U_MM / mmPerUnit;
    return new PlaneScale(
        fit.view(),
        fit.covariance(),
        OptionalDouble.of(mmPerUnit),
        PixelScale.Source.RULER,
        Math.hypot(RULER_ERROR, face),
        Optional.of(divisions.get(0)),
        mmPerMark,
        false,
        doubts);
  }

  private static void compare(
      PlaneView view, List<RulerEdge> edges, double mmPerUnit, List<Doubt> doubts) {
    RulerEdge other = edges.get(1);
    double second = millimetresPerUnit(view, division(other), other.millimetresPerMark());
    double apart = second / mmPerUnit - 1;
    if (Math.abs(apart) > 0.02) {
      doubts.add(
          new Doubt(
              "scales-disagree",
              String.format(
                  java.util.Locale.ROOT,
                  "Two graduated edges give scales %.1f %% apart (%s and %s marks). The first was"
                      + " used; check the millimetres against a known length, or say it with --span.",
                  100 * Math.abs(apart),
                  edges.get(0).unit().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '),
                  other.unit().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '))));
    }
  }

  private static PlaneEvidence.Division division(RulerEdge edge) {
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
    int n = marks.index().length;
    double mk = 0;
    double mx = 0;
    double my = 0;
    PlanePoint[] p = new PlanePoint[n];
    for (int i = 0; i < n; i++) {
      p[i] = view.toPlane(marks.at().get(i));
      mk += marks.index()[i] / (double) n;
      mx += p[i].x() / n;
      my += p[i].y() / n;
    }
    double skk = 0;
    double skx = 0;
    double sky = 0;
    for (int i = 0; i < n; i++) {
      double k = marks.index()[i] - mk;
      skk += k * k;
      skx += k * (p[i].x() - mx);
      sky += k * (p[i].y() - my);
    }
    return mmPerMark / Math.hypot(skx / skk, sky / skk);
  }

  /** The same view with a scale that the person says. */
  PlaneScale said(double mmPerUnit, PixelScale.Source said, double relative) {
    PlaneScale scaled =
        new PlaneScale(
            view,
            covariance,
            OptionalDouble.of(mmPerUnit),
            said,
            relative,
            Optional.empty(),
            1,
            flat,
            doubts);
    if (millimetresPerUnit.isEmpty()) {
      return scaled;
    }
    double apart = mmPerUnit / millimetresPerUnit.getAsDouble() - 1;
    double u = Math.hypot(relative, relativeUncertainty) + 0.004;
    if (Math.abs(apart) <= 3 * u) {
      return scaled;
    }
    return scaled.with(
        new Doubt(
            "scales-disagree",
            String.format(
                java.util.Locale.ROOT,
                "The scale that was said (%s) makes lengths %.1f %% %s than the one found in the"
                    + " picture (%s). The one that was said was used.",
                said.word(),
                100 * Math.abs(apart),
                apart > 0 ? "longer" : "shorter",
                source.word())));
  }

  /** The same with one more doubt. */
  PlaneScale with(Doubt doubt) {
    List<Doubt> more = new ArrayList<>(doubts);
    more.add(doubt);
    return new PlaneScale(
        view,
        covariance,
        millimetresPerUnit,
        source,
        relativeUncertainty,
        ruler,
        millimetresPerMark,
        flat,
        more);
  }
}
