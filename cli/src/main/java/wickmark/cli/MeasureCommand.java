package wickmark.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickmark.cli.corrections.Corrections;
import wickmark.cli.corrections.CorrectionsFile;
import wickmark.cli.corrections.UnreadableCorrectionsException;
import wickmark.cli.hand.UnreadableReadingsException;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.cli.measuring.OptionText;
import wickmark.cli.measuring.StripMeasuring;
import wickmark.cli.overview.OverviewPage;
import wickmark.cli.record.RecordFolder;
import wickmark.cli.record.RecordJson;
import wickmark.cli.record.RecordSchema;
import wickmark.cli.table.ResultTable;
import wickmark.core.record.RunRecord;
import wickmark.imaging.ReadingRequest;

/** Pictures to records. */
@Command(
    name = "measure",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    customSynopsis = "wickmark measure PICTURE... [OPTIONS]",
    description = {
      "Measures the strips in pictures: distances, Rf and what explains the unknown.",
      "Writes a folder a strip with the record, a table, a report and the straightened picture."
    },
    footer = {
      "",
      "Example: wickmark measure strip.jpg --lanes A,B,C,X --unknown X",
      "",
      "The scale is found by itself: a ruler in the picture, the printed card, or the resolution"
          + " of a scan. Places are pixels of the upright picture, x to the right, y down."
    })
final class MeasureCommand implements Callable<Integer> {
  private final StripMeasuring measuring;

  @Mixin private Screen screen = new Screen();

