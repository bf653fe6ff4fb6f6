package wickmark.testdata.scene;

/**
 * A ruler.
 *
 * @param material what it is made of
 * @param lengthMm length of its graduation
 * @param widthMm its width
 * @param thicknessMm height of its graduation above the desk
 * @param upper graduation along its upper edge (zero at the left)
 * @param lower graduation along its lower edge
 */
public record RulerPlan(
    Material material,
    double lengthMm,
    double widthMm,
    double thicknessMm,
    Graduation upper,
    Graduation lower) {
  public RulerPlan {
    if (!(lengthMm > 0 && widthMm >= 10 && thicknessMm >= 0)) {
      throw new IllegalArgumentException(
          "a ruler needs a length above 0, a width of at least 10 and a thickness of at least 0 mm, were "
              + lengthMm
              + ", "
              + widthMm
              + ", "
              + thicknessMm);
    }
  }

  /** What rulers are made of. */
  public enum Material {
    WHITE_PLASTIC("plastic-white"),
    YELLOW_PLASTIC("plastic-yellow"),
    GREEN_PLASTIC("plastic-green"),
    PINK_PLASTIC("plastic-pink"),
    TRANSPARENT("transparent"),
    WOOD("wood"),
    STEEL("steel"),
    PAPER("paper"),
    TAPE("tape");

    private final String word;

    Material(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /** What stands along an edge. */
  public enum Graduation {
    /** Millimetres, half and whole centimetres longer, numbered in centimetres. */
    CENTIMETRES,
    /** The same, numbered in millimetres. */
    MILLIMETRES,
    /** Half millimetres as well, numbered in millimetres; workshop rules have them. */
    HALF_MILLIMETRES,
    /** Those of a tape measure: long centimetres with the numbers between them. */
    TAPE,
    /** Sixteenths of an inch, numbered in inches. */
    INCHES,
    /** Nothing. */
    BARE
  }

  /** Returns the usual school ruler: white plastic, 300 mm. */
  public static RulerPlan school() {
    return new RulerPlan(
        Material.WHITE_PLASTIC, 300, 32, 1.2, Graduation.CENTIMETRES, Graduation.BARE);
  }

  /** Returns how long the marks of whole units are along an edge. */
  double longestMarkMm(Graduation graduation) {
    return switch (graduation) {
      case INCHES -> 8.5;
      case TAPE -> 0.62 * widthMm;
      default -> 6.5;
    };
  }

  /** Returns how far the graduation begins from the ruler's end. */
  double startMm() {
    return material == Material.STEEL ? 0 : 5;
  }

  double bodyMm() {
    return lengthMm + (material == Material.STEEL ? 6 : 10);
  }
}
