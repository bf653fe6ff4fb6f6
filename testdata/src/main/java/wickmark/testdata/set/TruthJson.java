package wickmark.testdata.set;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickmark.testdata.colour.Cielab;
import wickmark.testdata.picture.PictureTags;
import wickmark.testdata.truth.FrontTruth;
import wickmark.testdata.truth.LaneTruth;
import wickmark.testdata.truth.PointMm;
import wickmark.testdata.truth.PointPx;
import wickmark.testdata.truth.RulerTruth;
import wickmark.testdata.truth.SeenStrip;
import wickmark.testdata.truth.SegmentMm;
import wickmark.testdata.truth.SheetTruth;
import wickmark.testdata.truth.SpotTruth;
import wickmark.testdata.truth.UnknownTruth;

/** The truth of a drawn picture as a JSON file of the format {@code wickmark-truth/1}. */
public final class TruthJson {
  private TruthJson() {}

  /** Returns the truth of a picture in which nothing can be measured. */
  public static String of(PictureCase picture, Map<String, ?> scene) {
    Map<String, Object> json = head(picture);
    json.putAll(scene);
    return JsonText.of(json);
  }

  /**
   * Returns the truth of a picture with one strip to measure, or of one of its strips.
   *
   * @param scene how it was drawn, for people who look for a pattern in the errors
   */
  public static String of(
      PictureCase picture,
      SeenStrip seen,
      Optional<RulerTruth> ruler,
      PictureTags tags,
      Map<String, ?> scene) {
    Map<String, Object> json = head(picture);
    json.put(
        "pixels",
        "x right, y down, oriented picture; its top-left corner is (0,0), the first pixel's centre (0.5,0.5)");
    json.putAll(scene);
    json.put("strip", strip(seen));
    json.put("corners_px", pixels(seen.corners()));
    json.put("corners_inside", seen.cornersInside());
    json.put(
        "mm_per_px",
        ordered(
            "centre",
            seen.mmPerPx(),
            "across",
            seen.mmPerPxAcross(),
            "along",
            seen.mmPerPxAlong()));
    ruler.ifPresent(value -> json.put("ruler", ruler(value)));
    json.put("exif_orientation", tags.orientation());
    tags.dpi().ifPresent(dpi -> json.put("dpi_tag", dpi));
    json.put("scale_sources", picture.expectation().scaleSources());
    return JsonText.of(json);
  }

  private static Map<String, Object> head(PictureCase picture) {
    return ordered(
        "format",
        "wickmark-truth/1",
        "name",
        picture.name(),
        "file",
        picture.file(),
        "expected",
        picture.expectation().outcome(),
        "reason",
        picture.expectation().reason(),
        "tags",
        picture.tags(),
        "mode",
        picture.mode(),
        "difficulty",
        picture.difficulty());
  }

  private static Map<String, Object> strip(SeenStrip seen) {
    SheetTruth sheet = seen.strip().sheet();
    SegmentMm baseline = seen.strip().baseline();
    List<PointMm> ends = List.of(baseline.from(), baseline.to());
    boolean fronted = seen.strip().front().present();
    return ordered(
        "width_mm",
        sheet.widthMm(),
        "height_mm",
        sheet.heightMm(),
        "corners_mm",
        places(sheet.corners()),
        "paper_lab",
        lab(sheet.paper()),
        "baseline",
        ordered(
            "ends_mm",
            places(ends),
            "ends_px",
            pixels(ends.stream().map(seen::at).toList()),
            "tilt_deg",
            baseline.slopeDeg()),
        "front",
        front(seen),
        "lanes",
        seen.strip().lanes().stream().map(lane -> lane(seen, lane, fronted)).toList(),
        "unknowns",
        seen.strip().unknowns().stream().map(TruthJson::unknown).toList());
  }

  private static Map<String, Object> front(SeenStrip seen) {
    FrontTruth front = seen.strip().front();
    Map<String, Object> json = ordered("present", front.present(), "mark", front.mark());
    if (front.present()) {
      json.put("points_mm", places(front.points()));
      json.put("points_px", pixels(front.points().stream().map(seen::at).toList()));
    }
    return json;
  }

  private static Map<String, Object> lane(SeenStrip seen, LaneTruth lane, boolean fronted) {
    return ordered(
        "name",
        lane.name(),
        "role",
        lane.role().word(),
        "origin_mm",
        place(lane.origin()),
        "origin_px",
        pixel(seen.at(lane.origin())),
        "front_mm",
        fronted ? (Object) lane.frontMm() : Double.NaN,
        "spots",
        lane.spots().stream().map(spot -> spot(seen, spot, fronted)).toList());
  }

  private static Map<String, Object> spot(SeenStrip seen, SpotTruth spot, boolean fronted) {
    Map<String, Object> json =
        ordered(
            "number",
            spot.number(),
            "dye",
            spot.dye(),
            "kind",
            spot.residue() ? "residue" : "dye",
            "flags",
            spot.flags(),
            "rf",
            fronted ? (Object) spot.rf() : Double.NaN,
            "rf_middle",
            fronted ? (Object) spot.middleRf() : Double.NaN,
            "distance_mm",
            spot.distanceMm(),
            "middle_distance_mm",
            spot.extent().middleDistanceMm(),
            "top_distance_mm",
            spot.extent().topDistanceMm(),
            "bottom_distance_mm",
            spot.extent().bottomDistanceMm(),
            "width_mm",
            spot.extent().widthMm());
    json.put("centroid_mm", place(spot.centroid()));
    json.put("centroid_px", pixel(seen.at(spot.centroid())));
    json.put("peak_mm", place(spot.where().place().peak()));
    json.put("peak_absorbance", spot.look().peakAbsorbance());
    json.put("visible", spot.look().visible());
    json.put("colour", spot.look().colour());
    json.put("colour_seen", spot.look().colourSeen());
    json.put("lab", lab(spot.look().mean()));
    json.put("lab_core", lab(spot.look().core()));
    return json;
  }

  private static Map<String, Object> unknown(UnknownTruth unknown) {
    return ordered(
        "lane",
        unknown.lane(),
        "explanations",
        unknown.explanations(),
        "unexplained_dyes",
        unknown.unexplainedDyes(),
        "unexplained",
        unknown.unexplainedSpots());
  }

  private static Map<String, Object> ruler(RulerTruth ruler) {
    List<Object> marks = new ArrayList<>();
    for (RulerTruth.Mark mark : ruler.marks()) {
      marks.add(
          ordered(
              "unit",
              mark.unit(),
              "value",
              mark.value(),
              "outer_px",
              pixel(mark.outer()),
              "inner_px",
              pixel(mark.inner())));
    }
    return ordered(
        "style",
        ruler.style(),
        "thickness_mm",
        ruler.thicknessMm(),
        "body_px",
        pixels(ruler.body()),
        "marks",
        marks);
  }

  private static List<Double> lab(Cielab colour) {
    return List.of(colour.lightness(), colour.a(), colour.b());
  }

  private static List<List<Double>> places(List<PointMm> places) {
    return places.stream().map(TruthJson::place).toList();
  }

  private static List<Double> place(PointMm place) {
    return List.of(place.x(), place.y());
  }

  private static List<List<Double>> pixels(List<PointPx> pixels) {
    return pixels.stream().map(TruthJson::pixel).toList();
  }

  private static List<Double> pixel(PointPx pixel) {
    return List.of(pixel.x(), pixel.y());
  }

  /** Returns a map that keeps the order of its names and values, given in turn. */
  static Map<String, Object> ordered(Object... namesAndValues) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      map.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return map;
  }
}
