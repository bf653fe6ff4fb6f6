package wickmark.imaging.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class QuadTest {
  private static Quad quad(double... xy) {
    return new Quad(
        new double[] {xy[0], xy[2], xy[4], xy[6]}, new double[] {xy[1], xy[3], xy[5], xy[7]});
  }

  /** Both parts of a sheet, seen askew, on either side of a line 4 cells thick. */
  private static final Quad UPPER = quad(156, 111, 450, 138, 442, 253, 147, 229);

  private static final Quad LOWER = quad(147, 233, 441, 258, 394, 895, 97, 877);

  @Test
  void partsOfASheetAreJoinedToTheWhole() {
    Quad whole = UPPER.joinedWith(LOWER).orElseThrow();

    assertThat(whole.x()).containsExactly(156, 450, 394, 97);
    assertThat(whole.y()).containsExactly(111, 138, 895, 877);
    assertThat(whole.area()).isCloseTo(UPPER.area() + LOWER.area(), within(2000.0));
    assertThat(LOWER.joinedWith(UPPER).orElseThrow().area()).isEqualTo(whole.area());
  }

  @Test
  void aNarrowerOneBesideASheetIsNoPartOfIt() {
    assertThat(quad(196, 114, 400, 133, 394, 248, 187, 233).joinedWith(LOWER)).isEmpty();
  }

  @Test
  void sheetsThatMeetAtAnAngleAreTwo() {
    assertThat(quad(226, 111, 520, 138, 442, 253, 147, 229).joinedWith(LOWER)).isEmpty();
  }

  @Test
  void sheetsApartAreTwo() {
    assertThat(quad(160, 61, 454, 88, 446, 203, 151, 179).joinedWith(LOWER)).isEmpty();
  }
}
