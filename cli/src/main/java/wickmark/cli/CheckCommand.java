package wickmark.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickmark.cli.check.CheckCsv;
import wickmark.cli.check.CheckJson;
import wickmark.cli.check.CheckPages;
import wickmark.cli.check.CheckTable;
import wickmark.cli.hand.HandReadings;
import wickmark.cli.hand.HandReadingsFile;
import wickmark.cli.hand.UnreadableReadingsException;
import wickmark.cli.record.ExtraFiles;
import wickmark.cli.record.RecordFile;
import wickmark.cli.record.ReportAddition;
import wickmark.cli.record.UnreadableRecordException;
import wickmark.core.check.CheckSettings;
import wickmark.core.check.HandCheck;
import wickmark.core.check.HandCheckReport;
import wickmark.core.check.HandReading;
import wickmark.core.check.MeasuredSheet;
import wickmark.core.check.ReadingProblem;
import wickmark.core.record.RunRecord;

/** Hand readings against the machine's. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    customSynopsis = "wickmark check RECORD HAND.csv... [OPTIONS]",
    description = {
      "Marks what people read with a ruler against what was measured, and names the likely slip.",
      "The readings are a table with the columns lane, spot (1 is the one nearest the front),"
          + " distance_mm, and if you like front_mm, rf and reader.",
      "Exit code 5 if a reading differs by more than both uncertainties allow, or shows a slip."
    })
final class CheckCommand implements Callable<Integer> {
  @Mixin private Screen screen = new Screen();

  @Parameters(
      index = "0",
      paramLabel = "RECORD",
      description = "Folder of the record, or its record.json.")
  private Path record = Path.of("");

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "HAND.csv",
      hideParamSyntax = true,
      description =
          "Files of readings. Without a column reader, each of several files is one reader's.")
  private List<Path> files = List.of();

  @Option(
      names = "--ruler-division",
      paramLabel = "MM",
      description =
          "Division of the ruler that people read, 1 without this. It sets the uncertainty of a"
              + " reading.")
  private double division = 1;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Folder for check.csv, check.html and feedback.html; without it, that of the record, whose"
              + " report.html then gets a section on the readings.")
  private @Nullable Path out;

  @Option(names = "--replace", description = "Replace these files if they are there already.")
  private boolean replace;

  @Option(names = "--json", description = "Print the check as JSON.")
  private boolean json;

  @Override
  public Integer call() {
    if (!(division > 0 && division <= 100)) {
      throw screen.wrong(
          "--ruler-division is a length in millimetres above 0, was " + division + ".");
    }
    try {
      RunRecord measured = RecordFile.read(record);
      Optional<MeasuredSheet> sheet = MeasuredSheet.of(measured);
      if (sheet.isEmpty()) {
        screen.say(
            record
                + ": this record has no scale, so that there is nothing in millimetres to compare"
                + " readings with. Measure the picture again with a scale, for instance with"
                + " --strip-height.");
        return ExitCode.NOT_MEASURABLE;
      }
      return check(measured, sheet.get());
    } catch (UnreadableRecordException e) {
      screen.say(e);
      return ExitCode.UNREADABLE;
    } catch (IOException e) {
      screen.say("The check cannot be written: " + e);
      return ExitCode.DEFECT;
    } finally {
      screen.flush();
    }
  }

  private int check(RunRecord measured, MeasuredSheet sheet) throws IOException {
    PrintWriter out = screen.out();
    List<HandReading> rows = new ArrayList<>();
    List<ReadingProblem> problems = new ArrayList<>();
    int exitCode = readAll(rows, problems);
    HandCheckReport report = HandCheck.of(sheet, rows, settings());
    problems.addAll(report.problems());
    for (ReadingProblem problem : problems) {
      screen.say(problem.place() + ": " + problem.message() + ".");
    }
    if (report.readers().isEmpty()) {
      screen.say("There is no reading to check.");
      return ExitCode.UNREADABLE;
    }
    if (json) {
      out.print(CheckJson.text(report, problems));
    } else {
      CheckTable.lines(measured.photo().file(), report).forEach(out::println);
    }
    out.flush();
    int written = write(measured, report, problems);
    if (written != ExitCode.DONE || exitCode != ExitCode.DONE) {
      return Math.max(written, exitCode);
    }
    return report.isAllRight() ? ExitCode.DONE : ExitCode.CHECK_FAILED;
  }

  private CheckSettings settings() {
    return new CheckSettings(CheckSettings.defaults().lengthUncertainty() * division);
  }

  /** Reads what can be read of all files; of several, each is one reader's if it names none. */
  private int readAll(List<HandReading> rows, List<ReadingProblem> problems) {
    int exitCode = ExitCode.DONE;
    for (Path file : files) {
      try {
        HandReadings read = HandReadingsFile.read(file, files.size() > 1 ? nameOf(file) : "");
        rows.addAll(read.rows());
        problems.addAll(read.problems());
      } catch (UnreadableReadingsException e) {
        screen.say(e);
        exitCode = ExitCode.UNREADABLE;
      }
    }
    return exitCode;
  }

  private static String nameOf(Path file) {
    String name = PictureRun.nameOf(file);
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  private int write(RunRecord measured, HandCheckReport report, List<ReadingProblem> problems)
      throws IOException {
    Path folder = folder();
    Map<String, byte[]> made = new LinkedHashMap<>();
    made.put("check.csv", CheckCsv.text(report).getBytes(StandardCharsets.UTF_8));
    made.put(
        "check.html",
        CheckPages.forTheTeacher(measured, report, problems).getBytes(StandardCharsets.UTF_8));
    made.put(
        "feedback.html",
        CheckPages.forTheReaders(measured, report).getBytes(StandardCharsets.UTF_8));
    Optional<ReportAddition> addition =
        out == null
            ? Optional.of(new ReportAddition(folder, measured, CheckPages.forTheReport(report)))
            : Optional.empty();
    Optional<Path> inTheWay = ExtraFiles.inTheWay(folder, made);
    if (inTheWay.isEmpty() && addition.isPresent()) {
      inTheWay = addition.get().inTheWay();
    }
    if (inTheWay.isPresent() && !replace) {
      screen.say(
          "There is another "
              + inTheWay.get()
              + " already, so nothing was written; use --replace or --out.");
      return ExitCode.BAD_USAGE;
    }
    ExtraFiles.write(folder, made);
    screen.say("check.csv, check.html and feedback.html are in " + folder + ".");
    if (addition.isPresent()) {
      screen.say(
          addition.get().write()
              ? "Its report.html has a section on these readings."
              : "It holds no report.html of this record and version, so no report has a section on"
                  + " these readings; check.html has all of it.");
    }
    return ExitCode.DONE;
  }

  private Path folder() {
    if (out != null) {
      return out;
    }
    Path parent = RecordFile.of(record).getParent();
    return parent == null ? Path.of("") : parent;
  }
}
