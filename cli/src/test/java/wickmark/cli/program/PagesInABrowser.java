package wickmark.cli.program;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import wickmark.cli.browser.Browser;

/** The pages that the assembled program wrote of an example, in a real browser. */
abstract class PagesInABrowser {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @TempDir static Path folder;
  static Browser browser;

  @BeforeAll
  static void measureAnExample() {
    run("wickmark example ex");
    run(
        "wickmark measure ex/icing-scan.jpg ex/icing-bench.jpg"
            + " --lanes Yolk,Rose,Sky,Leaf,Icing --unknown Icing --out rec");
    browser = Browser.start(folder);
  }

  @AfterAll
  static void closeTheBrowser() {
    browser.close();
  }

  @BeforeEach
  void openTheReport() throws IOException {
    Files.deleteIfExists(folder.resolve("corrections.json"));
    // A page with unsaved corrections asks before it is left.
    browser.run("document.getElementById('edit-save')?.remove()");
    open("icing-bench");
  }

  static void open(String record) {
    browser.open(folder.resolve("rec").resolve(record).resolve("report.html"));
    browser.prefer("light");
    browser.clickOn("correct-start");
  }

  static ProgramRun run(String commandLine) {
    ProgramRun run = ProgramRun.in(folder, commandLine);
    assertThat(run.exitCode()).as(run.said()).isZero();
    return run;
  }

  static JsonNode record(String name) throws IOException {
    return MAPPER.readTree(folder.resolve(name).resolve("record.json").toFile());
  }

  static void assertAccessible(String page) {
    browser.prefer("light");
    assertThat(browser.accessibilityFaults()).as(page).isEmpty();
    browser.prefer("dark");
    assertThat(browser.contrastFaults()).as(page + ", dark").isEmpty();
    assertThat(browser.complaints()).as(page).isEmpty();
    browser.prefer("light");
  }
}
