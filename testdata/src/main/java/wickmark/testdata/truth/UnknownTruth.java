package wickmark.testdata.truth;

import java.util.List;

/**
 * What an unknown is made of.
 *
 * @param explanations sets of reference lanes that explain as many of its dyes as possible with as
 *     few references as possible; several where they are equally good
 * @param unexplainedDyes dyes that no such reference holds
 * @param unexplainedSpots numbers of those dyes' spots
 */
public record UnknownTruth(
    String lane,
    List<List<String>> explanations,
    List<String> unexplainedDyes,
    List<Integer> unexplainedSpots) {
  public UnknownTruth {
    explanations = List.copyOf(explanations);
    unexplainedDyes = List.copyOf(unexplainedDyes);
    unexplainedSpots = List.copyOf(unexplainedSpots);
  }
}
