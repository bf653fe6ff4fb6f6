package wickmark.core.colour;

import java.util.Locale;

/**
 * The plain English name of a spot's colour: the thirteen names of the first level of the ISCC-NBS
 * system (Color: Universal Language and Dictionary of Names, NBS Special Publication 440, 1976)
 * with turquoise, violet and magenta, which people who look at dyes keep apart.
 *
 * <p>The name is the dye's, not the amount's: a pale spot is first brought to {@link
 * #NAMING_STRENGTH} along its own absorbance, so that a pale red is called red like a strong one.
 * Then the hue chooses, and the grey part tells orange from brown, yellow-green from olive and all
 * colours from grey. The borders between hues lie where the words meet in the blends of the named
 * colours of CSS (see the test); neighbours such as violet and purple are matters of taste.
 */
public enum ColourName {
  WHITE,
  GREY,
  BLACK,
  RED,
  ORANGE,
  BROWN,
  YELLOW,
  OLIVE,
  YELLOW_GREEN,
  GREEN,
  TURQUOISE,
  BLUE,
  VIOLET,
  PURPLE,
  MAGENTA,
  PINK;

  /**
   * Absorbance of the strongest channel at which dyes are named: a quarter of the light is left.
   */
  static final double NAMING_STRENGTH = 0.6;

  /** A grey spot this dark is called black. */
  private static final double BLACK_LIGHTNESS = 25;

  /** Chroma at the naming strength below which nobody sees a hue. */
  private static final double GREY_CHROMA = 12;

  /** Grey part from which an orange is called brown, and a yellow or yellow-green olive. */
  private static final double DULL_GREYNESS = 0.28;

  /** L* below which the same is said of a strong spot, whose grey part cannot be told. */
  private static final double DULL_LIGHTNESS = 60;

  /** Returns the name of a spot's colour, which was taken with the paper as white. */
  public static ColourName of(LabColour spot) {
    DyeAbsorbance dye = DyeAbsorbance.of(spot);
    if (dye.isBlank()) {
      return WHITE;
    }
    LabColour named =
        dye.strength() < NAMING_STRENGTH ? dye.atStrength(NAMING_STRENGTH).toLab() : spot;
    if (named.chroma() < GREY_CHROMA) {
      return spot.lightness() < BLACK_LIGHTNESS ? BLACK : GREY;
    }
    boolean dull = dye.greyness() >= DULL_GREYNESS || named.lightness() < DULL_LIGHTNESS;
    return ofHue(named.hueDegrees(), dull);
  }

  private static ColourName ofHue(double hue, boolean dull) {
    if (hue < 45 || hue >= 354) {
      return RED;
    }
    if (hue < 86) {
      return dull ? BROWN : ORANGE;
    }
    if (hue < 125) {
      return dull ? OLIVE : hue < 108 ? YELLOW : YELLOW_GREEN;
    }
    return ofColdHue(hue);
  }

  private static ColourName ofColdHue(double hue) {
    if (hue < 180) {
      return GREEN;
    }
    if (hue < 237) {
      return TURQUOISE;
    }
    if (hue < 292) {
      return BLUE;
    }
    if (hue < 309) {
      return VIOLET;
    }
    if (hue < 330) {
      return PURPLE;
    }
    return hue < 343 ? MAGENTA : PINK;
  }

  /** Returns the name as people write it, in lower case: {@code yellow-green}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
