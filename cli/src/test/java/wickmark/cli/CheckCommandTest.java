package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickmark.cli.measuring.SampleStrip;
import wickmark.cli.record.RecordJson;
import wickmark.core.record.RunRecord;

class CheckCommandTest {
  @TempDir Path folder;

  private final RunRecord record = RecordJson.rounded(SampleStrip.record("A", "B", "X"));

  private Path recordFile;

  @BeforeEach
  void writeTheRecord() throws IOException {
    Path home = Files.createDirectory(folder.resolve("strip"));
    recordFile = Files.writeString(home.resolve("record.json"), RecordJson.text(record));
  }

  private CommandLineRun run(Object... arguments) {
    return CommandLineRun.of(SampleStrip.measuring(), arguments);
  }

  private Path hand(String name, String... lines) throws IOException {
    return Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n");
  }

  /** The machine's own values in the words of a hand reading. */
  private String[] rightReadings() {
    StringBuilder lines = new StringBuilder("lane,spot,distance_mm,front_mm,reader");
    for (RunRecord.Lane lane : record.lanes()) {
      for (RunRecord.Spot spot : lane.spots()) {
        lines
            .append('\n')
            .append(lane.name())
            .append(',')
            .append(spot.number())
            .append(',')
            .append(spot.middleMm())
            .append(',')
            .append(lane.frontDistanceMm())
            .append(",p1");
      }
    }
    return lines.toString().split("\n");
  }

  @Test
  void readingsThatAgreeAreExit0() throws IOException {
    CommandLineRun run = run("check", recordFile.getParent(), hand("hand.csv", rightReadings()));

    assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(run.out()).contains("1 reader").contains(" 0 differ");
    assertThat(folder.resolve("strip/check.csv")).isNotEmptyFile();
    assertThat(folder.resolve("strip/check.html")).isNotEmptyFile();
    assertThat(folder.resolve("strip/feedback.html")).isNotEmptyFile();
  }

  @Test
  void aReadingInCentimetresIsExit5AndSaid() throws IOException {
    String[] lines = rightReadings();
    lines[1] = lines[1].replaceFirst("^(\\w+,\\d+),[0-9.]+", "$1,5.4");

    CommandLineRun run = run("check", recordFile, hand("hand.csv", lines));

    assertThat(run.exitCode()).isEqualTo(ExitCode.CHECK_FAILED);
    assertThat(run.out()).contains("centimetres").contains("To p1:");
  }

  @Test
  void ofASlipInEverythingOnlyTheFirstValuesAreListed() throws IOException {
    String[] lines = rightReadings();
    for (int i = 1; i < lines.length; i++) {
      String[] cells = lines[i].split(",");
      cells[2] = String.valueOf(Math.round(Double.parseDouble(cells[2])) / 10.0);
      cells[3] = String.valueOf(Math.round(Double.parseDouble(cells[3])) / 10.0);
      lines[i] = String.join(",", cells);
    }

    CommandLineRun run = run("check", recordFile, hand("hand.csv", lines));

    // Four spots and the fronts of three lanes differ, three values are listed.
    assertThat(run.out())
        .contains("7 differ")
        .contains("More such values are in check.csv: p1 4.")
        .contains("In 7 readings");
  }

  @Test
  void whatCannotBeReadIsNamedWithFileAndLineAndTheRestIsChecked() throws IOException {
    CommandLineRun run =
        run(
            "check",
            recordFile,
            hand("hand.csv", "lane,spot,distance_mm", "Q,1,5", "a,1,54,5,9", "x,1,zz"));

    assertThat(run.err())
        .contains("hand.csv line 2: there is no lane \"Q\"")
        .contains("hand.csv line 3: this row has more cells")
        .contains("hand.csv line 4: distance: \"zz\" is not a number");
    assertThat(run.exitCode()).isEqualTo(ExitCode.UNREADABLE);
  }

  @Test
  void aFileThatIsNoTableIsExit3AndTheOthersAreChecked() throws IOException {
    Path workbook = Files.write(folder.resolve("p2.csv"), new byte[] {'P', 'K', 3, 4});

    CommandLineRun run = run("check", recordFile, hand("p1.csv", rightReadings()), workbook);

    assertThat(run.exitCode()).isEqualTo(ExitCode.UNREADABLE);
    assertThat(run.err()).contains("p2.csv cannot be read").contains("save it as CSV");
    assertThat(run.out()).contains("p1");
  }

