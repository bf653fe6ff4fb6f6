package wickmark.cli.pdf;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;

/** Draws on one sheet; places in mm from its lower left corner. */
public final class SheetPen implements AutoCloseable {
  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final double LINE = 0.25;

  private final PDPageContentStream content;
  private final PDFont letters;

  SheetPen(PDDocument document, PDPage page, PDFont letters) throws IOException {
    this.content = new PDPageContentStream(document, page);
    this.letters = letters;
    content.setLineWidth(points(LINE));
  }

  static float points(double millimetres) {
    return (float) (millimetres * POINTS_PER_MM);
  }

  /** A stroke of 0.25 mm. */
  public void line(double x1, double y1, double x2, double y2) throws IOException {
    content.moveTo(points(x1), points(y1));
    content.lineTo(points(x2), points(y2));
    content.stroke();
  }

  /** A level stroke in dashes. */
  public void dashed(double x1, double y, double x2, double dash, double gap) throws IOException {
    content.setLineDashPattern(new float[] {points(dash), points(gap)}, 0);
    line(x1, y, x2, y);
    content.setLineDashPattern(new float[0], 0);
  }

  /** The outline of a rectangle. */
  public void outline(double left, double bottom, double width, double height) throws IOException {
    content.addRect(points(left), points(bottom), points(width), points(height));
    content.stroke();
  }

  /** A filled rectangle, from 0 for black to 1 for white. */
  public void fill(double left, double bottom, double width, double height, double grey)
      throws IOException {
    content.setNonStrokingColor((float) grey);
    content.addRect(points(left), points(bottom), points(width), points(height));
    content.fill();
    content.setNonStrokingColor(0f);
  }

  /**
   * Writes a line of words.
   *
   * @param height of the letters, mm
   */
  public void write(String text, double x, double y, double height) throws IOException {
    write(text, Matrix.getTranslateInstance(points(x), points(y)), height);
  }

  /** The same, running upwards. */
  public void writeUpwards(String text, double x, double y, double height) throws IOException {
    write(text, Matrix.getRotateInstance(Math.PI / 2, points(x), points(y)), height);
  }

  private void write(String text, Matrix place, double height) throws IOException {
    content.beginText();
    content.setFont(letters, points(height));
    content.setTextMatrix(place);
    content.showText(writable(text));
    content.endText();
  }

  /** A text that is too long for its room ends in dots. */
  public String fitting(String text, double room, double height) throws IOException {
    String shown = text;
    while (width(shown, height) > room && shown.codePointCount(0, shown.length()) > 1) {
      String kept = shown.endsWith("…") ? shown.substring(0, shown.length() - 1) : shown;
      shown = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1)) + "…";
      if (shown.equals("…")) {
        return shown;
      }
    }
    return shown;
  }

  /** How long a text runs, mm. */
  public double width(String text, double height) throws IOException {
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
