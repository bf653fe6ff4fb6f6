package wickmark.cli.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/**
 * The report corrected in a real browser by mouse, keyboard and finger, saved, and measured again
 * by the program.
 */
@WithBrowser
class CorrectionIT extends PagesInABrowser {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final String MEASURED = "section[aria-labelledby=h-table] tbody";
  private static final String CORRECTED = "#edit-table";

  /** Returns what was saved: the browser reserves the name with an empty file, then fills it. */
  private JsonNode save() throws IOException, InterruptedException {
    browser.clickOn("edit-save");
    Path file = folder.resolve("corrections.json");
    for (long end = System.nanoTime() + Duration.ofSeconds(20).toNanos();
        (!Files.exists(file) || Files.size(file) == 0) && System.nanoTime() < end; ) {
      Thread.sleep(50);
    }
    assertThat(file).isNotEmptyFile();
    return MAPPER.readTree(file.toFile());
  }

  /**
   * The page's rows by lane and number: front, distance, Rf, and the expanded uncertainty of Rf.
   */
  private static Map<String, List<Double>> rows() {
    Map<String, List<Double>> rows = new HashMap<>();
    String lane = "";
    for (List<String> cells : browser.table(CORRECTED)) {
      List<String> rest = new ArrayList<>(cells);
      if (rest.size() == 7) {
        lane = rest.remove(0).replaceAll("(reference|unknown)$", "");
      }
      if (!rest.get(0).equals("no spot")) {
        rows.put(
            lane + " " + rest.get(0),
            List.of(
                number(rest.get(2)),
                number(rest.get(3)),
                number(rest.get(4)),
                number(rest.get(4).substring(rest.get(4).indexOf('±') + 2))));
      }
    }
    return rows;
  }

  private static double number(String text) {
    return Double.parseDouble(text.split(" ", 2)[0]);
  }

  private static Map<String, List<Double>> rows(JsonNode record) {
    Map<String, List<Double>> rows = new HashMap<>();
    for (JsonNode lane : record.path("lanes")) {
      for (JsonNode spot : lane.path("spots")) {
        rows.put(
            lane.path("name").asText() + " " + spot.path("number").asInt(),
            List.of(
                lane.path("frontDistanceMm").asDouble(),
                spot.path("distanceMm").asDouble(),
                spot.path("rf").asDouble(),
                2 * spot.path("rfUncertainty").asDouble()));
      }
    }
    return rows;
  }

  private static void assertValid(String printSchema, JsonNode document) {
    String schema = run("wickmark measure " + printSchema).said();
    assertThat(
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(schema)
                .validate(document))
        .isEmpty();
  }

  /** Every figure with its uncertainty: the page's arithmetic is the program's. */
  @Test
  void untouchedThePageMeasuresWhatTheProgramMeasured() {
    for (String record : List.of("icing-scan", "icing-bench")) {
      open(record);
      List<List<String>> measured = browser.table(MEASURED);
      measured.forEach(row -> row.remove(row.size() - 3)); // the middle, which is not corrected

      assertThat(browser.table(CORRECTED)).isEqualTo(measured);
      assertThat(browser.complaints()).isEmpty();
    }
  }

  @Test
  void whatIsSavedWithoutACorrectionIsWhatWasSaid() throws Exception {
    JsonNode saved = save();
    assertValid("--print-corrections-schema", saved);
    assertThat(saved.path("settings")).isEqualTo(record("rec/icing-bench").path("settings"));
  }

