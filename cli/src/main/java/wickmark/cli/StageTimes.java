package wickmark.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import wickmark.cli.table.TextTable;
import wickmark.imaging.ReadingStage;
import wickmark.imaging.StageWatch;

/**
 * How long each stage of measuring took, by the clock on the wall. One object a picture, in one
 * thread; those of many pictures are added up.
 */
final class StageTimes implements StageWatch {
  static final String DECODE = "decode";
  static final String WRITE = "write";

  private final LongSupplier nanoTime;
  private final Map<String, Long> nanos = new LinkedHashMap<>();
  private @Nullable String stage;
  private long since;
  private int pictures;

  StageTimes() {
    this(System::nanoTime);
  }

  StageTimes(LongSupplier nanoTime) {
    this.nanoTime = nanoTime;
    nanos.put(DECODE, 0L);
    for (ReadingStage reading : ReadingStage.values()) {
      nanos.put(reading.word(), 0L);
    }
    nanos.put(WRITE, 0L);
  }

  @Override
  public void enters(ReadingStage reading) {
    enters(reading.word());
  }

  /** A stage begins, and the one before has ended. */
  void enters(String next) {
    long now = nanoTime.getAsLong();
    if (stage != null) {
      nanos.merge(stage, now - since, Long::sum);
    }
    stage = next;
    since = now;
  }

  /** The last stage of a picture has ended. */
  void ends() {
    if (stage != null) {
      nanos.merge(stage, nanoTime.getAsLong() - since, Long::sum);
    }
    stage = null;
    pictures++;
  }

  /** Adds the times of other pictures, which have ended. */
  void add(StageTimes others) {
    others.nanos.forEach((name, time) -> nanos.merge(name, time, Long::sum));
    pictures += others.pictures;
  }

  /** Returns a table: milliseconds a picture and share of each stage, and their sum. */
  List<String> lines() {
    double all = Math.max(1, nanos.values().stream().mapToLong(Long::longValue).sum());
    TextTable table = new TextTable("lrr", List.of("stage", "ms a picture", "share"));
    nanos.forEach((name, time) -> table.add(row(name, time, all)));
    table.add(row("all", all, all));
    return new ArrayList<>(table.lines());
  }

  private List<String> row(String name, double time, double all) {
    return List.of(
        name,
        String.format(Locale.ROOT, "%.1f", time / 1e6 / Math.max(1, pictures)),
        String.format(Locale.ROOT, "%.0f %%", 100 * time / all));
  }
}
