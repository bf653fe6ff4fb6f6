package wickmark.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FiducialTest {
  private static final int CELLS = Fiducial.PATTERN_CELLS;

  /** The pattern turned a quarter clockwise. */
  private static int turned(int pattern) {
    int out = 0;
    for (int row = 0; row < CELLS; row++) {
      for (int column = 0; column < CELLS; column++) {
        int from = CELLS * CELLS - 1 - (row * CELLS + column);
        int to = CELLS * CELLS - 1 - (column * CELLS + CELLS - 1 - row);
        out |= ((pattern >> from) & 1) << to;
      }
    }
    return out;
  }

  /** How many cells differ at least between the patterns, and between one and its turns. */
  private static int leastDifference() {
    int least = CELLS * CELLS;
    for (int a = 0; a < Fiducial.COUNT; a++) {
      for (int b = a; b < Fiducial.COUNT; b++) {
        int other = Fiducial.pattern(b);
        for (int turn = 0; turn < 4; turn++) {
          if (a != b || turn > 0) {
            least = Math.min(least, Integer.bitCount(Fiducial.pattern(a) ^ other));
          }
          other = turned(other);
        }
      }
    }
    return least;
  }

  @Test
  void noTwoPatternsAreEasilyTakenForEachOtherHoweverTheyLie() {
    assertThat(leastDifference()).isGreaterThanOrEqualTo(10);
  }

  @Test
  void fourTurnsMakeThePatternAgain() {
    int pattern = Fiducial.pattern(3);

    assertThat(turned(turned(turned(turned(pattern))))).isEqualTo(pattern);
    assertThat(turned(pattern)).isNotEqualTo(pattern);
  }

  @Test
  void theRingIsBlackAndTheHighestBitIsTheUpperLeftCell() {
    Fiducial first = new Fiducial(0, new Box(0, 0, 7, 7));

    assertThat(first.isWhite(0, 0)).isFalse();
    assertThat(first.isWhite(6, 3)).isFalse();
    // 0x15b3b00 is 1 0101 1011 0011 1011 0000 0000: the first row is white, black, white, black,
    // white.
    assertThat(first.isWhite(1, 1)).isTrue();
    assertThat(first.isWhite(2, 1)).isFalse();
    assertThat(first.isWhite(5, 1)).isTrue();
    assertThat(first.isWhite(5, 5)).isFalse();
  }

  @Test
  void numbersTellTheSheet() {
    for (CardSheet sheet : CardSheet.values()) {
      for (Fiducial fiducial : CardLayout.of(sheet).fiducials()) {
        assertThat(Fiducial.sheetOf(fiducial.number())).isEqualTo(sheet);
      }
    }
  }
}
