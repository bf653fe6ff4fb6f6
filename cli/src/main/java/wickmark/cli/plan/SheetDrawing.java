package wickmark.cli.plan;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Draws on one sheet; places in mm from its lower left corner. */
final class SheetDrawing implements AutoCloseable {
  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final double LETTER = 3.2;
  private static final double SMALL_LETTER = 2.5;
  private static final double BAR = 100;
  private static final double ROW = 8;
  private static final String[] COLUMNS = {"Lane", "Spot", "Colour", "Front, mm", "Spot, mm", "Rf"};

  private final PDPageContentStream content;
  private final PDFont letters;

  SheetDrawing(PDDocument document, PDPage page, PDFont letters) throws IOException {
    this.content = new PDPageContentStream(document, page);
    this.letters = letters;
    content.setLineWidth(points(0.25));
  }

  static float points(double millimetres) {
    return (float) (millimetres * POINTS_PER_MM);
  }

  void head(Size sheet, String text) throws IOException {
    write(text, PlanPdf.MARGIN, sheet.height() - PlanPdf.MARGIN - LETTER, LETTER);
  }

  /** A strip with its lower left corner at a place. */
  void strip(StripLayout layout, double left, double bottom) throws IOException {
    double width = layout.paper().width();
    content.addRect(points(left), points(bottom), points(width), points(layout.paper().height()));
    content.stroke();
    line(left, bottom + layout.baseline(), left + width, bottom + layout.baseline());
    dashed(left, bottom + layout.front(), left + width, 2, 1.5);
    dashed(left, bottom + layout.solvent(), left + width, 0.4, 1.2);
    write("stop the front here", left + 2, bottom + layout.front() + 1, SMALL_LETTER);
    write("solvent", left + 2, bottom + layout.solvent() - SMALL_LETTER - 0.5, SMALL_LETTER);
    for (int i = 0; i < layout.origins().size(); i++) {
      double x = left + layout.origins().get(i);
      line(x, bottom + layout.baseline() - 1.5, x, bottom + layout.baseline() + 1.5);
      String name = fitting(layout.samples().get(i), laneWidth(layout));
      write(name, x - width(name, LETTER) / 2, bottom + layout.baseline() - LETTER - 2.5, LETTER);
    }
  }

  void bar() throws IOException {
    double y = PlanPdf.MARGIN + 4;
    line(PlanPdf.MARGIN, y, PlanPdf.MARGIN + BAR, y);
    for (int mm = 0; mm <= BAR; mm += 10) {
      line(PlanPdf.MARGIN + mm, y - 1, PlanPdf.MARGIN + mm, y + (mm % 50 == 0 ? 2.5 : 1.5));
    }
    write("100 mm", PlanPdf.MARGIN + BAR + 2, y - LETTER / 3, LETTER);
  }

  /** A row a sample and two more for further spots, as far as the sheet goes. */
  void table(StripLayout layout, Size sheet) throws IOException {
    double width = (sheet.width() - 2 * PlanPdf.MARGIN) / COLUMNS.length;
    double top = sheet.height() - PlanPdf.MARGIN - PlanPdf.HEAD;
    int room = (int) Math.floor((top - PlanPdf.MARGIN) / ROW) - 1;
    int rows = Math.min(room, 3 * layout.samples().size());
    for (int c = 0; c < COLUMNS.length; c++) {
      write(COLUMNS[c], PlanPdf.MARGIN + c * width + 1.5, top - ROW + 2.5, LETTER);
    }
    for (int r = 0; r < rows; r++) {
      if (r % 3 == 0) {
        write(layout.samples().get(r / 3), PlanPdf.MARGIN + 1.5, top - (r + 2) * ROW + 2.5, LETTER);
      }
    }
    for (int r = 0; r <= rows + 1; r++) {
      double y = top - r * ROW;
      line(PlanPdf.MARGIN, y, sheet.width() - PlanPdf.MARGIN, y);
    }
    for (int c = 0; c <= COLUMNS.length; c++) {
      double x = PlanPdf.MARGIN + c * width;
      line(x, top, x, top - (rows + 1) * ROW);
    }
  }

  private void line(double x1, double y1, double x2, double y2) throws IOException {
    content.moveTo(points(x1), points(y1));
    content.lineTo(points(x2), points(y2));
    content.stroke();
  }

  private void dashed(double x1, double y, double x2, double dash, double gap) throws IOException {
    content.setLineDashPattern(new float[] {points(dash), points(gap)}, 0);
    line(x1, y, x2, y);
    content.setLineDashPattern(new float[0], 0);
  }

  private void write(String text, double x, double y, double height) throws IOException {
    content.beginText();
    content.setFont(letters, points(height));
    content.newLineAtOffset(points(x), points(y));
    content.showText(writable(text));
    content.endText();
  }

  private static double laneWidth(StripLayout layout) {
    return layout.origins().size() == 1
        ? layout.paper().width()
        : layout.origins().get(1) - layout.origins().get(0) - 1;
  }

  /** A name that is too long for its place ends in dots. */
  private String fitting(String name, double room) throws IOException {
    String shown = name;
    while (width(shown, LETTER) > room && shown.codePointCount(0, shown.length()) > 1) {
      String kept = shown.endsWith("…") ? shown.substring(0, shown.length() - 1) : shown;
      shown = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1)) + "…";
      if (shown.equals("…")) {
        return shown;
      }
    }
    return shown;
  }

  private double width(String text, double height) throws IOException {
    return letters.getStringWidth(writable(text)) / 1000 * height;
  }

  /** What the letters do not have becomes a question mark, as on the screen. */
  private String writable(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints().forEach(c -> shown.append(hasLetter(c) ? Character.toString(c) : "?"));
    return shown.toString();
  }

  private boolean hasLetter(int codePoint) {
    try {
      letters.encode(Character.toString(codePoint));
      return !Character.isISOControl(codePoint);
    } catch (IOException | IllegalArgumentException e) {
      return false;
    }
  }

  @Override
  public void close() throws IOException {
    content.close();
  }
}
