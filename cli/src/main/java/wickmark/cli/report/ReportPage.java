package wickmark.cli.report;

import wickmark.cli.measuring.StraightPicture;
import wickmark.core.record.RunRecord;
import wickmark.imaging.photo.Photo;

/**
 * The report: one page that needs no network, and no script to be read; its security policy lets in
 * nothing but its pictures, its one style sheet and the one script that corrects by hand.
 */
public final class ReportPage {
  private static final String SCRIPT =
      PageTemplate.text("arithmetic.js") + PageTemplate.text("correct.js");

  private ReportPage() {}

  /**
   * Returns the page's text.
   *
   * @param record rounded
   * @param straightenedPng the straightened strip as a PNG file
   */
  public static String html(
      RunRecord record,
      Photo photo,
      StraightPicture straightened,
      byte[] straightenedPng,
      StripNumber number) {
    return PageTemplate.filledWithScript(
        ReportPage.class,
        "report.ftlh",
        ReportContent.of(
            record,
            straightened.evidence(),
            SketchDrawing.onPhoto(record, photo),
            SketchDrawing.onStrip(record, straightened, straightenedPng)),
        SCRIPT,
        EditData.of(record, straightened, number));
  }
}
