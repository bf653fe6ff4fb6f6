package wickmark.cli.calibration;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What is known of one strip in a picture of the drawn set.
 *
 * @param file the picture's name
 * @param expected "ok", "rf-only" or "refuse"
 * @param millimetresPerPixel at the strip's middle; NaN where there is no strip
 * @param corners of the strip in the picture
 * @param baseline its ends in the picture
 * @param front its course in the picture; empty where there is none
 */
record TruthFile(
    String file,
    String expected,
    List<Lane> lanes,
    double millimetresPerPixel,
    List<List<Double>> corners,
    List<List<Double>> baseline,
    List<List<Double>> front) {
  TruthFile {
    lanes = List.copyOf(lanes);
    corners = List.copyOf(corners);
    baseline = List.copyOf(baseline);
    front = List.copyOf(front);
  }

  /**
   * A lane with its spots, the one nearest the baseline first.
   *
   * @param origin its place on the baseline in the picture
   */
  record Lane(String name, String role, List<Double> origin, List<Spot> spots) {
    Lane {
      origin = List.copyOf(origin);
      spots = List.copyOf(spots);
    }
  }

  /** A spot; a faint one may be missed. */
  record Spot(double rf, double middleRf, boolean tailing, boolean faint) {}

  /** What is true of the same picture with so many pixels in place of one. */
  TruthFile scaled(double scale) {
    return new TruthFile(
        file,
        expected,
        lanes.stream()
            .map(l -> new Lane(l.name, l.role, scaled(l.origin, scale), l.spots))
            .toList(),
        millimetresPerPixel / scale,
        corners.stream().map(place -> scaled(place, scale)).toList(),
        baseline.stream().map(place -> scaled(place, scale)).toList(),
        front.stream().map(place -> scaled(place, scale)).toList());
  }

  private static List<Double> scaled(List<Double> place, double scale) {
    return place.stream().map(v -> scale * v).toList();
  }

  static TruthFile read(Path path) throws IOException {
    JsonNode root = new ObjectMapper().readTree(path.toFile());
    List<Lane> lanes = new ArrayList<>();
    for (JsonNode lane : root.path("strip").path("lanes")) {
      List<Spot> spots = new ArrayList<>();
      for (JsonNode spot : lane.path("spots")) {
        if (spot.path("rf").isNumber()) {
          spots.add(spot(spot));
        }
      }
      spots.sort(Comparator.comparingDouble(Spot::rf));
      lanes.add(
          new Lane(
              lane.path("name").asText(),
              lane.path("role").asText(),
              place(lane.path("origin_px")),
              spots));
    }
    JsonNode strip = root.path("strip");
    return new TruthFile(
        root.path("file").asText(),
        root.path("expected").asText(),
        lanes,
        root.path("mm_per_px").path("centre").asDouble(Double.NaN),
        places(root.path("corners_px")),
        places(strip.path("baseline").path("ends_px")),
        places(strip.path("front").path("points_px")));
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
    return new Spot(
        rf,
        spot.path("rf_middle").asDouble(rf),
        tailing,
        spot.path("peak_absorbance").asDouble() < 0.06 || !spot.path("visible").asBoolean(true));
  }
}
