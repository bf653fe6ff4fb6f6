package wickmark.testdata.strip;

/** A blank sheet: its size in millimetres before it was cut, its paper and its cut. */
public record Sheet(double widthMm, double heightMm, Paper paper, Cut cut) {
  public Sheet {
    if (!(widthMm > 0 && heightMm > 0)) {
      throw new IllegalArgumentException(
          "a sheet's sides must be above 0 mm, were " + widthMm + " x " + heightMm);
    }
  }
}
