package wickmark.cli.hand;

import java.util.List;
import wickmark.core.check.HandReading;
import wickmark.core.check.ReadingProblem;

/**
 * What a file of hand readings holds.
 *
 * @param problems rows and cells that could not be read, and what else is to be said
 */
public record HandReadings(List<HandReading> rows, List<ReadingProblem> problems) {
  public HandReadings {
    rows = List.copyOf(rows);
    problems = List.copyOf(problems);
  }
}