  /** By mouse, keyboard and finger, from the report to the corrected record. */
  @Test
  void whatIsCorrectedIsKeptAndTheRestIsMeasured() throws Exception {
    JsonNode before = record("rec/icing-bench");
    browser
        .actions()
        .dragAndDropBy(browser.handle("Yolk, spot 1"), 0, -40) // mouse
        .perform();
    browser.press("Front, left end", Keys.SHIFT, Keys.ARROW_DOWN); // keyboard: a millimetre
    browser.press("Front, left end", Keys.ARROW_DOWN);
    drawFingerFrom(browser.handle("Rose, spot 1"), 10, 30);
    browser.press("Leaf, spot 2", Keys.DELETE);
    browser.clickOn("edit-add-spot");
    browser.actions().moveToElement(browser.handle("Origin of Sky"), 0, -120).click().perform();
    WebElement name = browser.find("#edit-lanes tr:nth-child(4) input[type=text]");
    name.clear();
    name.sendKeys("Leaf green", Keys.TAB);
    browser.clickOn("unknown-lane3");
    Map<String, List<Double>> expected = rows();
    assertThat(expected.keySet())
        .containsExactlyInAnyOrder(
            "Yolk 1", "Rose 1", "Sky 1", "Sky 2", "Leaf green 1", "Icing 1", "Icing 2");

    JsonNode saved = save();
    assertValid("--print-corrections-schema", saved);
    run(
        "wickmark measure ex/icing-bench.jpg --corrections corrections.json --out corrected"
            + " --title Corrected");

    JsonNode after = record("corrected/icing-bench");
    assertValid("--print-schema", after);
    Map<String, List<Double>> measured = rows(after);
    assertThat(measured.keySet()).isEqualTo(expected.keySet());
    expected.forEach(
        (spot, figures) -> {
          // Hand-set or not, the page foretold it: half a step of its last digit and a hundredth.
          assertThat(measured.get(spot).get(0)).as(spot).isCloseTo(figures.get(0), within(0.07));
          assertThat(measured.get(spot).get(1)).as(spot).isCloseTo(figures.get(1), within(0.07));
          assertThat(measured.get(spot).get(2)).as(spot).isCloseTo(figures.get(2), within(0.0009));
          // Printed with one digit or two, and a pixel of the photo is not the same everywhere.
          assertThat(measured.get(spot).get(3)).as(spot).isCloseTo(figures.get(3), within(0.0011));
        });
    assertThat(after.path("front").path("kind").asText()).isEqualTo("by-hand");
    assertThat(after.at("/baseline/endsPx")).isEqualTo(before.at("/baseline/endsPx"));
    // Which other lines could be the baseline depends a little on the front that is said.
    assertThat(after.at("/baseline/confidence").asDouble())
        .isCloseTo(before.at("/baseline/confidence").asDouble(), within(0.02));
    assertThat(after.path("baseline").path("byHand").asBoolean()).isFalse();
    assertThat(flags(after, 0, 0)).contains("by-hand");
    assertThat(flags(after, 1, 0)).contains("by-hand");
    assertThat(flags(after, 2, 0)).doesNotContain("by-hand");
    assertThat(flags(after, 2, 1)).contains("by-hand");
    // Measured, not set: it may feel the front that was moved, but by no more than its noise.
    assertThat(after.at("/lanes/2/spots/0/centrePx/1").asDouble())
        .isCloseTo(before.at("/lanes/2/spots/0/centrePx/1").asDouble(), within(0.3));
    assertThat(after.at("/lanes/3/role").asText()).isEqualTo("unknown");
    assertThat(run("wickmark reproduce corrected/icing-bench --pictures ex").said())
        .contains("every number is the same");

    // The corrected report knows what was said, and says it again.
    browser.run("document.getElementById('edit-save').remove()");
    browser.open(folder.resolve("corrected/icing-bench/report.html"));
    browser.clickOn("correct-start");
    List<List<String>> table = browser.table(MEASURED);
    table.forEach(row -> row.remove(row.size() - 3));
    List<List<String>> corrected = browser.table(CORRECTED);
    for (int i = 0; i < table.size(); i++) { // remarks may say more
      assertThat(corrected.get(i).subList(0, corrected.get(i).size() - 1))
          .isEqualTo(table.get(i).subList(0, table.get(i).size() - 1));
    }
    Files.delete(folder.resolve("corrections.json"));
    assertThat(save().path("settings")).isEqualTo(after.path("settings"));
  }

