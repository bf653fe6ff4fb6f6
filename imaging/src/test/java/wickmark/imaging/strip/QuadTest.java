package wickmark.imaging.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
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

  @Test
  void aLineAcrossASheetPartsItInTwo() {
    Quad sheet = quad(0, 0, 100, 0, 100, 60, 0, 60);

    List<Quad> parts = sheet.partsBeside(new double[] {70, 10, 72, 20});

    assertThat(parts).allMatch(Quad::isConvexClockwise);
    assertThat(parts.get(0).area() + parts.get(1).area()).isCloseTo(6000, within(1e-9));
    for (Quad part : parts) {
      // The cut comes first: it runs from (68, 0) to (80, 60).
      assertThat(part.x()[0] + part.x()[1]).isCloseTo(148, within(1e-9));
      assertThat(part.y()[0] + part.y()[1]).isCloseTo(60, within(1e-9));
    }
    assertThat(parts.stream().mapToDouble(Quad::area).min().orElseThrow())
        .isCloseTo(1560, within(1e-9));
  }

  @Test
  void aLineAlongItsOtherSidesPartsItToo() {
    List<Quad> parts =
        quad(0, 0, 100, 0, 100, 60, 0, 60).partsBeside(new double[] {-10, 15, 200, 15});

    assertThat(parts).extracting(Quad::area).containsExactlyInAnyOrder(1500.0, 4500.0);
  }

  @Test
  void aLineBesideItOrOverACornerDoesNot() {
    Quad sheet = quad(0, 0, 100, 0, 100, 60, 0, 60);

    assertThat(sheet.partsBeside(new double[] {120, 0, 120, 60})).isEmpty();
    assertThat(sheet.partsBeside(new double[] {90, 0, 100, 10})).isEmpty();
  }
}
