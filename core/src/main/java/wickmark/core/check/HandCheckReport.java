package wickmark.core.check;

import java.util.List;

/**
 * All that a check of hand readings gives.
 *
 * @param readers in the order of their first row
 * @param problems rows that could not be marked, and spots that a reader left out
 */
public record HandCheckReport(
    List<ReaderReport> readers, ClassReport together, List<ReadingProblem> problems) {

  /** Keeps copies of the lists. */
  public HandCheckReport {
    readers = List.copyOf(readers);
    problems = List.copyOf(problems);
  }

  /** Says whether every reading agrees with the machine's and no slip was found. */
  public boolean isAllRight() {
    return readers.stream().allMatch(ReaderReport::isAllRight);
  }
}
