package wickmark.core.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickmark.core.check.MeasuredSheet.MeasuredLane;

/** Marks hand readings of a strip against the machine's. */
public final class HandCheck {
  private final MeasuredSheet sheet;
  private final List<ReadingProblem> problems = new ArrayList<>();

  private HandCheck(MeasuredSheet sheet) {
    this.sheet = sheet;
  }

  /** Returns the marks of all readers; rows that cannot be marked are listed as problems. */
  public static HandCheckReport of(
      MeasuredSheet sheet, List<HandReading> rows, CheckSettings settings) {
    HandCheck check = new HandCheck(sheet);
    Map<String, List<HandReading>> byReader = check.usableByReader(rows);
    List<ReaderReport> readers = new ArrayList<>();
    byReader.forEach(
        (reader, own) -> {
          check.noteMissing(reader, own);
          readers.add(new ReaderCheck(sheet, settings, reader, own).report());
        });
    return new HandCheckReport(
        readers, new ClassCheck(sheet, settings, readers).report(), check.problems);
  }

  private Map<String, List<HandReading>> usableByReader(List<HandReading> rows) {
    Map<String, List<HandReading>> byReader = new LinkedHashMap<>();
    Map<List<Object>, HandReading> seen = new HashMap<>();
    for (HandReading row : rows) {
      Optional<String> unusable = whyUnusable(row);
      HandReading twin = unusable.isEmpty() ? seen.putIfAbsent(content(row), row) : null;
      if (unusable.isPresent()) {
        problems.add(new ReadingProblem(row.place(), unusable.get()));
      } else if (twin != null) {
        problems.add(
            new ReadingProblem(
                row.place(), "the same row as at " + twin.place() + "; it counts once"));
      } else {
        byReader.computeIfAbsent(row.reader(), reader -> new ArrayList<>()).add(row);
      }
    }
    return byReader;
  }

  private static List<Object> content(HandReading row) {
    return List.of(
        row.reader(), row.lane(), row.spot(), row.distance(), row.front(), row.rf(), row.rfUnit());
  }

  private Optional<String> whyUnusable(HandReading row) {
    Optional<MeasuredLane> lane = sheet.lane(row.lane());
    if (lane.isEmpty()) {
      List<String> names = sheet.lanes().stream().map(MeasuredLane::name).toList();
      return Optional.of(
          "there is no lane \"" + row.lane() + "\"; the lanes are " + String.join(", ", names));
    }
    int spots = lane.get().spots().size();
    if (lane.get().spot(row.spot()).isEmpty()) {
      return Optional.of(
          "there is no spot "
              + row.spot()
              + " in lane "
              + lane.get().name()
              + ", which has "
              + (spots == 1 ? "1 spot" : spots + " spots"));
    }
    if (row.distance().isEmpty() && row.front().isEmpty() && row.rf().isEmpty()) {
      return Optional.of("there is no number in this row");
    }
    boolean negative =
        row.distance().filter(d -> d.signum() < 0).isPresent()
            || row.front().filter(f -> f.signum() < 0).isPresent();
    return negative ? Optional.of("a distance is below 0") : Optional.empty();
  }

  private void noteMissing(String reader, List<HandReading> own) {
    List<String> missing = new ArrayList<>();
    for (MeasuredLane lane : sheet.lanes()) {
      for (int number = 1; number <= lane.spots().size(); number++) {
        int wanted = number;
        boolean isThere =
            own.stream()
                .anyMatch(
                    row ->
                        row.spot() == wanted && sheet.lane(row.lane()).equals(Optional.of(lane)));
        if (!isThere && !lane.spots().get(number - 1).isOnBaseline()) {
          missing.add("lane " + lane.name() + " spot " + number);
        }
      }
    }
    if (!missing.isEmpty()) {
      String who = reader.isEmpty() ? "the readings" : reader;
      problems.add(
          new ReadingProblem(who, "not read or not usable: " + String.join(", ", missing)));
    }
  }
}
