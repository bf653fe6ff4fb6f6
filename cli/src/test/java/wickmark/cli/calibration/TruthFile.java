package wickmark.cli.calibration;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What is known of one strip in a picture of the drawn set.
 *
 * @param name the strip's: the picture's, with a number where it shows several
 * @param file the picture's name
 * @param mode "scan" or "phone"
 * @param difficulty "easy", "medium" or "hard"
 * @param expected "ok", "rf-only" or "refuse"
 * @param millimetresPerPixel at the strip's middle; NaN where there is no strip
 * @param corners of the strip in the picture
 * @param cornersInside whether all of them lie in it
 * @param baseline its ends in the picture
 * @param front its course in the picture; empty where there is none
 */
record TruthFile(
    String name,
    String file,
    String mode,
    String difficulty,
    String expected,
    List<Lane> lanes,
    List<Unknown> unknowns,
    double millimetresPerPixel,
    List<List<Double>> corners,
    boolean cornersInside,
    List<List<Double>> baseline,
    List<List<Double>> front) {
  TruthFile {
    lanes = List.copyOf(lanes);
    unknowns = List.copyOf(unknowns);
    corners = List.copyOf(corners);
    baseline = List.copyOf(baseline);
    front = List.copyOf(front);
  }

  /** Whether there is nothing in the picture that could be measured. */
  boolean toRefuse() {
    return expected.equals("refuse");
  }

  /** Whether a ruler, a card or the file tells millimetres. */
  boolean hasScale() {
    return expected.equals("ok");
  }

  /**
   * A lane with its spots, the one nearest the baseline first.
   *
   * @param origin its place on the baseline in the picture
   * @param frontMm from its origin to the front; NaN where there is none
   */
  record Lane(String name, String role, List<Double> origin, double frontMm, List<Spot> spots) {
    Lane {
      origin = List.copyOf(origin);
      spots = List.copyOf(spots);
    }
  }

  /**
   * A spot; a faint one may be missed.
   *
   * @param rf of its centroid
   * @param middleRf of the middle of its visible extent
   * @param residue whether it is what was left at the origin
   * @param colours its names: in truth, and as it is seen
   */
  record Spot(
      int number,
      double rf,
      double middleRf,
      double distanceMm,
      double middleMm,
      boolean tailing,
      boolean faint,
      boolean residue,
      Set<String> colours) {
    /** Below this Rf, dye is what was left at the origin. */
    static final double ORIGIN = 0.03;

    Spot {
      colours = Set.copyOf(colours);
    }

    /** Whether it counts: what was left at the origin counts neither way. */
    boolean counts() {
      return !residue && rf >= ORIGIN;
    }

    /** Of a tailing spot the middle of its extent is as good as its centroid. */
    double rfError(double found) {
      return error(found - rf, found - middleRf);
    }

    double distanceErrorMm(double found) {
      return error(found - distanceMm, found - middleMm);
    }

    private double error(double fromCentroid, double fromMiddle) {
      return tailing && Math.abs(fromMiddle) < Math.abs(fromCentroid) ? fromMiddle : fromCentroid;
    }
  }

  /**
   * What one unknown is made of.
   *
   * @param explanations sets of references that explain it equally well
   * @param unexplained numbers of its spots that no reference has
   */
  record Unknown(String lane, List<Set<String>> explanations, Set<Integer> unexplained) {
    Unknown {
      explanations = List.copyOf(explanations);
      unexplained = Set.copyOf(unexplained);
    }
  }

  /** What is true of the same picture with so many pixels in place of one. */
  TruthFile scaled(double scale) {
    return new TruthFile(
        name,
        file,
        mode,
        difficulty,
        expected,
        lanes.stream()
            .map(l -> new Lane(l.name, l.role, scaled(l.origin, scale), l.frontMm, l.spots))
            .toList(),
        unknowns,
        millimetresPerPixel / scale,
        corners.stream().map(place -> scaled(place, scale)).toList(),
        cornersInside,
        baseline.stream().map(place -> scaled(place, scale)).toList(),
        front.stream().map(place -> scaled(place, scale)).toList());
  }

  private static List<Double> scaled(List<Double> place, double scale) {
    return place.stream().map(v -> scale * v).toList();
  }

  static TruthFile read(Path path) throws IOException {
    JsonNode root = new ObjectMapper().readTree(path.toFile());
    JsonNode strip = root.path("strip");
    List<Lane> lanes = new ArrayList<>();
    strip.path("lanes").forEach(lane -> lanes.add(lane(lane)));
    List<Unknown> unknowns = new ArrayList<>();
    strip.path("unknowns").forEach(unknown -> unknowns.add(unknown(unknown)));
    return new TruthFile(
        root.path("name").asText(),
        root.path("file").asText(),
        root.path("mode").asText(),
        root.path("difficulty").asText(),
        root.path("expected").asText(),
        lanes,
        unknowns,
        root.path("mm_per_px").path("centre").asDouble(Double.NaN),
        places(root.path("corners_px")),
        root.path("corners_inside").asBoolean(),
        places(strip.path("baseline").path("ends_px")),
        places(strip.path("front").path("points_px")));
  }

  private static Lane lane(JsonNode lane) {
    List<Spot> spots = new ArrayList<>();
    for (JsonNode spot : lane.path("spots")) {
      if (spot.path("rf").isNumber()) {
        spots.add(spot(spot));
      }
    }
    spots.sort(Comparator.comparingDouble(Spot::rf));
    return new Lane(
        lane.path("name").asText(),
        lane.path("role").asText(),
        place(lane.path("origin_px")),
        lane.path("front_mm").asDouble(Double.NaN),
        spots);
  }

  private static Unknown unknown(JsonNode unknown) {
    List<Set<String>> explanations = new ArrayList<>();
    for (JsonNode references : unknown.path("explanations")) {
      Set<String> names = new HashSet<>();
      references.forEach(name -> names.add(name.asText()));
      explanations.add(names);
    }
    Set<Integer> unexplained = new HashSet<>();
    unknown.path("unexplained").forEach(number -> unexplained.add(number.asInt()));
    return new Unknown(unknown.path("lane").asText(), explanations, unexplained);
  }

  private static List<List<Double>> places(JsonNode list) {
    List<List<Double>> places = new ArrayList<>();
    for (JsonNode place : list) {
      places.add(place(place));
    }
    return places;
  }

  private static List<Double> place(JsonNode place) {
    return List.of(place.path(0).asDouble(), place.path(1).asDouble());
  }

  private static Spot spot(JsonNode spot) {
    boolean tailing = false;
    for (JsonNode flag : spot.path("flags")) {
      tailing |= flag.asText().equals("tailing");
    }
    double rf = spot.path("rf").asDouble();
    double distance = spot.path("distance_mm").asDouble(Double.NaN);
    Set<String> colours = new HashSet<>();
    colours.add(spot.path("colour").asText());
    colours.add(spot.path("colour_seen").asText());
    return new Spot(
        spot.path("number").asInt(),
        rf,
        spot.path("rf_middle").asDouble(rf),
        distance,
        spot.path("middle_distance_mm").asDouble(distance),
        tailing,
        spot.path("peak_absorbance").asDouble() < 0.06 || !spot.path("visible").asBoolean(true),
        spot.path("kind").asText().equals("residue"),
        colours);
  }
}
