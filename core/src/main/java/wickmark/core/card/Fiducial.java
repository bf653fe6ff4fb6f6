package wickmark.core.card;

import java.util.Arrays;

/**
 * A black square that is found in a picture and known by the pattern within it: 7 by 7 cells, of
 * which the outer ring is black and the inner 5 by 5 carry the pattern.
 *
 * @param number 0 to 11: four a sheet, in the sheets' order; upper left, upper right, lower right,
 *     lower left
 * @param box its outer edge
 */
public record Fiducial(int number, Box box) {
  /** Cells along the whole square. */
  public static final int CELLS = 7;

  /** Cells along the pattern. */
  public static final int PATTERN_CELLS = 5;

  /**
   * Twelve patterns, 25 bits from the upper left cell by rows to the lower right one, highest bit
   * first, 1 for white. Any two, in any of the four turns, differ in at least ten cells, and so
   * does each from its own turns (found by random search; {@code FiducialTest} counts).
   */
  private static final int[] PATTERNS = {
    0x15b3b00, 0x03ba49f, 0x063f6b2, 0x18cc39b, 0x0d94864, 0x1d5d3a6,
    0x097c530, 0x1145db3, 0x1a508a2, 0x07a147a, 0x017792e, 0x1ed46f1
  };

  private static final int A_SHEET = 4;

  /** How many there are. */
  public static final int COUNT = PATTERNS.length;

  public Fiducial {
    if (number < 0 || number >= COUNT) {
      throw new IllegalArgumentException("a square has a number from 0 to 11, was " + number);
    }
  }

  /** The pattern as 25 bits, highest bit first from the upper left cell, 1 for white. */
  public static int pattern(int number) {
    return PATTERNS[number];
  }

  /** Whether a cell is white, counted from 0 at the upper left of the whole square. */
  public boolean isWhite(int column, int row) {
    int c = column - 1;
    int r = row - 1;
    boolean ring = c < 0 || r < 0 || c >= PATTERN_CELLS || r >= PATTERN_CELLS;
    int bit = PATTERN_CELLS * PATTERN_CELLS - 1 - (r * PATTERN_CELLS + c);
    return !ring && ((PATTERNS[number] >> bit) & 1) == 1;
  }

  /** The sheet it stands on. */
  public static CardSheet sheetOf(int number) {
    return Arrays.stream(CardSheet.values())
        .filter(s -> number >= s.firstSquare() && number < s.firstSquare() + A_SHEET)
        .findFirst()
        .orElseThrow();
  }

  /** Side of a cell, mm. */
  public double cell() {
    return box.width() / CELLS;
  }
}
