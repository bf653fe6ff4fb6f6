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

  private static final String TEMPLATE = "report.ftlh";

  private ReportPage() {}

  /** Reads the template, which is then ready when the first page is wanted. */
  public static void prepare() {
    PageTemplate.prepare(ReportPage.class, TEMPLATE);
  }

  /**
   * Returns the page's text.
   *
   * @param record rounded
   */
  public static String html(
      RunRecord record,
      Photo photo,
      StraightPicture straightened,
      ReportPictures pictures,
      StripNumber number) {
    return PageTemplate.filledWithScript(
        ReportPage.class,
        TEMPLATE,
        ReportContent.of(
            record,
            straightened.evidence(),
            SketchDrawing.onPhoto(record, photo, pictures.photoJpeg()),
            SketchDrawing.onStrip(record, straightened, pictures.straightenedPng())),
        SCRIPT,
        EditData.of(record, straightened, number));
  }
}
