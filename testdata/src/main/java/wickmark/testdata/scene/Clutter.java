package wickmark.testdata.scene;

import wickmark.testdata.colour.LinearRgb;

/**
 * Something that lies about.
 *
 * @param kind what it is
 * @param placement where its middle is
 * @param colour its main colour
 */
public record Clutter(Kind kind, Placement placement, LinearRgb colour) {

  /** Things that lie about in a classroom; sizes in mm. */
  public enum Kind {
    /** A disc like a coin, 23 across. */
    DISC(23, 23, 1.8),
    /** A pen, 140 long. */
    PEN(140, 9, 7),
    /** A paper clip, 32 long. */
    CLIP(32, 9, 1),
    /** What is seen of such a clip that holds a sheet: its other loop is behind the paper. */
    HOLDING_CLIP(32, 9, 1),
    /** A fingertip, 16 wide and long enough to reach in from the edge. */
    FINGER(16, 70, 9),
    /** The same pressing on something: its shadow is as round as its tip. */
    PRESSING_FINGER(16, 70, 5),
    /** The foot of a beaker, 62 across, seen as its rim. */
    RIM(62, 62, 3),
    /** A rubber, 42 x 18. */
    RUBBER(42, 18, 11);

    final double widthMm;
    final double heightMm;
    final double thickMm;

    Kind(double widthMm, double heightMm, double thickMm) {
      this.widthMm = widthMm;
      this.heightMm = heightMm;
      this.thickMm = thickMm;
    }
  }
}
