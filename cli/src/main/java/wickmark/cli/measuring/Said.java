package wickmark.cli.measuring;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Everything the person says about a picture; what is not said is searched for. */
public record Said(SaidLanes lanes, SaidPlaces places, Optional<SaidScale> scale) {

  /** Nothing is said. */
  public static Said nothing() {
    return new Said(
        new SaidLanes(List.of(), List.of(), OptionalInt.empty(), Map.of()),
        new SaidPlaces(Optional.empty(), List.of(), Optional.empty(), Optional.empty(), List.of()),
        Optional.empty());
  }
}
