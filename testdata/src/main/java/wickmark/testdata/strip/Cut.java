package wickmark.testdata.strip;

/**
 * How the sheet was cut.
 *
 * @param roughMm standard deviation of the fibres' raggedness along an edge, mm
 * @param waverMm how far hand-held scissors wander from the straight line, mm
 * @param skewMm largest shift of a corner from the true rectangle, mm
 */
public record Cut(double roughMm, double waverMm, double skewMm) {
  public static final Cut GUILLOTINE = new Cut(0.02, 0.03, 0);
  public static final Cut SCISSORS = new Cut(0.05, 0.30, 0.5);
  public static final Cut HASTY = new Cut(0.08, 0.6, 1.2);
}
