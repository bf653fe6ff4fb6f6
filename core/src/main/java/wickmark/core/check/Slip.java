package wickmark.core.check;

import java.util.Locale;

/** The ways in which a reading goes wrong. */
public enum Slip {
  /** Centimetres were written for millimetres. */
  CENTIMETRES,
  /** The ruler's inch edge was used. */
  INCHES,
  /** The ruler was laid with the paper's lower edge instead of the baseline at its zero. */
  FROM_PAPER_EDGE,
  /** The spot was measured to its upper rim. */
  UPPER_RIM,
  /** The spot was measured to its lower rim. */
  LOWER_RIM,
  /** The paper's top was taken for the front. */
  FRONT_AT_PAPER_TOP,
  /** The ruler was laid with its end instead of its zero mark at the baseline. */
  RULER_END,
  /** The spots of a lane were counted in another order. */
  SPOT_ORDER,
  /** Two lanes were taken for each other. */
  LANES_SWAPPED,
  /** Two neighbouring digits were exchanged. */
  DIGITS_TRANSPOSED,
  /** Front over spot instead of spot over front. */
  RF_UPSIDE_DOWN,
  /** The Rf does not follow from the person's own distances. */
  RF_ARITHMETIC,
  /** The Rf was cut off or rounded the wrong way. */
  RF_ROUNDING,
  /** The Rf was given in hundredths or per cent. */
  RF_HUNDREDFOLD,
  /** A unit was written after the Rf. */
  RF_UNIT,
  /** The Rf is above 1, and nothing says why. */
  RF_ABOVE_ONE,
  /** Too far off for chance, and no slip explains it. */
  READ_AGAIN;

  /** Says whether the slip is in a length, not in an Rf. */
  public boolean isOfLength() {
    return !name().startsWith("RF_");
  }

  /** Returns the code that tables use. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
