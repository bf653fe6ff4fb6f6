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

/** Two dyes of one colour whose spots run together: colour cannot tell that there are two. */
class HiddenDyesTest {
  private final LaneSignature slow = reference("A", Dye.of(RED, 0.665));
  private final LaneSignature fast = reference("B", Dye.of(RED, 0.705));

  @Test
  void saysThatALongSpotMayBeTwo() {
    UnknownReading reading = read(slow, fast, unknown(Dye.of(RED, 0.698).tall(0.065)));

    assertThat(names(reading)).containsExactly(List.of("B"));
    assertThat(reading.hidden()).containsExactly(new UnknownReading.HiddenDye(1, "A", 1, 0.665));
    assertThat(reading.ruledOut()).isEmpty();
    assertThat(reading.findings())
        .contains(
            "A cannot be ruled out: its spot 1 (Rf 0.67) lies within spot 1 of X, which has its"
                + " colour and is longer than one dye's.");
  }

  @Test
  void doesNotSaySoOfASpotAsLongAsThatOfOneDye() {
    assertThat(read(slow, fast, unknown(Dye.of(RED, 0.698))).hidden()).isEmpty();
  }

  @Test
  void doesNotSaySoOfADyeOfAnotherColour() {
    LaneSignature other = reference("A", Dye.of(BLUE, 0.665));

    assertThat(read(other, fast, unknown(Dye.of(RED, 0.698).tall(0.065))).hidden()).isEmpty();
  }

  @Test
  void doesNotSaySoWhereAnotherSpotOfTheReferenceIsMissing() {
    LaneSignature two = reference("A", Dye.of(RED, 0.665), Dye.of(BLUE, 0.3));

    assertThat(read(two, fast, unknown(Dye.of(RED, 0.698).tall(0.065))).hidden()).isEmpty();
  }
}
