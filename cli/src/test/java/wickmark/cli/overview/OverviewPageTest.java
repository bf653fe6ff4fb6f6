package wickmark.cli.overview;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickmark.cli.measuring.AlteredRecord;
import wickmark.cli.measuring.SampleStrip;
import wickmark.cli.record.RecordJson;
import wickmark.core.record.RunRecord;

class OverviewPageTest {
  @TempDir Path folder;

  private void keep(String name, RunRecord record) throws IOException {
    keep(name, RecordJson.text(record));
  }

  private void keep(String name, String record) throws IOException {
    Path one = Files.createDirectories(folder.resolve(name));
    Files.writeString(one.resolve("record.json"), record);
  }

  private String page() throws IOException {
    return Files.readString(folder.resolve(OverviewPage.FILE));
  }

  @Test
  void whatNeedsALookComesFirst() throws IOException {
    keep("a-fine", AlteredRecord.of(SampleStrip.record()).warnings(List.of()).record());
    keep("b-warned", SampleStrip.record());

    assertThat(
            OverviewPage.write(
                folder, List.of(new OverviewPage.Failure("c.jpg", "No strip was found."))))
        .isTrue();

    assertThat(page()).contains("<h1>3 strips</h1>").contains("The front is faint.");
    assertThat(Stream.of("c.jpg", "b-warned/report.html", "a-fine/report.html"))
        .extracting(page()::indexOf)
        .doesNotContain(-1)
        .isSorted();
  }

  @Test
  void oneStripNeedsNoOverview() throws IOException {
    keep("only", SampleStrip.record());

    assertThat(OverviewPage.write(folder, List.of())).isTrue();

    assertThat(folder.resolve(OverviewPage.FILE)).doesNotExist();
  }

  @Test
  void aPageOfSomebodyElsesIsLeftAlone() throws IOException {
    keep("one", SampleStrip.record());
    keep("two", SampleStrip.record());
    Files.writeString(folder.resolve(OverviewPage.FILE), "<title>My class</title>");

    assertThat(OverviewPage.write(folder, List.of())).isFalse();

    assertThat(page()).isEqualTo("<title>My class</title>");
  }

  @Test
  void itsOwnPageIsWrittenAnew() throws IOException {
    keep("one", SampleStrip.record());
    keep("two", SampleStrip.record());
    OverviewPage.write(folder, List.of());
    keep("three", SampleStrip.record());

    assertThat(OverviewPage.write(folder, List.of())).isTrue();

    assertThat(page()).contains("<h1>3 strips</h1>");
  }

  @Test
  void aDamagedRecordIsNamedAndStopsNothing() throws IOException {
    keep("one", SampleStrip.record());
    Path damaged = Files.createDirectories(folder.resolve("two"));
    Files.write(damaged.resolve("record.json"), "{".getBytes(StandardCharsets.UTF_8));

    assertThat(OverviewPage.write(folder, List.of())).isTrue();

    assertThat(page()).contains("<dt>two</dt><dd>The record in this folder cannot be read.");
  }

  @Test
  void strangeNamesMakeSoundLinks() throws IOException {
    keep("a \"b\" <c> #d%", SampleStrip.record());
    keep("ü", SampleStrip.record());

    OverviewPage.write(folder, List.of());

    assertThat(page())
        .contains("href=\"./a%20%22b%22%20%3Cc%3E%20%23d%25/report.html\"")
        .contains("href=\"./%C3%BC/report.html\"")
        .doesNotContain("<c>");
  }

  /** Pictures come as they are scrolled to; the page itself stays small. */
  @Test
  void fiveHundredRecordsMakeASmallPageInTheirOrder() throws IOException {
    String record = RecordJson.text(SampleStrip.record());
    for (int i = 1; i <= 500; i++) {
      keep("strip-" + i, record);
    }

    OverviewPage.write(folder, List.of());

    String page = page();
    assertThat(page.length()).isLessThan(1_000_000);
    assertThat(page.split("loading=\"lazy\"", -1)).hasSize(501);
    assertThat(page.indexOf("strip-9/report")).isLessThan(page.indexOf("strip-10/report"));
  }
}
