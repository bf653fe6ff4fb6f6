package wickmark.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickmark.cli.measuring.StripMeasuring;
import wickmark.cli.record.RecordJson;
import wickmark.cli.reproduce.Difference;
import wickmark.cli.reproduce.PictureSearch;
import wickmark.cli.table.TextTable;

/** Records measured again. */
@Command(
    name = "reproduce",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    customSynopsis = "wickmark reproduce RECORD... [OPTIONS]",
    description = {
      "Measures the picture of a record again with the recorded settings and says whether every"
          + " number is the same.",
      "Exit code 5 if one is not."
    })
final class ReproduceCommand implements Callable<Integer> {
  private final StripMeasuring measuring;

  @Mixin private Screen screen = new Screen();

  @Parameters(
      paramLabel = "RECORD",
      arity = "1..*",
      hideParamSyntax = true,
      description = "Folders of records, or their record.json.")
  private List<Path> records = List.of();

  @Option(
      names = "--pictures",
      paramLabel = "DIR",
      description =
          "Folder to look for the pictures in, by their content. Without it: beside the record"
              + " and the two folders above. May be given several times.")
  private List<Path> folders = List.of();

  @Option(names = "--json", description = "Print the differences as JSON.")
  private boolean json;

  ReproduceCommand(StripMeasuring measuring) {
    this.measuring = measuring;
  }

  @Override
  public Integer call() {
    Reproduction reproduction = new Reproduction(measuring, new PictureSearch(folders));
    List<Reproduction.Answer> answers = new ArrayList<>();
    for (Path record : records) {
      Reproduction.Answer answer = reproduction.of(record);
      answers.add(answer);
      if (!answer.message().isEmpty()) {
        screen.say(answer.message());
      } else if (!json) {
        print(screen.out(), answer);
      }
    }
    if (json) {
      screen.out().print(RecordJson.text(asJson(answers)));
    }
    screen.flush();
    return exitCode(answers);
  }

  /** What could not be done counts more than what was done and differs. */
  private static int exitCode(List<Reproduction.Answer> answers) {
    int undone =
        answers.stream()
            .mapToInt(Reproduction.Answer::exitCode)
            .filter(code -> code != ExitCode.CHECK_FAILED)
            .max()
            .orElse(ExitCode.DONE);
    boolean differs =
        answers.stream().anyMatch(answer -> answer.exitCode() == ExitCode.CHECK_FAILED);
    return undone == ExitCode.DONE && differs ? ExitCode.CHECK_FAILED : undone;
  }

  private static void print(PrintWriter out, Reproduction.Answer answer) {
    String name = TextTable.printable(answer.record());
    if (answer.differences().isEmpty()) {
      out.println(name + ": every number is the same.");
      return;
    }
    out.println(name + ": " + answer.differences().size() + " fields differ.");
    TextTable table = new TextTable("lrr", List.of("field", "recorded", "now"));
    for (Difference difference : answer.differences()) {
      table.add(List.of(difference.field(), difference.recorded(), difference.now()));
    }
    table.lines().forEach(line -> out.println("  " + line));
  }

  private static ArrayNode asJson(List<Reproduction.Answer> answers) {
    ArrayNode all = JsonNodeFactory.instance.arrayNode();
    for (Reproduction.Answer answer : answers) {
      ObjectNode one = all.addObject();
      one.put("record", answer.record());
      one.put("same", answer.exitCode() == ExitCode.DONE);
      one.put("message", answer.message());
      ArrayNode differences = one.putArray("differences");
      for (Difference difference : answer.differences()) {
        differences
            .addObject()
            .put("field", difference.field())
            .put("recorded", difference.recorded())
            .put("now", difference.now());
      }
    }
    return all;
  }
}
