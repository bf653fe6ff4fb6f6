package wickmark.core.card;

import java.util.ArrayList;
import java.util.List;
import wickmark.core.sheet.Size;

/**
 * What is where on the card.
 *
 * @param fiducials four, at the sheet's corners
 * @param place where the strip lies: a grey area, so that white paper shows against it
 * @param rules along two sides of the place
 * @param patches white, greys and black
 * @param bar {@link #BAR_MM} long, to measure the print by; it lies along the sheet, as the paper
 *     runs through the printer, which is the way that errs most (common practice), and as lanes do
 */
public record CardLayout(
    CardSheet sheet,
    List<Fiducial> fiducials,
    Box place,
    Rules rules,
    List<Patch> patches,
    Bar bar) {

  /** Length of the check bar when printed at 100 %. */
  public static final double BAR_MM = 100;

  /**
   * Grey of the place, 0 black to 1 white in the print's own terms: white paper stands out, and a
   * printer lays it down evenly without using much toner.
   */
  public static final double PLACE_GREY = 0.6;

  /** Printers leave up to 6.4 mm of the sheet's edge white (common practice). */
  private static final double MARGIN = 8;

  /** Nothing is printed so near to a square: one cell, so that its edge is seen. */
  private static final double QUIET = 3;

  /** Room for a rule's strokes and numbers, and for the bar. */
  private static final double RULE = 12;

  private static final double LARGE_FIDUCIAL = 21;
  private static final double SMALL_FIDUCIAL = 14;
  private static final double SMALL_SHEET = 180;

  /** Height of a line of words above the patches. */
  private static final double WORDS = 5;

  private static final double[] GREYS = {1, 0.8, 0.6, 0.4, 0.2, 0};

  /**
   * Two rules in whole millimetres.
   *
   * @param beside along the place's left side, zero at the place's lower edge
   * @param below along the place's lower side, zero at the place's left edge
   */
  public record Rules(Box beside, Box below) {}

  /** A patch of one grey, 0 black to 1 white. */
  public record Patch(Box box, double grey) {}

  /** An upright stroke with an end mark at each end. */
  public record Bar(double x, double top, double bottom) {}

  public CardLayout {
    fiducials = List.copyOf(fiducials);
    patches = List.copyOf(patches);
  }

  /** The card on a sheet. */
  public static CardLayout of(CardSheet sheet) {
    Size size = sheet.size();
    double w = size.width();
    double h = size.height();
    double side = w < SMALL_SHEET ? SMALL_FIDUCIAL : LARGE_FIDUCIAL;
    double[][] corners = {
      {MARGIN, MARGIN},
      {w - MARGIN - side, MARGIN},
      {w - MARGIN - side, h - MARGIN - side},
      {MARGIN, h - MARGIN - side}
    };
    List<Fiducial> fiducials = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      double x = corners[i][0];
      double y = corners[i][1];
      fiducials.add(new Fiducial(sheet.firstSquare() + i, new Box(x, y, x + side, y + side)));
    }
    Box place =
        new Box(
            MARGIN + RULE + 2,
            MARGIN + side + QUIET,
            w - MARGIN - RULE - 2,
            h - MARGIN - side - QUIET - RULE);
    Rules rules =
        new Rules(
            new Box(place.left() - RULE, place.top(), place.left(), place.bottom()),
            new Box(place.left(), place.bottom(), place.right(), place.bottom() + RULE));
    double middle = (place.top() + place.bottom()) / 2;
    return new CardLayout(
        sheet,
        fiducials,
        place,
        rules,
        patches(new Box(MARGIN + side + QUIET, MARGIN, w - MARGIN - side - QUIET, MARGIN + side)),
        new Bar(w - MARGIN - RULE / 2, middle - BAR_MM / 2, middle + BAR_MM / 2));
  }

  private static List<Patch> patches(Box band) {
    double step = band.width() / GREYS.length;
    List<Patch> patches = new ArrayList<>();
    for (int i = 0; i < GREYS.length; i++) {
      double x = band.left() + i * step;
      patches.add(new Patch(new Box(x, band.top() + 2 * WORDS, x + step, band.bottom()), GREYS[i]));
    }
    return patches;
  }

  /** The sheet itself. */
  public Box paper() {
    return new Box(0, 0, sheet.size().width(), sheet.size().height());
  }

  /** Room for words above the patches. */
  public Box upperWords() {
    Box first = patches.get(0).box();
    Box last = patches.get(patches.size() - 1).box();
    return new Box(first.left(), MARGIN, last.right(), first.top());
  }

  /** Room for words between the lower squares. */
  public Box lowerWords() {
    Box left = fiducials.get(3).box();
    Box right = fiducials.get(2).box();
    return new Box(left.right() + QUIET, left.top(), right.left() - QUIET, left.bottom());
  }
}