  private static List<String> flags(JsonNode record, int lane, int spot) {
    return StreamSupport.stream(
            record.at("/lanes/" + lane + "/spots/" + spot + "/flags").spliterator(), false)
        .map(JsonNode::asText)
        .toList();
  }

  private static void drawFingerFrom(WebElement handle, int dx, int dy) {
    @SuppressWarnings("unchecked")
    List<Number> at =
        (List<Number>)
            browser.run(
                "const b = arguments[0].getBoundingClientRect();"
                    + "return [b.x + b.width / 2, b.y + b.height / 2]",
                handle);
    double x = at.get(0).doubleValue();
    double y = at.get(1).doubleValue();
    browser.touch("touchStart", List.of(Map.of("x", x, "y", y)));
    for (int step = 1; step <= 5; step++) {
      browser.touch(
          "touchMove", List.of(Map.of("x", x + dx * step / 5.0, "y", y + dy * step / 5.0)));
    }
    browser.touch("touchEnd", List.of());
  }

  @Test
  void everyStepCanBeUndoneAndDoneAgain() {
    Map<String, List<Double>> first = rows();
    browser.press("Sky, spot 1", Keys.ARROW_UP);
    browser.press("Icing, spot 2", Keys.DELETE);
    browser.clickOn("remove-lane0");
    Map<String, List<Double>> last = rows();
    assertThat(last.keySet())
        .containsExactlyInAnyOrder("Rose 1", "Sky 1", "Leaf 1", "Leaf 2", "Icing 1");

    for (int i = 0; i < 3; i++) {
      browser.actions().keyDown(Keys.CONTROL).sendKeys("z").keyUp(Keys.CONTROL).perform();
    }
    assertThat(rows()).isEqualTo(first);
    for (int i = 0; i < 3; i++) {
      browser.actions().keyDown(Keys.CONTROL).sendKeys("y").keyUp(Keys.CONTROL).perform();
    }
    assertThat(rows()).isEqualTo(last);
  }

  /** Without a drag: choose, then press the arrow buttons (WCAG 2.2, 2.5.7). */
  @Test
  void buttonsMoveWhatIsChosen() {
    browser.handle("Sky, spot 1").click();
    double before = rows().get("Sky 1").get(1);
    browser.find("#edit-step option[value='1']").click();
    browser.clickOn("edit-down");
    browser.clickOn("edit-down");

    assertThat(rows().get("Sky 1").get(1)).isCloseTo(before - 2, within(0.11));
    assertThat(browser.find("#edit-said").getAccessibleName()).isNotNull();
  }

  @Test
  void movedCornersAreForTheProgramToMeasure() throws Exception {
    browser.run("document.getElementById('edit-corner-part').open = true");
    Thread.sleep(100);
    browser.actions().dragAndDropBy(browser.handle("Corner, top left"), 4, 3).perform();
    assertThat(browser.find("#edit-stale").isDisplayed()).isTrue();

    JsonNode saved = save();
    run("wickmark measure ex/icing-bench.jpg --corrections corrections.json --out cornered");

    JsonNode strip = record("cornered/icing-bench").path("strip");
    assertThat(strip.path("byHand").asBoolean()).isTrue();
    assertThat(strip.path("cornersPx")).isEqualTo(saved.path("settings").path("corners"));
  }

  @Test
  void handlesAreLargeEnoughForAFinger() {
    for (WebElement hit : browser.findAll("#edit-strip .hit")) {
      assertThat(hit.getRect().getWidth()).isGreaterThanOrEqualTo(24); // WCAG 2.2, 2.5.8
    }
  }

  @Test
  void thePageThatCorrectsIsAccessibleInLightAndDark() {
    browser.run("document.querySelectorAll('#correct details').forEach(d => d.open = true)");
    browser.handle("Sky, spot 1").click();
    assertAccessible("correcting");
  }
}
