package wickmark.cli.check;

import java.util.Optional;
import wickmark.core.check.Mark;
import wickmark.core.check.ReaderReport;
import wickmark.core.check.SlipFinding;

/** Which slip belongs to which value. */
final class Slips {
  private Slips() {}

  /**
   * Returns the slip that a value shows: one of length for a length that differs, one of Rf for an
   * Rf.
   */
  static Optional<SlipFinding> of(ReaderReport reader, Mark mark) {
    boolean isRf = mark.quantity() == Mark.Quantity.RF;
    return reader.slips().stream()
        .filter(slip -> slip.rows().contains(mark.row()))
        .filter(slip -> slip.slip().isOfLength() != isRf)
        .filter(slip -> isRf || !mark.agrees())
        .findFirst();
  }
}
