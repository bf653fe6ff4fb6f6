package wickmark.testdata.colour;

/**
 * Plain English names of the colours that spots on paper have.
 *
 * <p>The basic names, plus turquoise, violet, magenta and olive, which people use of inks and food
 * dyes; hue borders by eye on drawn spots, not from a standard. A spot is named as it looks on its
 * paper, so the paper's own tint is taken off first.
 */
public final class ColourNames {
  private ColourNames() {}

  /** Returns the name of a spot's colour seen on the given paper. */
  public static String of(Cielab spot, Cielab paper) {
    Cielab seen = new Cielab(spot.lightness(), spot.a() - paper.a(), spot.b() - paper.b());
    double light = seen.lightness();
    if (seen.chroma() < 7) {
      return light < 35 ? "black" : "grey";
    }
    return ofHue(seen.hueDeg(), light, seen.chroma());
  }

  private static String ofHue(double hue, double light, double chroma) {
    if (hue < 18 || hue >= 345) {
      return light > 68 ? "pink" : hue < 18 && hue >= 5 ? "red" : "magenta";
    }
    if (hue < 47) {
      return light > 76 ? "pink" : chroma < 28 ? "brown" : "red";
    }
    if (hue < 78) {
      return light < 66 && chroma < 45 ? "brown" : "orange";
    }
    if (hue < 108) {
      return light < 62 ? chroma < 30 ? "brown" : "olive" : "yellow";
    }
    if (hue < 128) {
      return light < 72 ? "olive" : "green";
    }
    if (hue < 185) {
      return "green";
    }
    if (hue < 236) {
      return "turquoise";
    }
    if (hue < 294) {
      return "blue";
    }
    return hue < 314 ? "violet" : hue < 330 ? "purple" : "magenta";
  }
}