  @Test
  void ofSeveralFilesWithoutReadersEachIsOneReaders() throws IOException {
    CommandLineRun run =
        run(
            "check",
            recordFile,
            hand("kim.csv", "lane,spot,rf", "A,1,0.9"),
            hand("lee.csv", "lane,spot,rf", "A,1,0.9"));

    assertThat(run.out()).contains("2 readers").contains("kim").contains("lee");
  }

  /**
   * Eight readers read every spot twice, one of them one spot 1.5 mm too high: every method has
   * something to say.
   */
  @Test
  void everyMethodsSourceIsNamedOnceOnScreenAndPage() throws IOException {
    List<String> lines = new ArrayList<>(List.of("lane,spot,distance_mm,reader"));
    for (int time = 0; time < 2; time++) {
      for (int reader = 0; reader < 8; reader++) {
        for (RunRecord.Lane lane : record.lanes()) {
          for (RunRecord.Spot spot : lane.spots()) {
            double apart = reader == 7 && time == 0 && lane.name().equals("A") ? 1.5 : 0;
            double read = middle(spot) + 0.1 * ((reader + spot.number() + time) % 3) + apart;
            lines.add(
                String.format(
                    Locale.ROOT, "%s,%d,%.1f,p%d", lane.name(), spot.number(), read, reader));
          }
        }
      }
    }

    CommandLineRun run = run("check", recordFile, hand("class.csv", lines.toArray(new String[0])));

    assertThat(List.of(run.out(), Files.readString(folder.resolve("strip/check.html"))))
        .allSatisfy(
            text ->
                assertThat(text.replace('ₙ', 'n').replace("&#39;", "'"))
                    .containsOnlyOnce("the En number of ISO 13528")
                    .containsOnlyOnce("limits of agreement after Bland and Altman (Lancet 1986)")
                    .containsOnlyOnce("Deming regression, for errors in both; Statistical")
                    .containsOnlyOnce("repeatability and reproducibility, ISO 5725-2")
                    .containsOnlyOnce("Grubbs' test at 5 %, ISO 5725-2"));
  }

  private static final String PLACE =
      "<!-- hand readings: begin -->\n<!-- hand readings: end -->\n";

  @Test
  void theStripsReportGetsASectionThatNamesNoReader() throws IOException {
    Path report = folder.resolve("strip/report.html");
    Files.writeString(report, "<main>before\n" + PLACE + "after</main>");
    Path hand = hand("kim.csv", String.join("\n", rightReadings()).replace("p1", "Kim Doe"));

    CommandLineRun run = run("check", recordFile, hand);
    String once = Files.readString(report);
    run("check", recordFile, hand);

    assertThat(run.err()).contains("Its report.html has a section on these readings");
    assertThat(once)
        .startsWith("<main>before\n<!-- hand readings: begin -->\n<section ")
        .endsWith("</section>\n<!-- hand readings: end -->\nafter</main>")
        .contains("limits of agreement", "id=\"agreement-title\"", "id=\"strips-title\"")
        .doesNotContainIgnoringCase("kim");
    assertThat(report).hasContent(once);
  }

