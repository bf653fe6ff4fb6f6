package wickmark.cli.corrections;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.core.record.RunRecord;

/**
 * What a person corrected by hand in one report.
 *
 * @param photo the picture they are for
 * @param strip which strip of it
 * @param settings all that is said of the measurement, in the words of a record
 */
public record Corrections(Photo photo, Strip strip, Map<String, Object> settings) {
  /** The format that this version reads and its reports write. */
  public static final String FORMAT = "wickmark-corrections/1";

  /** A strip has moved by no more than this part of its outline when it is found again. */
  private static final double SAME_PLACE = 0.05;

  public Corrections {
    settings = Map.copyOf(settings);
  }

  /** The picture's file name, to tell people, and the SHA-256 of the file. */
  public record Photo(String file, String sha256) {}

  /**
   * A strip of a picture.
   *
   * @param number from the left, 1 or more
   * @param of how many strips the picture was seen to have
   * @param cornersPx where it was found
   */
  public record Strip(int number, int of, List<List<Double>> cornersPx) {}

  /** Returns all that is said, as a request. */
  public MeasuringRequest request() {
    return CorrectedSettings.request(settings);
  }

  /** Returns the title of the report, where there is one. */
  public Optional<String> title() {
    return Optional.ofNullable(settings.get("title")).map(String::valueOf);
  }

  /** Returns whether a measured strip is the one that was corrected. */
  public boolean isMeant(RunRecord.Strip measured) {
    if (settings.containsKey("corners")) {
      return true; // then there is no other
    }
    // The middle alone: a strip that was found the other way up is the same strip.
    double around = 0;
    for (int i = 0; i < 4; i++) {
      around += distance(strip.cornersPx.get(i), strip.cornersPx.get((i + 1) % 4));
    }
    return distance(middle(strip.cornersPx), middle(measured.cornersPx())) <= SAME_PLACE * around;
  }

  private static List<Double> middle(List<List<Double>> corners) {
    return List.of(
        corners.stream().mapToDouble(c -> c.get(0)).average().orElse(0),
        corners.stream().mapToDouble(c -> c.get(1)).average().orElse(0));
  }

  private static double distance(List<Double> a, List<Double> b) {
    double dx = a.get(0) - b.get(0);
    double dy = a.get(1) - b.get(1);
    return Math.sqrt(dx * dx + dy * dy);
  }
}
