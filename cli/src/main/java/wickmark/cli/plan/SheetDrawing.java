package wickmark.cli.plan;

import java.io.IOException;
import java.util.List;
import wickmark.cli.pdf.SheetPen;
import wickmark.core.plan.StripLayout;
import wickmark.core.sheet.Size;

/** Draws what a plan's sheets hold. */
final class SheetDrawing {
  private static final double LETTER = 3.2;
  private static final double SMALL_LETTER = 2.5;
  private static final double BAR = 100;
  private static final double ROW = 8;
  private static final int ROWS = 3;
  private static final String[] COLUMNS = {"Lane", "Spot", "Colour", "Front, mm", "Spot, mm", "Rf"};

  private final SheetPen pen;

  SheetDrawing(SheetPen pen) {
    this.pen = pen;
  }

  void head(Size sheet, String text) throws IOException {
    pen.write(text, PlanPdf.MARGIN, sheet.height() - PlanPdf.MARGIN - LETTER, LETTER);
  }

  /** A strip with its lower left corner at a place. */
  void strip(StripLayout layout, double left, double bottom) throws IOException {
    double width = layout.paper().width();
    pen.outline(left, bottom, width, layout.paper().height());
    pen.line(left, bottom + layout.baseline(), left + width, bottom + layout.baseline());
    pen.dashed(left, bottom + layout.front(), left + width, 2, 1.5);
    pen.dashed(left, bottom + layout.solvent(), left + width, 0.4, 1.2);
    pen.write("stop the front here", left + 2, bottom + layout.front() + 1, SMALL_LETTER);
    pen.write("solvent", left + 2, bottom + layout.solvent() - SMALL_LETTER - 0.5, SMALL_LETTER);
    for (int i = 0; i < layout.origins().size(); i++) {
      double x = left + layout.origins().get(i);
      pen.line(x, bottom + layout.baseline() - 1.5, x, bottom + layout.baseline() + 1.5);
      String name = pen.fitting(layout.samples().get(i), laneWidth(layout), LETTER);
      double under = bottom + layout.baseline() - LETTER - 2.5;
      pen.write(name, x - pen.width(name, LETTER) / 2, under, LETTER);
    }
  }

  void bar() throws IOException {
    double y = PlanPdf.MARGIN + 4;
    pen.line(PlanPdf.MARGIN, y, PlanPdf.MARGIN + BAR, y);
    for (int mm = 0; mm <= BAR; mm += 10) {
      pen.line(PlanPdf.MARGIN + mm, y - 1, PlanPdf.MARGIN + mm, y + (mm % 50 == 0 ? 2.5 : 1.5));
    }
    pen.write("100 mm", PlanPdf.MARGIN + BAR + 2, y - LETTER / 3, LETTER);
  }

  /** How many samples' rows go on a sheet. */
  static int samplesInTable(Size sheet) {
    double room = sheet.height() - 2 * PlanPdf.MARGIN - PlanPdf.HEAD;
    return Math.max(1, ((int) Math.floor(room / ROW) - 1) / ROWS);
  }

  /** A row a sample and two more for further spots. */
  void table(List<String> samples, Size sheet) throws IOException {
    double width = (sheet.width() - 2 * PlanPdf.MARGIN) / COLUMNS.length;
    double top = sheet.height() - PlanPdf.MARGIN - PlanPdf.HEAD;
    int rows = ROWS * samples.size();
    for (int c = 0; c < COLUMNS.length; c++) {
      pen.write(COLUMNS[c], PlanPdf.MARGIN + c * width + 1.5, top - ROW + 2.5, LETTER);
    }
    for (int r = 0; r < rows; r++) {
      if (r % ROWS == 0) {
        String name = pen.fitting(samples.get(r / ROWS), width - 3, LETTER);
        pen.write(name, PlanPdf.MARGIN + 1.5, top - (r + 2) * ROW + 2.5, LETTER);
      }
    }
    for (int r = 0; r <= rows + 1; r++) {
      double y = top - r * ROW;
      pen.line(PlanPdf.MARGIN, y, sheet.width() - PlanPdf.MARGIN, y);
    }
    for (int c = 0; c <= COLUMNS.length; c++) {
      double x = PlanPdf.MARGIN + c * width;
      pen.line(x, top, x, top - (rows + 1) * ROW);
    }
  }

  private static double laneWidth(StripLayout layout) {
    return layout.origins().size() == 1
        ? layout.paper().width()
        : layout.origins().get(1) - layout.origins().get(0) - 1;
  }
}
