package wickmark.cli.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wickmark.testdata.set.DrawSet;

/**
 * The picture on which speed is measured: the 12-megapixel photo of the drawn set, and where its
 * strip's corners are.
 *
 * @param corners top left, top right, bottom right, bottom left, {x, y} in pixels
 */
public record DrawnPhoto(Path file, List<double[]> corners, int lanes, int spots) {

  /** Seeds that are drawn. */
  static final int SEEDS = 4;

  private static Path folder(long seed) {
    return Path.of("target", "bench", "seed-" + seed);
  }

  /** Draws the photos that are not there: in a process of its own, since it takes much memory. */
  public static void main(String[] arguments) throws IOException {
    for (long seed = 1; seed <= SEEDS; seed++) {
      if (!Files.exists(folder(seed).resolve("manifest.csv"))) {
        DrawSet.main(
            new String[] {
              "--out", folder(seed).toString(), "--seed", "" + seed, "--only", "large"
            });
      }
    }
  }

  /** The photo of a seed, drawn before. */
  static DrawnPhoto of(long seed) throws IOException {
    Path folder = folder(seed);
    try (var files = Files.list(folder)) {
      Path truth =
          files
              .filter(f -> f.toString().endsWith(".truth.json"))
              .min(Comparator.naturalOrder())
              .orElseThrow();
      JsonNode root = new ObjectMapper().readTree(truth.toFile());
      List<double[]> corners = new ArrayList<>();
      root.path("corners_px")
          .forEach(c -> corners.add(new double[] {c.get(0).asDouble(), c.get(1).asDouble()}));
      int spots = 0;
      for (JsonNode lane : root.path("strip").path("lanes")) {
        spots += lane.path("spots").size();
      }
      return new DrawnPhoto(
          folder.resolve(root.path("file").asText()),
          List.copyOf(corners),
          root.path("strip").path("lanes").size(),
          spots);
    }
  }
}