  @Parameters(
      paramLabel = "PICTURE",
      arity = "0..*",
      hideParamSyntax = true,
      description = "Picture files, folders of them, or patterns such as class/*.jpg.")
  private List<Path> named = List.of();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "wickmark-records",
      description = "Folder for the records (default: ${DEFAULT-VALUE}, where you stand).")
  private Path out = Path.of("wickmark-records");

  @Option(names = "--replace", description = "Replace records that are there already.")
  private boolean replace;

  @Option(names = "--title", paramLabel = "TEXT", description = "A title for the report.")
  private @Nullable String title;

  @Mixin private LaneOptions lanes = new LaneOptions();
  @Mixin private ScaleOptions scale = new ScaleOptions();
  @Mixin private PlaceOptions places = new PlaceOptions();
  @Mixin private EvaluationOptions evaluation = new EvaluationOptions();
  @Mixin private BatchOptions batch = new BatchOptions();

  @Option(
      names = "--corrections",
      paramLabel = "FILE",
      description =
          "Apply what was corrected by hand in a report and saved there. What was said then is"
              + " kept, the rest is measured.")
  private @Nullable Path corrections;

  @Option(names = "--json", description = "Print the records as JSON in place of the table.")
  private boolean json;

  @Option(
      names = "--timings",
      description = "Print at the end how long each stage took. The records are the same.")
  private boolean timings;

  @Option(names = "--print-schema", description = "Print the JSON Schema of record.json and end.")
  private boolean printSchema;

  @Option(
      names = "--print-corrections-schema",
      description = "Print the JSON Schema of corrections and end.")
  private boolean printCorrectionsSchema;

  MeasureCommand(StripMeasuring measuring) {
    this.measuring = measuring;
  }

  @Override
  public Integer call() {
    if (printSchema || printCorrectionsSchema) {
      screen.out().print(printSchema ? RecordSchema.text() : CorrectionsFile.schema());
      screen.flush();
      return ExitCode.DONE;
    }
    try {
      List<Task> tasks = tasks();
      check(tasks.stream().map(Task::picture).toList());
      Optional<Corrections> corrected = Optional.empty();
      if (corrections != null) {
        checkCorrections(tasks);
        corrected = Optional.of(CorrectionsFile.read(corrections));
        tasks = List.of(new Task(tasks.get(0).picture(), corrected.get().request()));
      }
      return measureAll(tasks, corrected, batch.threads());
    } catch (UnreadableCorrectionsException | UnreadableReadingsException e) {
      screen.say(e);
      screen.flush();
      return ExitCode.UNREADABLE;
    } catch (IllegalArgumentException e) {
      throw screen.wrong(String.valueOf(e.getMessage()), e);
    }
  }

  /**
   * The corrections hold all that was said before; a second word on it would have to be guessed.
   */
  private static void checkCorrections(List<Task> tasks) {
    if (tasks.size() > 1) {
      throw new IllegalArgumentException("--corrections are for one picture at a time");
    }
    if (!tasks.get(0).said().equals(MeasuringRequest.of(ReadingRequest.nothing()))) {
      throw new IllegalArgumentException(
          "--corrections hold all that was said of the strip before; with them, say nothing more"
              + " of lanes, scale, places or evaluation on the command line");
    }
  }

  /** A picture with what was said of it. */
  private record Task(Path picture, MeasuringRequest said) {}

  private List<Task> tasks() throws UnreadableReadingsException {
    List<Task> tasks = new ArrayList<>();
    MeasuringRequest said = request(lanes);
    PictureList.of(named).forEach(picture -> tasks.add(new Task(picture, said)));
    if (batch.list != null) {
      for (PictureTable.Row row : PictureTable.read(batch.list)) {
        tasks.add(new Task(row.picture(), requestOf(row)));
      }
    }
    return tasks;
  }

  private MeasuringRequest requestOf(PictureTable.Row row) {
    try {
      return request(lanes.withThose(row.lanes(), row.unknowns()));
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(row.picture() + ": " + e.getMessage(), e);
    }
  }

  private MeasuringRequest request(LaneOptions lanesSaid) {
    return evaluation.of(
        new ReadingRequest(
            lanesSaid.checkedNames(),
            lanesSaid.unknowns(),
            lanesSaid.laneCount(),
            scale.said(),
            places.strip(),
            places.lines(lanesSaid.origins())));
  }

  private void check(List<Path> pictures) {
    if (title != null) {
      OptionText.checkVisible("--title", title);
    }
    if (pictures.isEmpty()) {
      throw new IllegalArgumentException("name a picture to measure, or a folder of them");
    }
    boolean oneOnly = !places.isEmpty() || !lanes.origins().isEmpty();
    if (pictures.size() > 1 && oneOnly) {
      throw new IllegalArgumentException(
          "places in the picture (--corners, --baseline and the like) can be said for one picture"
              + " at a time");
    }
    PictureList.checkFolders(pictures);
  }

  private int measureAll(List<Task> tasks, Optional<Corrections> corrected, int threads) {
    Optional<String> heading =
        Optional.ofNullable(title).or(() -> corrected.flatMap(Corrections::title));
    List<OverviewPage.Failure> failures = new ArrayList<>();
    PictureRun.prepareWriting();
    RecordFolder.sweep(out, Instant.now());
    Interruption interruption = Interruption.watch(screen.err());
    BatchSummary summary = new BatchSummary();
    List<PictureResult> results = new ArrayList<>();
    StageTimes times = new StageTimes();
    try (Progress progress = Progress.of(tasks.size(), screen.err(), Progress.isOnTerminal())) {
      new Batch(threads)
          .run(
              tasks,
              task -> {
                StageTimes ofPicture = new StageTimes();
                PictureResult result =
                    new PictureRun(measuring, out, replace, task.said(), heading, corrected)
                        .of(task.picture(), ofPicture);
                synchronized (times) {
                  times.add(ofPicture);
                }
                return result;
              },
              result -> {
                summary.add(result);
                progress.after(result, () -> print(result));
                failure(result).ifPresent(failures::add);
                if (json) {
                  results.add(result);
                }
              });
    }
    writeOverview(failures);
    interruption.over();
    if (json) {
      screen.out().print(RecordJson.text(asJson(results)));
      screen.out().flush();
    }
    if (tasks.size() > 1) {
      summary.lines().forEach(screen.err()::println);
    }
    if (!json && summary.holdsRecords()) {
      screen.say("Records, tables and reports are in " + out + ".");
    }
    if (timings) {
      times.lines().forEach(screen.err()::println);
    }
    screen.flush();
    return summary.exitCode();
  }

  private static Optional<OverviewPage.Failure> failure(PictureResult result) {
    return result.messages().isEmpty() || result.exitCode() == ExitCode.DONE
        ? Optional.empty()
        : Optional.of(
            new OverviewPage.Failure(
                result.picture(),
                String.join(" ", result.messages()).replace(result.picture() + ": ", "")));
  }

  /** What is measured stays measured, whatever becomes of the page over it. */
  private void writeOverview(List<OverviewPage.Failure> failures) {
    try {
      if (!OverviewPage.write(out, failures)) {
        screen.say(
            "There is a page "
                + out.resolve(OverviewPage.FILE)
                + " that is no overview of records; it was left alone.");
      }
    } catch (IOException e) {
      screen.say("The overview of the records could not be written.");
    }
  }

  /** The result goes to standard output, all talk to standard error. */
  private void print(PictureResult result) {
    for (int i = 0; i < result.records().size(); i++) {
      RunRecord record = result.records().get(i);
      String strip = result.records().size() > 1 ? ", strip " + (i + 1) : "";
      if (!json) {
        ResultTable.lines(result.picture() + strip, record).forEach(screen.out()::println);
        screen.out().println();
        screen.out().flush();
      }
      for (RunRecord.Warning warning : record.warnings()) {
        screen.say("Warning, " + result.picture() + strip + ": " + warning.message());
      }
    }
    result.messages().forEach(screen.err()::println);
    screen.err().flush();
  }

  private static ObjectNode asJson(List<PictureResult> results) {
    ObjectNode all = JsonNodeFactory.instance.objectNode();
    ArrayNode records = all.putArray("records");
    ArrayNode failures = all.putArray("failures");
    for (PictureResult result : results) {
      result.records().forEach(record -> records.add(RecordJson.tree(record)));
      if (result.exitCode() != ExitCode.DONE) {
        ObjectNode failure = failures.addObject();
        failure.put("picture", result.picture());
        failure.put("exitCode", result.exitCode());
        failure.put("message", String.join(" ", result.messages()));
      }
    }
    return all;
  }
}
