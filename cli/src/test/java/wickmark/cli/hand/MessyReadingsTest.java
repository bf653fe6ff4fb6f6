package wickmark.cli.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickmark.core.check.HandReading;
import wickmark.core.check.ReadingProblem;

/**
 * Tables as schools send them: laid out for people. Each is made up, after habits of spreadsheets
 * and of those who fill them in; what is read in other than the documented words is said.
 */
class MessyReadingsTest {
  @TempDir Path folder;

  private HandReadings read(Charset charset, String text) throws Exception {
    return HandReadingsFile.read(Files.write(folder.resolve("h.csv"), text.getBytes(charset)), "");
  }

  private HandReadings read(String... lines) throws Exception {
    return read(StandardCharsets.UTF_8, String.join("\n", lines) + "\n");
  }

  /** Reader, lane, spot, distance, front and Rf of each row, parted by spaces. */
  private static List<String> rows(HandReadings read) {
    return read.rows().stream().map(MessyReadingsTest::row).toList();
  }

  private static String row(HandReading row) {
    return String.join(
        " ",
        row.reader(),
        row.lane(),
        String.valueOf(row.spot()),
        row.distance().map(d -> d.toPlainString()).orElse("."),
        row.front().map(d -> d.toPlainString()).orElse("."),
        row.rf().map(d -> d.toPlainString()).orElse("."));
  }

  private static List<String> said(HandReadings read) {
    return read.problems().stream().map(problem -> place(problem) + problem.message()).toList();
  }

  private static String place(ReadingProblem problem) {
    return problem.place().replace("h.csv line ", "") + ": ";
  }

  @Test
  void namesInOtherWordsWithUnits() throws Exception {
    HandReadings read =
        read(
            "Sample;Spot no.;Distance moved by spot / cm;Distance of solvent front [cm];Rf value;Pupil",
            "A;1;5,4;7,5;0,72;Kim");

    assertThat(rows(read)).containsExactly("Kim A 1 54 75 0.72");
    assertThat(said(read))
        .containsExactly(
            "1: columns that were taken by what their names mean: \"Sample\" as lane,"
                + " \"Spot no.\" as spot, \"Distance moved by spot / cm\" as distance_mm,"
                + " \"Distance of solvent front [cm]\" as front_mm, \"Rf value\" as rf,"
                + " \"Pupil\" as reader");
  }

  @Test
  void mergedCellsAboveAndBesideAndAnEmptyColumn() throws Exception {
    HandReadings read =
        read(
            "Chromatography 9b,,,,,,",
            ",,,Distance (cm),,,",
            "lane,spot,,spot,front,rf,reader",
            "Leaf,1,,7.7,9.3,0.83,Kim",
            ",2,,5.2,,0.56,",
            "Rose,1,,3.1,9.3,0.33,Lee");

    assertThat(rows(read))
        .containsExactly("Kim Leaf 1 77 93 0.83", "Kim Leaf 2 52 . 0.56", "Lee Rose 1 31 93 0.33");
    assertThat(said(read))
        .contains(
            "5: the lane is empty in this row and was taken from the row above, as in merged cells")
        .contains(
            "5: the reader is empty in this row and was taken from the row above, as in merged cells")
        .hasSize(3);
  }

  @Test
  void aTitleWithTheReaderNotesBelowAndMeans() throws Exception {
    HandReadings read =
        read(
            "Icing dyes;;",
            "Name: Kim, 9b;;",
            "",
            "lane;spot;distance_mm",
            "Yolk;1;52,0",
            "Rose;1;31,5",
            "Mean;;41,75",
            "",
            "the paper was wet at the lower edge;;");

    assertThat(rows(read)).containsExactly("Kim, 9b Yolk 1 52.0 . .", "Kim, 9b Rose 1 31.5 . .");
    assertThat(said(read))
        .containsExactly(
            "2: there is no column reader; the reader is \"Kim, 9b\" by this line",
            "7: this row was taken for one of sums or means and left out",
            "9: this row was taken for a note and left out");
  }

  @Test
  void theReaderInACellBesideItsLabel() throws Exception {
    assertThat(rows(read("Reader,P07", "lane,spot,rf", "A,1,0.5")))
        .containsExactly("P07 A 1 . . 0.5");
  }

  @Test
  void whatPeopleWriteWhereTheyHaveReadNothing() throws Exception {
    HandReadings read =
        read("lane;spot;distance_mm;rf", "A;1;n/a;0,5", "B;1;—;N.A.", "C;1;?;none", "D;1;--;x");

    assertThat(rows(read)).contains(" A 1 . . 0.5", " B 1 . . .", " C 1 . . .", " D 1 . . .");
    assertThat(said(read)).containsExactly("5: rf: \"x\" is not a number");
  }

  @Test
  void quotationMarksOfTypographersAndSpacesThatDoNotBreak() throws Exception {
    assertThat(rows(read("“lane”,“spot”,“distance_mm”", "“Sky”,„1“,’77.5\u202Fmm’")))
        .containsExactly(" Sky 1 77.5 . .");
  }

  @Test
  void separatorsForThousandsAreRefusedWithAReason() throws Exception {
    HandReadings read = read("lane;spot;distance_mm", "A;1;1,054.5", "B;1;1.054,5 mm");

    assertThat(said(read))
        .containsExactly(
            "2: distance: \"1,054.5\" has two kinds of separators. Write it without one for thousands",
            "3: distance: \"1.054,5 mm\" has two kinds of separators. Write it without one for"
                + " thousands");
  }

  @Test
  void rowsPastedWithAnotherSeparatorAreNamed() throws Exception {
    HandReadings read = read("lane;spot;distance_mm", "A\t1\t54", "B;1;33");

    assertThat(rows(read)).containsExactly(" B 1 33 . .");
    assertThat(said(read))
        .containsExactly("2: the cells of this row are not parted as the columns' names are");
  }

  @Test
  void lineEndsOfOldMacintoshesAndALineThatNamesTheSeparator() throws Exception {
    assertThat(
            rows(
                read(
                    StandardCharsets.UTF_8,
                    "\uFEFFsep=;\rlane;spot;distance_mm\r\rA;1;54\rB;1;33,5")))
        .containsExactly(" A 1 54 . .", " B 1 33.5 . .");
  }

  @Test
  void twoBytesALetterWithoutTheMarkThatSaysSo() throws Exception {
    String text = "lane\tspot\trf\r\nGrün\t1\t0,5\r\n";

    assertThat(rows(read(StandardCharsets.UTF_16LE, text))).containsExactly(" Grün 1 . . 0.5");
    assertThat(rows(read(StandardCharsets.UTF_16BE, text))).containsExactly(" Grün 1 . . 0.5");
  }

  @Test
  void spotsWithAFewMoreSigns() throws Exception {
    assertThat(rows(read("lane,spot,rf", "A,#1,0.5", "A,Spot 2,0.4", "A,no. 3,0.3", "A,4th,0.2")))
        .containsExactly(" A 1 . . 0.5", " A 2 . . 0.4", " A 3 . . 0.3", " A 4 . . 0.2");
  }

  @Test
  void aColumnForEachReaderIsRefusedWithWhatToDo() {
    assertThatThrownBy(() -> read("lane,spot,Kim,Lee", "A,1,54,55"))
        .isInstanceOf(UnreadableReadingsException.class)
        .hasMessageContaining("Give each reading a row of its own");
  }
}