  @Test
  void aSectionOnOtherReadingsIsNotOverwrittenUnlessAskedTo() throws IOException {
    Path report = folder.resolve("strip/report.html");
    Files.writeString(report, PLACE);
    run("check", recordFile, hand("hand.csv", rightReadings()));
    for (String name : List.of("check.csv", "check.html", "feedback.html")) {
      Files.delete(folder.resolve("strip").resolve(name));
    }
    String first = Files.readString(report);
    Path other = hand("other.csv", "lane,spot,distance_mm", "A,1," + (middleOfA() + 0.2));

    CommandLineRun refused = run("check", recordFile, other);

    assertThat(refused.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
    assertThat(refused.err()).contains("report.html already, so nothing was written");
    assertThat(report).hasContent(first);
    assertThat(folder.resolve("strip/check.csv")).doesNotExist();
    run("check", recordFile, other, "--replace");
    assertThat(report).content().isNotEqualTo(first).containsOnlyOnce("<section ");
  }

  @Test
  void aReportWithoutAPlaceForItAndOneElsewhereStayAsTheyAre() throws IOException {
    Path report = folder.resolve("strip/report.html");
    Files.writeString(report, "mine");
    Path hand = hand("hand.csv", rightReadings());

    assertThat(run("check", recordFile, hand).err()).contains("no report has a section");
    assertThat(report).hasContent("mine");
    Files.writeString(report, PLACE);
    run("check", recordFile, hand, "--out", folder.resolve("elsewhere"));
    assertThat(report).hasContent(PLACE);
  }

  @Test
  void otherResultsAreNotOverwrittenUnlessAskedTo() throws IOException {
    Path hand = hand("hand.csv", rightReadings());
    Files.writeString(folder.resolve("strip/check.csv"), "mine");

    assertThat(run("check", recordFile, hand).exitCode()).isEqualTo(ExitCode.BAD_USAGE);
    assertThat(folder.resolve("strip/check.csv")).hasContent("mine");
    assertThat(run("check", recordFile, hand, "--replace").exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(run("check", recordFile, hand).exitCode()).isEqualTo(ExitCode.DONE);
  }

  @Test
  void hostileReadersStayText() throws IOException {
    Path hand =
        hand(
            "hand.csv",
            "lane,spot,distance_mm,reader",
            "A,1,5,=cmd|'/c calc'!A1",
            "A,1,5,<script>alert(1)</script>");

    run("check", recordFile, hand, "--out", folder.resolve("out"));

    assertThat(Files.readString(folder.resolve("out/check.csv")))
        .contains("'=cmd|")
        .doesNotContainPattern("(?m)^=");
    assertThat(Files.readString(folder.resolve("out/check.html"))).doesNotContain("<script");
    assertThat(Files.readString(folder.resolve("out/feedback.html"))).doesNotContain("<script");
  }

  /** A file's name is the reader's where there are several files, and the place of each row. */
  @Test
  void filesMayBeCalledLikeFormulas() throws IOException {
    Path first = hand("=1+1\u202E.csv", "lane,spot,rf", "A,1,0.9");
    Path second = hand("@sum.csv", "lane,spot,rf", "A,1,0.9");

    CommandLineRun run = run("check", recordFile, first, second);

    assertThat(Files.readString(folder.resolve("strip/check.csv")).lines().skip(1))
        .hasSize(2)
        .anyMatch(row -> row.startsWith("'=1+1?,A,1,rf,") && row.endsWith(",'=1+1?.csv line 2"))
        .anyMatch(row -> row.startsWith("'@sum,A,1,rf,") && row.endsWith(",'@sum.csv line 2"));
    assertThat(run.out() + run.err()).doesNotContain("\u202E");
  }

  @Test
  void jsonTakesTheTablesPlace() throws Exception {
    CommandLineRun run = run("check", recordFile, hand("hand.csv", rightReadings()), "--json");

    JsonNode json = new ObjectMapper().readTree(run.out());
    assertThat(json.path("allRight").asBoolean()).isTrue();
    assertThat(json.path("readers").get(0).path("reader").asText()).isEqualTo("p1");
    assertThat(json.path("readers").get(0).path("values")).isNotEmpty();
  }

  @Test
  void aCoarserRulerForgivesMore() throws IOException {
    Path hand = hand("hand.csv", "lane,spot,distance_mm", "A,1," + (middleOfA() + 2));

    assertThat(run("check", recordFile, hand).exitCode()).isEqualTo(ExitCode.CHECK_FAILED);
    assertThat(run("check", recordFile, hand, "--replace", "--ruler-division", "5").exitCode())
        .isEqualTo(ExitCode.DONE);
    assertThat(run("check", recordFile, hand, "--ruler-division", "0").exitCode())
        .isEqualTo(ExitCode.BAD_USAGE);
  }

  private double middleOfA() {
    return middle(record.lanes().get(0).spots().get(0));
  }

  private static double middle(RunRecord.Spot spot) {
    Double middle = spot.middleMm();
    return middle == null ? Double.NaN : middle;
  }

  @Test
  void aRecordWithoutMillimetresIsExit4() throws IOException {
    String text =
        Files.readString(recordFile, StandardCharsets.UTF_8)
            .replaceAll("\"frontDistanceMm\" : [0-9.]+", "\"frontDistanceMm\" : null");
    Files.writeString(recordFile, text);

    CommandLineRun run = run("check", recordFile, hand("hand.csv", rightReadings()));

    assertThat(run.exitCode()).isEqualTo(ExitCode.NOT_MEASURABLE);
    assertThat(run.err()).contains("no scale");
  }

  @Test
  void noRecordIsExit3() throws IOException {
    assertThat(run("check", folder.resolve("none"), hand("hand.csv", rightReadings())).exitCode())
        .isEqualTo(ExitCode.UNREADABLE);
  }
}
