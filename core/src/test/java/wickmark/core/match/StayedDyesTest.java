package wickmark.core.match;

import static org.assertj.core.api.Assertions.assertThat;
import static wickmark.core.match.Lanes.BLUE;
import static wickmark.core.match.Lanes.RED;
import static wickmark.core.match.Lanes.names;
import static wickmark.core.match.Lanes.read;
import static wickmark.core.match.Lanes.reference;
import static wickmark.core.match.Lanes.unknown;

import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.core.match.Lanes.Dye;

class StayedDyesTest {
  private final LaneSignature moving = reference("A", Dye.of(RED, 0.5));
  private final LaneSignature staying = reference("B", Dye.of(BLUE, 0));

  @Test
  void countsWhereNoOtherReferenceLeftThatColour() {
    UnknownReading reading = read(moving, staying, unknown(Dye.of(RED, 0.5), Dye.of(BLUE, 0.005)));

    assertThat(names(reading)).containsExactly(List.of("A", "B"));
    assertThat(reading.ruledOut()).isEmpty();
    assertThat(reading.findings().get(0)).startsWith("X is consistent with A.");
    assertThat(reading.findings().get(1)).startsWith("What stayed at the origin of X has");
  }

  @Test
  void canBeAllThatThereIs() {
    assertThat(names(read(moving, staying, unknown(Dye.of(BLUE, 0)))))
        .containsExactly(List.of("B"));
  }

  @Test
  void areRuledOutByAnotherColour() {
    UnknownReading reading = read(moving, staying, unknown(Dye.of(RED, 0.5), Dye.of(RED, 0)));

    assertThat(names(reading)).containsExactly(List.of("A"));
    assertThat(reading.ruledOut())
        .containsExactly(
            new UnknownReading.RuledOut(
                "B",
                "all of its colour stayed at the origin, where X has none of it that no other"
                    + " left"));
  }

  @Test
  void doNotCountWhereAnotherReferenceLeftTheSameColour() {
    LaneSignature leaves = reference("A", Dye.of(RED, 0.5), Dye.of(BLUE, 0));

    assertThat(names(read(leaves, staying, unknown(Dye.of(RED, 0.5), Dye.of(BLUE, 0)))))
        .containsExactly(List.of("A"));
  }
}
