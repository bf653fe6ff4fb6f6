package wickmark.testdata.strip;

/**
 * How far the solvent rose.
 *
 * @param heightMm height above the strip's lower edge at its middle; above the strip's own height
 *     where it ran off the top
 * @param slopeDeg how far it rises to the right
 * @param bowMm how far it lags (positive) or runs ahead (negative) at the edges
 * @param mark how somebody marked it
 * @param tide absorbance of the brownish line that dissolved dirt leaves there
 * @param toned change of the wetted paper's tone below it, as absorbance; may be negative
 * @param tickMm how long ticks are, where it was marked with them
 */
public record SolventFront(
    double heightMm,
    double slopeDeg,
    double bowMm,
    Mark mark,
    double tide,
    double toned,
    double tickMm) {
  private static final double USUAL_TICK_MM = 4;

  /** A front that, where it has ticks, has short ones. */
  public SolventFront(
      double heightMm, double slopeDeg, double bowMm, Mark mark, double tide, double toned) {
    this(heightMm, slopeDeg, bowMm, mark, tide, toned, USUAL_TICK_MM);
  }

  public SolventFront withTicks(double lengthMm) {
    return new SolventFront(heightMm, slopeDeg, bowMm, mark, tide, toned, lengthMm);
  }

  /** How the front was marked. */
  public enum Mark {
    PENCIL("pencil"),
    TICKS("ticks"),
    NONE("none");

    private final String word;

    Mark(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /** Returns the front's height at a place across a strip of the given width, all in mm. */
  public double heightAt(double xMm, double stripWidthMm) {
    double middle = stripWidthMm / 2;
    double off = (xMm - middle) / middle;
    return heightMm
        + (xMm - middle) * StrictMath.tan(StrictMath.toRadians(slopeDeg))
        - bowMm * off * off;
  }
}
