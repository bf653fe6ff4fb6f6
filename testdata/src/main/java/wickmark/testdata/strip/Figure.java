package wickmark.testdata.strip;

import java.util.ArrayList;
import java.util.List;
import wickmark.testdata.truth.PointMm;

/**
 * The figure that a sheet was cut to, within the rectangle of its width and height.
 *
 * @param leftInMm how far the upper left corner lies inwards of the lower one, mm
 * @param rightInMm the same of the upper right corner
 * @param lowerEnd form of the lower end
 * @param endMm how far up the sheet that form reaches, mm
 */
public record Figure(double leftInMm, double rightInMm, LowerEnd lowerEnd, double endMm) {
  public static final Figure RECTANGLE = new Figure(0, 0, LowerEnd.STRAIGHT, 0);

  /** A round end is drawn with so many sides. */
  private static final int SIDES = 16;

  /** Forms of a lower end. */
  public enum LowerEnd {
    STRAIGHT,
    POINTED,
    ROUND
  }

  /** Returns a sheet whose sides come closer towards the top. */
  public static Figure trapezoid(double leftInMm, double rightInMm) {
    return new Figure(leftInMm, rightInMm, LowerEnd.STRAIGHT, 0);
  }

  public static Figure pointed(double endMm) {
    return new Figure(0, 0, LowerEnd.POINTED, endMm);
  }

  public static Figure rounded(double endMm) {
    return new Figure(0, 0, LowerEnd.ROUND, endMm);
  }

  public boolean isRectangle() {
    return equals(RECTANGLE);
  }

  /**
   * Returns where the four edges would meet, top-left, top-right, bottom-right and bottom-left; the
   * lower edge is the level of the end's lowest place.
   */
  List<PointMm> corners(double widthMm, double heightMm) {
    return List.of(
        new PointMm(leftInMm, heightMm),
        new PointMm(widthMm - rightInMm, heightMm),
        new PointMm(widthMm, 0),
        new PointMm(0, 0));
  }

  /** Returns the corners of the outline, anticlockwise from the upper left. */
  public List<PointMm> outline(double widthMm, double heightMm) {
    List<PointMm> outline = new ArrayList<>();
    outline.add(new PointMm(leftInMm, heightMm));
    int sides =
        switch (lowerEnd) {
          case STRAIGHT -> 1;
          case POINTED -> 2;
          case ROUND -> SIDES;
        };
    for (int i = 0; i <= sides; i++) {
      // A round end turns fastest at the sheet's sides, so its corners are closest there.
      double share =
          lowerEnd == LowerEnd.ROUND
              ? 0.5 - 0.5 * StrictMath.cos(Math.PI * i / sides)
              : (double) i / sides;
      outline.add(new PointMm(share * widthMm, riseAt(share)));
    }
    outline.add(new PointMm(widthMm - rightInMm, heightMm));
    return outline;
  }

  /** Returns how far the lower edge has risen at a share of the width, 0 to 1, mm. */
  double riseAt(double share) {
    double off = Math.min(1, Math.abs(2 * share - 1));
    return switch (lowerEnd) {
      case STRAIGHT -> 0;
      case POINTED -> endMm * off;
      case ROUND -> endMm * (1 - Math.sqrt(1 - off * off));
    };
  }
}
