package wickmark.cli.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.WebElement;

/** What the pages show in a real browser, light and dark, without script, and on paper. */
@WithBrowser
class PagesIT extends PagesInABrowser {
  @Test
  void everyPageIsAccessibleInLightAndDark() {
    assertThat(
            ProgramRun.in(folder, "wickmark check rec/icing-scan ex/hand-readings.csv").exitCode())
        .isEqualTo(5);
    run("wickmark pool rec/icing-scan rec/icing-bench --out pooled");
    for (String page :
        List.of(
            "rec/icing-scan/report.html",
            "rec/icing-scan/check.html",
            "rec/icing-scan/feedback.html",
            "pooled/pool.html",
            "rec/index.html")) {
      browser.open(folder.resolve(page));
      assertAccessible(page);
    }
  }

  @Test
  void theOverviewShowsItsPicturesAndHidesWhatIsNotAskedFor() {
    browser.open(folder.resolve("rec/index.html"));

    assertThat(browser.findAll(".thumb")).hasSize(2);
    assertThat(
            browser.run(
                "return [...document.querySelectorAll('.thumb')].every(i => i.naturalWidth > 0)"))
        .isEqualTo(true);
    browser.clickOn("show-fine");
    assertThat(browser.findAll(".thumb")).noneMatch(WebElement::isDisplayed);
  }

  @Test
  void withoutScriptTheReportIsWholeAndOffersNothingItCannotDo() {
    browser.run("document.getElementById('edit-save').remove()");
    browser.script(false);
    try {
      browser.open(folder.resolve("rec/icing-bench/report.html"));
      assertThat(browser.find("#h-correct").isDisplayed()).isFalse();
      assertThat(browser.find(".straight .profile").isDisplayed()).isTrue();
      browser.clickOn("show-density");
      assertThat(browser.find(".straight .profile").isDisplayed()).isFalse();
    } finally {
      browser.script(true);
    }
  }

  /** Sizes of ISO 216 A4 and US Letter in points; text in the order in which it is printed. */
  @Test
  void printsOnA4AndLetterWithoutTheTools() throws IOException {
    for (double[] paper : new double[][] {{21.0, 29.7, 595, 842}, {21.59, 27.94, 612, 792}}) {
      try (PDDocument printed = Loader.loadPDF(browser.printed(paper[0], paper[1]))) {
        assertThat(printed.getPage(0).getMediaBox().getWidth())
            .isCloseTo((float) paper[2], within(1f));
        assertThat(printed.getPage(0).getMediaBox().getHeight())
            .isCloseTo((float) paper[3], within(1f));
        assertThat(printed.getNumberOfPages()).isBetween(2, 3);
        String text = new PDFTextStripper().getText(printed);
        assertThat(text).contains("Distances and Rf", "Icing is consistent with", "Cautions");
        assertThat(text).doesNotContain("Correct by hand", "Add a spot", "Correct it by hand");
      }
    }
  }
}
