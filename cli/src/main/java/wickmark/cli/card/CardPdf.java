package wickmark.cli.card;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import wickmark.cli.pdf.PrintedPages;
import wickmark.cli.pdf.SheetPen;
import wickmark.core.card.Box;
import wickmark.core.card.CardLayout;
import wickmark.core.card.CardSheet;
import wickmark.core.card.Fiducial;

/** The card as a PDF: vector, with its letters embedded; the same sheet gives the same bytes. */
public final class CardPdf {
  private static final double LETTER = 3;
  private static final double SMALL_LETTER = 2.2;
  private static final double LINE_STEP = 1.35;

  private final CardLayout layout;
  private final SheetPen pen;
  private final double height;

  private CardPdf(CardLayout layout, SheetPen pen) {
    this.layout = layout;
    this.pen = pen;
    this.height = layout.paper().height();
  }

  /** Returns the file's bytes. */
  public static byte[] of(CardSheet sheet) {
    try (PrintedPages pages = PrintedPages.titled("Card for pictures of strips")) {
      try (SheetPen pen = pages.add(sheet.size())) {
        new CardPdf(CardLayout.of(sheet), pen).draw();
      }
      return pages.bytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void draw() throws IOException {
    fill(layout.place(), CardLayout.PLACE_GREY);
    for (Fiducial fiducial : layout.fiducials()) {
      draw(fiducial);
    }
    for (CardLayout.Patch patch : layout.patches()) {
      fill(patch.box(), patch.grey());
      outline(patch.box());
    }
    besideRule();
    belowRule();
    bar();
    words(
        layout.upperWords(),
        List.of(
            "Lay the dry strip flat on the grey area, and photograph",
            "it from above with all four squares in the picture."));
    words(
        layout.lowerWords(),
        List.of(
            "Print at 100 %, not fitted to the page, on plain white paper.",
            "Then measure the bar at the right with a ruler, and tell",
            "its length when you measure: --printed-length MM"));
  }

  private void draw(Fiducial fiducial) throws IOException {
    double cell = fiducial.cell();
    fill(fiducial.box(), 0);
    for (int row = 0; row < Fiducial.CELLS; row++) {
      int column = 0;
      while (column < Fiducial.CELLS) {
        int end = column;
        while (end < Fiducial.CELLS && fiducial.isWhite(end, row)) {
          end++;
        }
        if (end > column) {
          double left = fiducial.box().left();
          double top = fiducial.box().top() + row * cell;
          fill(new Box(left + column * cell, top, left + end * cell, top + cell), 1);
        }
        column = end + 1;
      }
    }
  }

  private void besideRule() throws IOException {
    Box rule = layout.rules().beside();
    for (int mm = 0; mm <= rule.height(); mm++) {
      double y = rule.bottom() - mm;
      line(rule.right(), y, rule.right() - stroke(mm), y);
      if (mm % 10 == 0) {
        String number = Integer.toString(mm);
        double x = rule.right() - stroke(mm) - 0.8 - pen.width(number, SMALL_LETTER);
        write(number, x, y + 0.36 * SMALL_LETTER, SMALL_LETTER);
      }
    }
    write("mm", rule.left() + 1, rule.top() - 1, SMALL_LETTER);
  }

  private void belowRule() throws IOException {
    Box rule = layout.rules().below();
    for (int mm = 0; mm <= rule.width(); mm++) {
      double x = rule.left() + mm;
      line(x, rule.top(), x, rule.top() + stroke(mm));
      if (mm % 10 == 0) {
        String number = Integer.toString(mm);
        double left = x - pen.width(number, SMALL_LETTER) / 2;
        write(number, left, rule.top() + stroke(mm) + 0.8 + 0.72 * SMALL_LETTER, SMALL_LETTER);
      }
    }
  }

  /** Length of a stroke: whole centimetres longest, halves in between. */
  private static double stroke(int mm) {
    return mm % 10 == 0 ? 5.5 : mm % 5 == 0 ? 4 : 2.5;
  }

  private void bar() throws IOException {
    CardLayout.Bar bar = layout.bar();
    line(bar.x(), bar.top(), bar.x(), bar.bottom());
    line(bar.x() - 2.5, bar.top(), bar.x() + 2.5, bar.top());
    line(bar.x() - 2.5, bar.bottom(), bar.x() + 2.5, bar.bottom());
    String text = "100 mm if printed true";
    double middle = (bar.top() + bar.bottom()) / 2 + pen.width(text, LETTER) / 2;
    pen.writeUpwards(text, bar.x() - 1.2, height - middle, LETTER);
  }

  private void words(Box room, List<String> lines) throws IOException {
    double size = LETTER;
    for (String line : lines) {
      size = Math.min(size, LETTER * room.width() / pen.width(line, LETTER));
    }
    double y = room.top();
    for (String line : lines) {
      y += size * LINE_STEP;
      write(line, room.left(), y, size);
    }
  }

  private void fill(Box box, double grey) throws IOException {
    pen.fill(box.left(), height - box.bottom(), box.width(), box.height(), grey);
  }

  private void outline(Box box) throws IOException {
    pen.outline(box.left(), height - box.bottom(), box.width(), box.height());
  }

  private void line(double x1, double y1, double x2, double y2) throws IOException {
    pen.line(x1, height - y1, x2, height - y2);
  }

  private void write(String text, double x, double y, double size) throws IOException {
    pen.write(text, x, height - y, size);
  }
}
