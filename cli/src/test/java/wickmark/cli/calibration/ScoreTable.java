package wickmark.cli.calibration;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.photo.PhotoFile;
import wickmark.cli.photo.UnreadablePictureException;

/**
 * Measures a folder of pictures with truths, the lanes' names said, and prints how many were
 * measured, refused and wrong, lanes and spots found, errors, and how often they lie within their
 * stated uncertainty. Run it with the folder as its only argument.
 */
public final class ScoreTable {
  private final PrintStream out;
  private final List<StripScore> scores = new ArrayList<>();

  private ScoreTable(PrintStream out) {
    this.out = out;
  }

  /** Prints the tables, then each picture with something wrong or warned of. */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 1) {
      throw new IllegalArgumentException("say one folder of pictures with their truths");
    }
    ScoreTable table = new ScoreTable(new PrintStream(System.out, true, StandardCharsets.UTF_8));
    table.measure(Path.of(arguments[0]));
    table.print();
  }

  private void measure(Path folder) throws IOException {
    for (Map.Entry<String, List<TruthFile>> picture : TruthSet.read(folder).entrySet()) {
      List<TruthFile> strips = picture.getValue();
      List<MeasuredStrip> outcomes;
      try {
        outcomes =
            TruthSet.measured(
                PhotoFile.read(folder.resolve(picture.getKey())).photo(), TruthSet.named(strips));
      } catch (UnreadablePictureException e) {
        outcomes = List.of(new MeasuredStrip.Refused(String.valueOf(e.getMessage())));
      }
      for (int i = 0; i < strips.size(); i++) {
        scores.add(
            strips.size() == outcomes.size()
                ? StripScore.of(strips.get(i), outcomes.get(i))
                : StripScore.noAnswer(strips.get(i), outcomes.size() + " strips in the picture"));
      }
    }
  }

  private void print() {
    Map<String, ScoreSum> groups = new LinkedHashMap<>();
    groups.put("all", new ScoreSum(scores));
    for (String mode : List.of("scan", "phone")) {
      for (String difficulty : List.of("easy", "medium", "hard")) {
        List<StripScore> group =
            scores.stream()
                .filter(s -> s.truth().mode().equals(mode))
                .filter(s -> s.truth().difficulty().equals(difficulty))
                .toList();
        if (!group.isEmpty()) {
          groups.put(mode + "/" + difficulty, new ScoreSum(group));
        }
      }
    }
    print(
        "OUTCOMES",
        "pictures | measured | refused rightly | refused wrongly | measured, should refuse"
            + " | no answer | flawless | warned though flawless"
            + " | doubted though flawless | SILENT WRONG",
        groups,
        ScoreSum::outcomes);
    print(
        "LANES AND SPOTS (of the pictures measured)",
        "lane count right | lanes | spots | recall | false | precision | faint found | colour name"
            + " | explained rightly | left-over spots right",
        groups,
        ScoreSum::lanesAndSpots);
    print(
        "ERRORS: median/95 %/max of the absolute error",
        "distance mm | bias mm | Rf | front mm | scale % | corner px | corner mm",
        groups,
        ScoreSum::errors);
    print(
        "COVERAGE: |error| within twice the stated uncertainty (about 95 % is right)",
        "distance | n | Rf | n | front | n | scale | n", groups, ScoreSum::coverage);
    out.println("**PICTURES with something wrong or warned of**\n");
    scores.stream()
        .filter(s -> !s.wrong().isEmpty() || !s.warnings().isEmpty())
        .forEach(s -> out.println(line(s)));
  }

  private void print(
      String title,
      String columns,
      Map<String, ScoreSum> groups,
      Function<ScoreSum, List<Object>> row) {
    out.println("**" + title + "**\n");
    out.println("| group | " + columns + " |");
    out.println("| --- |" + " ---: |".repeat(columns.split("\\|", -1).length));
    groups.forEach(
        (name, sum) -> {
          List<String> cells = new ArrayList<>(List.of(name));
          row.apply(sum).forEach(cell -> cells.add(String.valueOf(cell)));
          out.println("| " + String.join(" | ", cells) + " |");
        });
    out.println();
  }

  private static String line(StripScore score) {
    String what = score.wrong().isEmpty() ? "right" : String.join("; ", score.wrong());
    String warned = score.warnings().isEmpty() ? "not warned of" : score.warnings().toString();
    return "- "
        + score.truth().name()
        + ": "
        + (score.isSilentlyWrong() ? "SILENT, " : "")
        + what
        + " · "
        + warned;
  }
}
