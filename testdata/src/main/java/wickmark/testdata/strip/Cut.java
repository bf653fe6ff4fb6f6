package wickmark.testdata.strip;

/**
 * How the sheet was cut.
 *
 * @param roughMm standard deviation of the fibres' raggedness along an edge, mm
 * @param waverMm how far hand-held scissors wander from the straight line, mm
 * @param skewMm largest shift of a corner from the true rectangle, mm
 * @param roundMm how far the short ends bulge in their middle, as of a strip cut from a round paper
 * @param figure what it was cut to
 */
public record Cut(double roughMm, double waverMm, double skewMm, double roundMm, Figure figure) {
  public static final Cut GUILLOTINE = new Cut(0.02, 0.03, 0, 0);
  public static final Cut SCISSORS = new Cut(0.05, 0.30, 0.5, 0);
  public static final Cut HASTY = new Cut(0.08, 0.6, 1.2, 0);

  /** A cut to a rectangle. */
  public Cut(double roughMm, double waverMm, double skewMm, double roundMm) {
    this(roughMm, waverMm, skewMm, roundMm, Figure.RECTANGLE);
  }

  public Cut to(Figure value) {
    return new Cut(roughMm, waverMm, skewMm, roundMm, value);
  }
}
