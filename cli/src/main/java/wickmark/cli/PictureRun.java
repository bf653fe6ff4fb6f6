package wickmark.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import org.jspecify.annotations.Nullable;
import wickmark.cli.corrections.Corrections;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.cli.measuring.RequestSettings;
import wickmark.cli.measuring.StraightPicture;
import wickmark.cli.measuring.StripMeasuring;
import wickmark.cli.photo.PhotoFile;
import wickmark.cli.photo.UnreadablePictureException;
import wickmark.cli.record.FolderName;
import wickmark.cli.record.PriorRecord;
import wickmark.cli.record.RecordExistsException;
import wickmark.cli.record.RecordFolder;
import wickmark.cli.record.RecordJson;
import wickmark.cli.record.SpotsCsv;
import wickmark.cli.report.ReportPage;
import wickmark.cli.report.ReportPictures;
import wickmark.cli.report.StripNumber;
import wickmark.cli.table.TextTable;
import wickmark.core.record.RunRecord;

/** Takes one picture from the file to its record folders. Whatever happens, it answers. */
final class PictureRun {
  private final StripMeasuring measuring;
  private final Path out;
  private final boolean replace;
  private final MeasuringRequest said;
  private final Optional<String> title;
  private final Optional<Corrections> corrections;

  PictureRun(
      StripMeasuring measuring,
      Path out,
      boolean replace,
      MeasuringRequest said,
      Optional<String> title,
      Optional<Corrections> corrections) {
    this.measuring = measuring;
    this.out = out;
    this.replace = replace;
    this.said = said;
    this.title = title;
    this.corrections = corrections;
  }

  /**
   * Sets up, in another thread, what writes records and reports: a quarter of a second in which the
   * first picture is decoded already, where there is a processor for it.
   */
  static void prepareWriting() {
    // What fails here fails again where it is wanted, and is answered there.
    var unused =
        ForkJoinPool.commonPool()
            .submit(
                () -> {
                  RecordJson.prepare();
                  ReportPage.prepare();
                });
  }

  /** Measures the picture and says to the watch which stage it is at. */
  PictureResult of(Path picture, StageTimes times) {
    try {
      return result(picture, times);
    } finally {
      times.ends();
    }
  }

  private PictureResult result(Path picture, StageTimes times) {
    String name = nameOf(picture);
    String shown = TextTable.printable(name);
    try {
      times.enters(StageTimes.DECODE);
      PhotoFile file = PhotoFile.read(picture);
      if (corrections.isPresent() && !corrections.get().photo().sha256().equals(file.sha256())) {
        return PictureResult.failed(name, ExitCode.BAD_USAGE, shown + ": " + otherPicture());
      }
      Optional<RunRecord> done = recordAlready(file);
      if (done.isPresent()) {
        String message = shown + ": measured already with these settings; nothing was changed.";
        return new PictureResult(
            name,
            PictureResult.Outcome.DONE_BEFORE,
            ExitCode.DONE,
            List.of(done.get()),
            List.of(message));
      }
      List<MeasuredStrip> strips = measuring.measure(file.photo(), said, times);
      times.enters(StageTimes.WRITE);
      return write(file, strips);
    } catch (UnreadablePictureException e) {
      return PictureResult.failed(name, ExitCode.UNREADABLE, e.getMessage());
    } catch (RecordExistsException e) {
      return PictureResult.failed(name, ExitCode.BAD_USAGE, shown + ": " + exists(e.folder()));
    } catch (IOException e) {
      return PictureResult.failed(
          name, ExitCode.DEFECT, shown + ": the record cannot be written: " + reason(e) + ".");
    } catch (OutOfMemoryError e) {
      return PictureResult.shortOfMemory(
          name, shown + " cannot be measured: it needs more memory than the program may take.");
    } catch (RuntimeException | StackOverflowError e) {
      return PictureResult.failed(
          name, ExitCode.DEFECT, shown + ": " + FaultFile.write(out, FolderName.of(name), e));
    }
  }

  private String otherPicture() {
    return "the corrections are for another picture, which was called "
        + TextTable.printable(corrections.orElseThrow().photo().file())
        + "; measure that one.";
  }

  static String nameOf(Path picture) {
    @Nullable Path last = picture.getFileName();
    return last == null ? picture.toString() : last.toString();
  }

  private PictureResult write(PhotoFile file, List<MeasuredStrip> outcomes) throws IOException {
    if (corrections.isPresent()) {
      return writeCorrected(file, outcomes, corrections.get());
    }
    List<RunRecord> records = new ArrayList<>();
    List<String> messages = new ArrayList<>();
    int exitCode = ExitCode.DONE;
    for (int i = 0; i < outcomes.size(); i++) {
      boolean several = outcomes.size() > 1;
      String folder = several ? FolderName.of(file.name(), i + 1) : FolderName.of(file.name());
      if (outcomes.get(i) instanceof MeasuredStrip.Done measured) {
        ReportPictures pictures = ReportPictures.begin(file.photo(), measured.straightened());
        RunRecord record = RecordAssembly.of(measured.record(), file, said, title);
        writeUnlessTheSame(
            new RecordFolder(out, folder),
            record,
            file,
            measured.straightened(),
            pictures,
            new StripNumber(i + 1, outcomes.size()));
        records.add(record);
      } else if (outcomes.get(i) instanceof MeasuredStrip.Refused refused) {
        String which = several ? ", strip " + (i + 1) + " from the left" : "";
        messages.add(TextTable.printable(file.name()) + which + ": " + refused.message());
        exitCode = ExitCode.NOT_MEASURABLE;
      }
    }
    return PictureResult.of(file.name(), exitCode, records, messages);
  }

