package wickmark.cli.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wickmark.core.record.RunRecord;

/** Says which places of a record a person set. */
public final class HandWords {
  private static final String BY_HAND = "by-hand";

  private HandWords() {}

  /** Returns a sentence; none where everything was found. */
  public static Optional<String> of(RunRecord record) {
    List<String> set = new ArrayList<>();
    if (record.strip().byHand()) {
      set.add("the strip’s corners");
    }
    if (record.baseline().byHand()) {
      set.add("the baseline");
    }
    if (record.front().kind().equals(BY_HAND)) {
      set.add("the front");
    }
    String origins =
        record.lanes().stream()
            .filter(RunRecord.Lane::originByHand)
            .map(RunRecord.Lane::name)
            .collect(Collectors.joining(", "));
    if (!origins.isEmpty()) {
      set.add("the origin of " + origins);
    }
    String spots =
        record.lanes().stream()
            .flatMap(
                lane ->
                    lane.spots().stream()
                        .filter(spot -> spot.flags().contains(BY_HAND))
                        .map(spot -> lane.name() + " " + spot.number()))
            .collect(Collectors.joining(", "));
    if (!spots.isEmpty()) {
      set.add("the centre of " + spots);
    }
    return set.isEmpty()
        ? Optional.empty()
        : Optional.of("Set by hand: " + String.join("; ", set) + ".");
  }
}
