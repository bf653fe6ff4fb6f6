package wickmark.cli.plan;

import java.io.IOException;
import java.io.UncheckedIOException;
import wickmark.cli.pdf.PrintedPages;
import wickmark.cli.pdf.SheetPen;
import wickmark.core.plan.StripLayout;
import wickmark.core.sheet.Size;

/**
 * A plan as a PDF: strips to trace or to cut out, true to scale with a bar of 100 mm to check the
 * print by, and a table for what is read. Vector, with its letters embedded; the same plan gives
 * the same bytes.
 */
public final class PlanPdf {
  /** Home printers leave this much of the sheet's edge white. */
  static final double MARGIN = 10;

  /** Room above the strips for the title, below them for the bar. */
  static final double HEAD = 12;

  static final double FOOT = 14;
  static final double GAP = 8;

  private PlanPdf() {}

  /** Returns how many strips go on a sheet, laid as it holds more; 0 where not even one does. */
  public static int stripsOnASheet(Size sheet, Size paper) {
    return Math.max(upright(sheet, paper), upright(sheet.turned(), paper));
  }

  private static int upright(Size sheet, Size paper) {
    int across = fit(sheet.width() - 2 * MARGIN, paper.width());
    int rows = fit(sheet.height() - 2 * MARGIN - HEAD - FOOT, paper.height());
    return across * rows;
  }

  private static int fit(double room, double length) {
    return (int) Math.floor((room + GAP) / (length + GAP));
  }

  /**
   * Returns the file's bytes.
   *
   * @param named the sheet, upright or lying as it holds more strips
   * @param strips how many strips are drawn, over as many sheets as it takes
   */
  public static byte[] of(StripLayout layout, Size named, int strips) {
    int onUpright = upright(named, layout.paper());
    boolean lying = strips > onUpright && upright(named.turned(), layout.paper()) > onUpright;
    Size sheet = lying ? named.turned() : named;
    try (PrintedPages pages = PrintedPages.titled("Strip plan")) {
      int across = fit(sheet.width() - 2 * MARGIN, layout.paper().width());
      int onASheet = upright(sheet, layout.paper());
      for (int first = 0; first < strips; first += onASheet) {
        try (SheetPen pen = pages.add(sheet)) {
          SheetDrawing drawing = new SheetDrawing(pen);
          drawing.head(sheet, "Trace or cut out. Print at 100 %: the bar below is 100 mm long.");
          for (int i = first; i < Math.min(strips, first + onASheet); i++) {
            int column = (i - first) % across;
            int row = (i - first) / across;
            drawing.strip(
                layout,
                MARGIN + column * (layout.paper().width() + GAP),
                sheet.height()
                    - MARGIN
                    - HEAD
                    - layout.paper().height()
                    - row * (layout.paper().height() + GAP));
          }
          drawing.bar();
        }
      }
      int samples = layout.samples().size();
      for (int first = 0; first < samples; first += SheetDrawing.samplesInTable(named)) {
        try (SheetPen pen = pages.add(named)) {
          SheetDrawing drawing = new SheetDrawing(pen);
          drawing.head(named, "Readings, in millimetres from the baseline. Rf = spot ÷ front.");
          int next = Math.min(samples, first + SheetDrawing.samplesInTable(named));
          drawing.table(layout.samples().subList(first, next), named);
        }
      }
      return pages.bytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