  /** Writes the one strip that was corrected; the others of the picture stay as they are. */
  private PictureResult writeCorrected(
      PhotoFile file, List<MeasuredStrip> outcomes, Corrections corrected) throws IOException {
    for (MeasuredStrip outcome : outcomes) {
      if (outcome instanceof MeasuredStrip.Done measured
          && corrected.isMeant(measured.record().strip())) {
        ReportPictures pictures = ReportPictures.begin(file.photo(), measured.straightened());
        RunRecord record = RecordAssembly.of(measured.record(), file, said, title);
        writeUnlessTheSame(
            folder(file),
            record,
            file,
            measured.straightened(),
            pictures,
            new StripNumber(corrected.strip().number(), corrected.strip().of()));
        return PictureResult.of(file.name(), ExitCode.DONE, List.of(record), List.of());
      }
    }
    String reason =
        outcomes.stream()
            .filter(MeasuredStrip.Refused.class::isInstance)
            .map(refused -> ((MeasuredStrip.Refused) refused).message())
            .findFirst()
            .orElse("the strip that was corrected was not found again; drag its corners too.");
    return PictureResult.failed(
        file.name(),
        ExitCode.NOT_MEASURABLE,
        TextTable.printable(file.name()) + ", as corrected: " + reason);
  }

  /** The folder of a picture's only strip, or of the one that was corrected. */
  private RecordFolder folder(PhotoFile file) {
    return new RecordFolder(
        out,
        corrections
            .map(Corrections::strip)
            .filter(strip -> strip.of() > 1)
            .map(strip -> FolderName.of(file.name(), strip.number()))
            .orElseGet(() -> FolderName.of(file.name())));
  }

  private void writeUnlessTheSame(
      RecordFolder folder,
      RunRecord record,
      PhotoFile file,
      StraightPicture straightened,
      ReportPictures pictures,
      StripNumber number)
      throws IOException {
    if (!replace && isThere(folder, record)) {
      return;
    }
    try {
      folder.write(files(record, file, straightened, pictures, number), replace);
    } catch (RecordExistsException e) {
      if (!isThere(folder, record)) { // else another run has written the same meanwhile
        throw e;
      }
    }
  }

  private static boolean isThere(RecordFolder folder, RunRecord record) {
    return folder.isComplete() && PriorRecord.in(folder).filter(record::equals).isPresent();
  }

  private static Map<String, byte[]> files(
      RunRecord record,
      PhotoFile file,
      StraightPicture straightened,
      ReportPictures pictures,
      StripNumber number) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(RecordFolder.RECORD, utf8(RecordJson.text(record)));
    files.put(RecordFolder.TABLE, utf8(SpotsCsv.text(record)));
    files.put(RecordFolder.STRAIGHTENED, pictures.straightenedPng());
    files.put(
        RecordFolder.REPORT,
        utf8(ReportPage.html(record, file.photo(), straightened, pictures, number)));
    return files;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Returns the record of an earlier run that would come out the same.
   *
   * @throws RecordExistsException if there is one that would not, and it is not to be replaced
   */
  private Optional<RunRecord> recordAlready(PhotoFile file) throws RecordExistsException {
    RecordFolder folder = folder(file);
    if (replace || !folder.holdsRecord()) {
      return Optional.empty();
    }
    Optional<RunRecord> same =
        folder.isComplete()
            ? PriorRecord.in(folder).filter(record -> wouldBeTheSame(record, file))
            : Optional.empty();
    if (same.isEmpty()) {
      throw new RecordExistsException(folder.path());
    }
    return same;
  }

  private boolean wouldBeTheSame(RunRecord record, PhotoFile file) {
    return record.tool().equals(RecordAssembly.tool())
        && record.photo().equals(RecordAssembly.photo(file))
        && Optional.ofNullable(record.settings().get("title")).equals(title.map(t -> (Object) t))
        && RequestSettings.of(RequestSettings.from(record.settings()))
            .equals(RequestSettings.of(said));
  }

  private static String exists(Path folder) {
    return "there is another record in "
        + TextTable.printable(folder.toString())
        + " already; use --replace to measure anew, or another --out.";
  }

  private static String reason(IOException e) {
    if (e instanceof NotDirectoryException || e instanceof FileAlreadyExistsException) {
      return "there is a file where the folder should be";
    }
    if (e instanceof AccessDeniedException) {
      return "you have no permission to write there";
    }
    if (e instanceof FileSystemException f && f.getReason() != null) {
      return f.getReason();
    }
    return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
  }
}
