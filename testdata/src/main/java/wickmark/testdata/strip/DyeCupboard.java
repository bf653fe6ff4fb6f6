package wickmark.testdata.strip;

import java.util.List;

/**
 * The dyes that the drawn strips use. The absorptions are invented, shaped after what food
 * colourings and felt-tip inks look like on paper: none is a measured substance.
 */
public final class DyeCupboard {
  public static final Dye LEMON = Dye.of("lemon", "yellow", 0.01, 0.09, 1);
  public static final Dye EGG = Dye.of("egg", "yellow", 0.02, 0.24, 1);
  public static final Dye ORANGE = Dye.of("orange", "orange", 0.04, 0.56, 1);
  public static final Dye CORAL = Dye.of("coral", "red", 0.04, 1, 0.80);
  public static final Dye RASPBERRY = Dye.of("raspberry", "red", 0.05, 1, 0.55);
  public static final Dye ROSE = Dye.of("rose", "pink", 0.05, 1, 0.42);
  public static final Dye FUCHSIA = Dye.of("fuchsia", "magenta", 0.14, 1, 0.20);
  public static final Dye PLUM = Dye.of("plum", "purple", 0.50, 1, 0.22);
  public static final Dye VIOLET = Dye.of("violet", "violet", 0.82, 1, 0.12);
  public static final Dye INK = Dye.of("ink", "blue", 1, 0.80, 0.12);
  public static final Dye SKY = Dye.of("sky", "blue", 1, 0.42, 0.06);
  public static final Dye LAGOON = Dye.of("lagoon", "turquoise", 1, 0.20, 0.16);
  public static final Dye LEAF = Dye.of("leaf", "green", 1, 0.28, 0.72);
  public static final Dye MOSS = Dye.of("moss", "olive", 0.52, 0.42, 1);
  public static final Dye COCOA = Dye.of("cocoa", "brown", 0.46, 0.74, 1);
  public static final Dye SLATE = Dye.of("slate", "grey", 1, 0.97, 0.90);

  private static final List<Dye> ALL =
      List.of(
          LEMON, EGG, ORANGE, CORAL, RASPBERRY, ROSE, FUCHSIA, PLUM, VIOLET, INK, SKY, LAGOON, LEAF,
          MOSS, COCOA, SLATE);

  private DyeCupboard() {}

  /** Returns all of them. */
  public static List<Dye> all() {
    return ALL;
  }
}
