package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickmark.cli.measuring.SampleStrip;
import wickmark.cli.record.RecordJson;

class PoolCommandTest {
  @TempDir Path folder;

  private CommandLineRun run(Object... arguments) {
    return CommandLineRun.of(SampleStrip.measuring(), arguments);
  }

  /** A record of another picture, whose first lane has this Rf. */
  private Path record(String name, String rf) throws IOException {
    String text =
        RecordJson.text(RecordJson.rounded(SampleStrip.record("A", "B", "X")))
            .replaceFirst("\"sha256\" : \"[^\"]*\"", "\"sha256\" : \"" + name + "\"")
            .replaceFirst("\"file\" : \"[^\"]*\"", "\"file\" : \"" + name + ".jpg\"")
            .replaceFirst("\"rf\" : [0-9.]+", "\"rf\" : " + rf);
    Path home = Files.createDirectories(folder.resolve("records").resolve(name));
    Files.writeString(home.resolve("record.json"), text);
    return home;
  }

  @Test
  void givesMeanAndDeviationOfRepeats() throws Exception {
    CommandLineRun run = run("pool", record("one", "0.70"), record("two", "0.74"), "--json");

    JsonNode first = new ObjectMapper().readTree(run.out()).path("spots").get(0);
    assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(first.path("lane").asText()).isEqualTo("A");
    assertThat(first.path("meanRf").asDouble()).isEqualTo(0.72);
    // Two values: the standard deviation is their difference over the root of 2.
    assertThat(first.path("standardDeviationRf").asDouble()).isEqualTo(0.02828);
  }

  @Test
  void aFolderStandsForTheRecordsInIt() throws IOException {
    record("one", "0.70");
    record("two", "0.74");

    assertThat(run("pool", folder.resolve("records")).out()).startsWith("2 records, 3 samples");
  }

  @Test
  void namesAnOutlierAndItsPicture() throws IOException {
    String[] rf = {"0.700", "0.701", "0.699", "0.702", "0.698", "0.790"};
    for (int i = 0; i < rf.length; i++) {
      record("strip" + i, rf[i]);
    }

    assertThat(run("pool", folder.resolve("records")).out())
        .contains("0.790 of strip5.jpg lies apart (Grubbs' test at 5 %, ISO 5725-2)")
        .contains("than it is uncertain");
  }

  @Test
  void theSameStripTwiceCountsOnce() throws IOException {
    Path one = record("one", "0.70");

    CommandLineRun run = run("pool", one, one);

    assertThat(run.out()).startsWith("1 record,").contains("nothing can be said about repeats");
    assertThat(run.err()).contains("it counts once");
  }

  /** Of a picture that was called so the record has the name, and it reaches the table as text. */
  @Test
  void aPicturesNameIsTextInTheTable() throws IOException {
    Path home = record("one", "0.70");
    String text = Files.readString(home.resolve("record.json"));
    Files.writeString(
        home.resolve("record.json"),
        text.replace("\"one.jpg\"", "\"=cmd|' /C calc'!A0\\u202Egpj.png\""));

    run("pool", home, "--out", folder.resolve("out"));

    assertThat(folder.resolve("out/pool.csv"))
        .content()
        .contains(",'=cmd|' /C calc'!A0?gpj.png,")
        .doesNotContain("\u202E");
  }

  @Test
  void writesTableAndPageOnlyWhereTold() throws IOException {
    Path records = record("one", "0.70").getParent();
    Path out = folder.resolve("out");

    run("pool", records, "--out", out);

    assertThat(out.resolve("pool.csv")).content().startsWith("lane,spot,colour,picture");
    assertThat(out.resolve("pool.html")).content().contains("<svg");
    assertThat(records.resolve("pool.csv")).doesNotExist();
    record("two", "0.74");
    assertThat(run("pool", records, "--out", out).exitCode()).isEqualTo(ExitCode.BAD_USAGE);
    assertThat(run("pool", records, "--out", out, "--replace").exitCode()).isEqualTo(ExitCode.DONE);
  }

  @Test
  void aRecordThatCannotBeReadIsExit3AndTheOthersArePooled() throws IOException {
    CommandLineRun run = run("pool", record("one", "0.70"), folder.resolve("none"));

    assertThat(run.exitCode()).isEqualTo(ExitCode.UNREADABLE);
    assertThat(run.out()).startsWith("1 record,");
  }
}
