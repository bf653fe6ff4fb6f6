package wickmark.testdata.strip;

/**
 * How the sheet was cut.
 *
 * @param roughMm standard deviation of the fibres' raggedness along an edge, mm
 * @param waverMm how far hand-held scissors wander from the straight line, mm
 * @param skewMm largest shift of a corner from the true rectangle, mm
 * @param roundMm how far the short ends bulge in their middle, as of a strip cut from a round paper
 */
public record Cut(double roughMm, double waverMm, double skewMm, double roundMm) {
  public static final Cut GUILLOTINE = new Cut(0.02, 0.03, 0, 0);
  public static final Cut SCISSORS = new Cut(0.05, 0.30, 0.5, 0);
  public static final Cut HASTY = new Cut(0.08, 0.6, 1.2, 0);
}
