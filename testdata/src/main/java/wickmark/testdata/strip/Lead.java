package wickmark.testdata.strip;

/**
 * How a pencil was held.
 *
 * @param absorbance neutral absorbance of a full stroke
 * @param widthMm width of the stroke, mm
 * @param grain how far the paper's bumps break it, 0 to 1
 */
public record Lead(double absorbance, double widthMm, double grain) {
  public static final Lead HARD = new Lead(0.22, 0.28, 0.7);
  public static final Lead USUAL = new Lead(0.38, 0.38, 0.55);
  public static final Lead SOFT = new Lead(0.62, 0.55, 0.4);

  public Lead withAbsorbance(double value) {
    return new Lead(value, widthMm, grain);
  }
}
