package wickmark.core.check;

import java.util.List;

/**
 * A likely slip of one reader.
 *
 * @param rows the readings that it explains
 * @param message what to tell the reader, as a teacher would
 */
public record SlipFinding(Slip slip, List<HandReading> rows, String message) {

  /** Keeps a copy of the list. */
  public SlipFinding {
    rows = List.copyOf(rows);
  }
}
