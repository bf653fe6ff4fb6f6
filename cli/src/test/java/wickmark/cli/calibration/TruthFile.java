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
 */
record TruthFile(String file, String expected, List<Lane> lanes) {
  TruthFile {
    lanes = List.copyOf(lanes);
  }

  /** A lane with its spots, the one nearest the baseline first. */
  record Lane(String name, String role, List<Spot> spots) {
    Lane {
      spots = List.copyOf(spots);
    }
  }

  /** A spot; a faint one may be missed. */
  record Spot(double rf, double middleRf, boolean tailing, boolean faint) {}

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
      lanes.add(new Lane(lane.path("name").asText(), lane.path("role").asText(), spots));
    }
    return new TruthFile(root.path("file").asText(), root.path("expected").asText(), lanes);
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
