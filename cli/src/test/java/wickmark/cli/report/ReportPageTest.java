package wickmark.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import wickmark.cli.measuring.SampleStrip;
import wickmark.cli.measuring.StraightPicture;
import wickmark.core.chromatogram.LaneEvidence;
import wickmark.core.chromatogram.LaneRole;
import wickmark.core.chromatogram.Place;
import wickmark.core.chromatogram.SpotEvidence;
import wickmark.core.chromatogram.StripEvidence;
import wickmark.core.colour.LabColour;
import wickmark.core.record.RunRecord;
import wickmark.imaging.photo.Photo;

class ReportPageTest {
  private static String page(RunRecord record) {
    return page(record, SampleStrip.straightened());
  }

  private static String page(RunRecord record, StraightPicture straightened) {
    Photo photo =
        new Photo(
            120, 200, new byte[3 * 120 * 200], Optional.empty(), OptionalDouble.empty(), false);
    return ReportPage.html(
        record,
        photo,
        straightened,
        ReportPictures.begin(photo, straightened),
        new StripNumber(1, 1));
  }

  private final String page = page(SampleStrip.record());

  @Test
  void reachesForNothingOutside() {
    Matcher addresses =
        Pattern.compile("(?:src=|href=|url\\()\\s*[\"']?([^\"')\\s>#][^\"')\\s>]*)").matcher(page);
    int found = 0;
    while (addresses.find()) {
      found++;
      assertThat(addresses.group(1)).startsWith("data:image/");
    }
    assertThat(found).isEqualTo(2);
    assertThat(page).contains("default-src 'none'");
  }

  @Test
  void itsPolicyNamesItsOwnStyleSheet() throws Exception {
    String style = page.substring(page.indexOf("<style>") + 7, page.indexOf("</style>"));
    byte[] hash =
        MessageDigest.getInstance("SHA-256").digest(style.getBytes(StandardCharsets.UTF_8));

    assertThat(page).contains("'sha256-" + Base64.getEncoder().encodeToString(hash) + "'");
    assertThat(page).doesNotContain(" style=");
  }

  @Test
  void itsPolicyNamesItsOneScript() throws Exception {
    String script = page.substring(page.lastIndexOf("<script>") + 8, page.lastIndexOf("</script>"));
    byte[] hash =
        MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));

    assertThat(page).contains("script-src 'sha256-" + Base64.getEncoder().encodeToString(hash));
    assertThat(script).doesNotContain("fetch(", "XMLHttpRequest", "eval(", "import(", "innerHTML");
  }

  @Test
  void aNameCannotEndTheScriptsData() {
    String data = page(SampleStrip.record("</script><b>", "B", "X"));

    assertThat(data.substring(data.indexOf("id=\"strip-data\""))).doesNotContain("</script><b>");
  }

  @Test
  void warningsComeBeforeTheTable() {
    assertThat(page.indexOf("The front is faint.")).isPositive().isLessThan(page.indexOf("<table"));
  }

  @Test
  void holdsTableFindingsAndBudget() {
    assertThat(page)
        .contains("0.720 ± 0.004")
        .contains("X is consistent with A and B.")
        .contains("a mixture of at least 2")
        .contains("Place of the front")
        .contains("0.0015<span class=\"share\">51 %</span>");
  }

  /** Rf from places known to 0.05 mm but the front, to 0.1 mm; the scale to 0.1 %. */
  @Test
  void saysBelowTheBudgetWhatToImprove() {
    assertThat(page).doesNotContain("comes first of all from");
    Place spot = new Place(70, 0.05);
    LaneEvidence lane =
        new LaneEvidence(
            "A",
            LaneRole.REFERENCE,
            new Place(0, 0.05),
            new Place(75, 0.1),
            List.of(
                new SpotEvidence(
                    spot,
                    spot,
                    spot,
                    new SpotEvidence.Extent(73, 67, 6, 30),
                    new SpotEvidence.Look(0.4, new LabColour(80, 0, 40)),
                    Set.of(),
                    1)));
    StraightPicture plain = SampleStrip.straightened();
    String improvable =
        page(
            SampleStrip.record(),
            new StraightPicture(
                plain.picture(),
                plain.fromPhoto(),
                plain.pixelsPerMm(),
                plain.layout(),
                new StripEvidence(
                    true,
                    new StripEvidence.SharedUncertainties(0.001, 0, 0),
                    List.of(lane, lane, lane))));

    String rf = "The uncertainty of Rf comes first of all from finding the solvent front (78 % of";
    String mm = "The uncertainty of the distances in mm comes first of all from the scale (49 % of";
    assertThat(improvable).containsOnlyOnce(rf).containsOnlyOnce(mm);
    assertThat(improvable.indexOf(rf))
        .isGreaterThan(improvable.indexOf("Place of the front"))
        .isLessThan(improvable.indexOf("h-how"));
  }

  /**
   * The straightened picture has two pixels a millimetre and the baseline at 160: 54 mm is row 52.
   */
  @Test
  void spotsLieWhereTheyWereMeasured() {
    assertThat(page).contains("cx=\"30.0\" cy=\"52.0\"");
  }

  @Test
  void textIsEscaped() {
    assertThat(page(SampleStrip.record("<b>&\"'", "B", "X")))
        .contains("&lt;b&gt;&amp;&quot;&#39;")
        .doesNotContain("<b>");
  }

  @Test
  void thePictureInItCarriesNoMetadata() {
    Matcher jpeg = Pattern.compile("data:image/jpeg;base64,([^\"]+)").matcher(page);
    assertThat(jpeg.find()).isTrue();
    String bytes =
        new String(Base64.getDecoder().decode(jpeg.group(1)), StandardCharsets.ISO_8859_1);

    assertThat(bytes).startsWith("\u00ff\u00d8").doesNotContain("Exif").doesNotContain("http");
  }
}
