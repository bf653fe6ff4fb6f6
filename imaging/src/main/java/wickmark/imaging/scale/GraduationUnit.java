package wickmark.imaging.scale;

/** What one step from mark to mark is on a ruler. One inch is 25.4 mm exactly (since 1959). */
public enum GraduationUnit {
  MILLIMETRE(1.0),
  HALF_MILLIMETRE(0.5),
  EIGHTH_INCH(25.4 / 8),
  TENTH_INCH(25.4 / 10),
  SIXTEENTH_INCH(25.4 / 16),
  TWENTIETH_INCH(25.4 / 20),
  THIRTY_SECOND_INCH(25.4 / 32);

  private final double millimetres;

  GraduationUnit(double millimetres) {
    this.millimetres = millimetres;
  }

  /** Returns the step in millimetres. */
  public double millimetres() {
    return millimetres;
  }
}
