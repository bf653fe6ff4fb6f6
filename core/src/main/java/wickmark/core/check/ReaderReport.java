package wickmark.core.check;

import java.util.List;
import java.util.Optional;
import wickmark.core.statistics.SampleMean;

/**
 * The marks of one reader.
 *
 * @param reader as in the file; empty where the file does not say
 * @param slips likely slips, most readings first
 * @param differences mean and spread of hand minus machine over the distances and fronts that no
 *     slip explains, mm: the reader's bias and scatter; empty if there are none
 */
public record ReaderReport(
    String reader, List<Mark> marks, List<SlipFinding> slips, Optional<SampleMean> differences) {

  /** Keeps copies of the lists. */
  public ReaderReport {
    marks = List.copyOf(marks);
    slips = List.copyOf(slips);
  }

  /** Says whether every value agrees with the machine's and no slip was found. */
  public boolean isAllRight() {
    return slips.isEmpty() && marks.stream().allMatch(Mark::agrees);
  }
}
