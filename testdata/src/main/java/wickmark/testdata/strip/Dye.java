package wickmark.testdata.strip;

import wickmark.testdata.colour.LinearRgb;

/**
 * A dye on paper.
 *
 * @param name a name of our own
 * @param colour plain name of its colour
 * @param absorption absorption in red, green and blue light, 1 where it absorbs most
 */
public record Dye(String name, String colour, LinearRgb absorption) {

  /** Returns a dye that absorbs by the given shares, each 0 to 1. */
  public static Dye of(String name, String colour, double red, double green, double blue) {
    return new Dye(name, colour, new LinearRgb(red, green, blue));
  }
}
