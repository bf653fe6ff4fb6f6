package wickmark.testdata.set;

import java.util.List;

/**
 * What a picture is a case of, and what a program should make of it.
 *
 * @param name name of the case
 * @param file name of the picture file
 * @param mode "phone" or "scan"
 * @param difficulty "easy", "medium" or "hard"
 * @param tags what it brings
 * @param expectation what should come of it
 */
public record PictureCase(
    String name,
    String file,
    String mode,
    String difficulty,
    List<String> tags,
    Expectation expectation) {
  public PictureCase {
    tags = List.copyOf(tags);
  }

  /**
   * What should come of a picture.
   *
   * @param outcome "ok", "rf-only" (no scale in the picture) or "refuse"
   * @param reason why not all can be measured, empty for "ok"
   * @param scaleSources where a scale may come from: "ruler", "resolution"
   */
  public record Expectation(String outcome, String reason, List<String> scaleSources) {
    public Expectation {
      scaleSources = List.copyOf(scaleSources);
    }

    public static Expectation ok(String... scaleSources) {
      return new Expectation("ok", "", List.of(scaleSources));
    }

    public static Expectation refuse(String reason) {
      return new Expectation("refuse", reason, List.of());
    }
  }
}
