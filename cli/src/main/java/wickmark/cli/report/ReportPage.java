package wickmark.cli.report;

import wickmark.cli.measuring.StraightPicture;
import wickmark.core.record.RunRecord;
import wickmark.imaging.photo.Photo;

/**
 * The report: one page that needs no network and no script; its security policy lets in nothing but
 * its pictures and its one style sheet.
 */
public final class ReportPage {
  private ReportPage() {}

  /**
   * Returns the page's text.
   *
   * @param record rounded
   * @param straightenedPng the straightened strip as a PNG file
   */
  public static String html(
      RunRecord record, Photo photo, StraightPicture straightened, byte[] straightenedPng) {
    return PageTemplate.filled(
        ReportPage.class,
        "report.ftlh",
        ReportContent.of(
            record,
            SketchDrawing.onPhoto(record, photo),
            SketchDrawing.onStrip(record, straightened, straightenedPng)));
  }
}
