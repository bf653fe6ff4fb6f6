package wickmark.cli;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.cli.measuring.RequestSettings;
import wickmark.cli.measuring.StripMeasuring;
import wickmark.cli.photo.PhotoFile;
import wickmark.cli.photo.UnreadablePictureException;
import wickmark.cli.record.RecordFile;
import wickmark.cli.record.UnreadableRecordException;
import wickmark.cli.reproduce.Difference;
import wickmark.cli.reproduce.PictureSearch;
import wickmark.cli.reproduce.RecordComparison;
import wickmark.core.record.RunRecord;

/** Measures a record's picture again and compares. */
final class Reproduction {
  private final StripMeasuring measuring;
  private final PictureSearch search;

  Reproduction(StripMeasuring measuring, PictureSearch search) {
    this.measuring = measuring;
    this.search = search;
  }

  /**
   * What came of one record.
   *
   * @param message why it could not be done; empty where it was
   */
  record Answer(String record, int exitCode, List<Difference> differences, String message) {}

  Answer of(Path named) {
    Path file = RecordFile.of(named);
    String shown = named.toString();
    try {
      RunRecord recorded = RecordFile.read(named);
      @Nullable Path parent = file.toAbsolutePath().getParent();
      Optional<Path> picture =
          search.find(
              parent == null ? Path.of("") : parent,
              recorded.photo().file(),
              recorded.photo().sha256());
      if (picture.isEmpty()) {
        return failed(
            shown,
            ExitCode.UNREADABLE,
            "the picture \""
                + recorded.photo().file()
                + "\" was not found near the record, not under another name either; say where"
                + " it is with --pictures DIR.");
      }
      return compare(shown, recorded, picture.get());
    } catch (UnreadableRecordException | UnreadablePictureException e) {
      return new Answer(shown, ExitCode.UNREADABLE, List.of(), String.valueOf(e.getMessage()));
    } catch (IllegalArgumentException e) {
      return failed(shown, ExitCode.UNREADABLE, e.getMessage() + ".");
    }
  }

  private Answer compare(String shown, RunRecord recorded, Path picture)
      throws UnreadablePictureException {
    MeasuringRequest said = RequestSettings.from(recorded.settings());
    PhotoFile read = PhotoFile.read(picture);
    PhotoFile file =
        new PhotoFile(recorded.photo().file(), read.sha256(), read.photo(), read.remarks());
    Optional<String> title =
        Optional.ofNullable(recorded.settings().get("title")).map(String::valueOf);
    Optional<RunRecord> now =
        measuring.measure(file.photo(), said).stream()
            .filter(MeasuredStrip.Done.class::isInstance)
            .map(MeasuredStrip.Done.class::cast)
            .map(measured -> RecordAssembly.of(measured.record(), file, said, title))
            .min(Comparator.comparingDouble(record -> cornerDistance(record, recorded)));
    if (now.isEmpty()) {
      return failed(
          shown,
          ExitCode.NOT_MEASURABLE,
          "the picture can no longer be measured with these settings.");
    }
    List<Difference> differences = RecordComparison.differences(recorded, now.get());
    return new Answer(
        shown, differences.isEmpty() ? ExitCode.DONE : ExitCode.CHECK_FAILED, differences, "");
  }

  /** Of several strips in a picture the record means the one that lies where it says. */
  private static double cornerDistance(RunRecord one, RunRecord other) {
    double sum = 0;
    List<List<Double>> a = one.strip().cornersPx();
    List<List<Double>> b = other.strip().cornersPx();
    for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
      sum += Math.abs(a.get(i).get(0) - b.get(i).get(0));
      sum += Math.abs(a.get(i).get(1) - b.get(i).get(1));
    }
    return sum;
  }

  private static Answer failed(String record, int exitCode, String reason) {
    return new Answer(record, exitCode, List.of(), record + ": " + reason);
  }
}
