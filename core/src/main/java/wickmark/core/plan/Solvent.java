package wickmark.core.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Cautions for the usual solvents of a school, in general words.
 *
 * <p>The hazard words are those of the usual supplier classifications under the GHS, from memory;
 * the supplier's safety data sheet comes first, and the page says so.
 */
public enum Solvent {
  WATER(
      "water", "", "Not classified as hazardous.", "Wipe up spills. Dyes stain skin and clothes."),
  SALT_WATER(
      "salt water",
      "saltwater, sodium chloride solution, brine",
      "Not classified as hazardous.",
      "Wipe up spills. Dyes stain skin and clothes."),
  HYDROGENCARBONATE(
      "sodium hydrogencarbonate solution",
      "bicarbonate, baking soda",
      "Not classified as hazardous.",
      "Wipe up spills. Dyes stain skin and clothes."),
  ETHANOL(
      "ethanol",
      "alcohol, denatured alcohol, spirit",
      "Highly flammable liquid and vapour; causes serious eye irritation. Denatured spirit may hold"
          + " methanol, which is toxic.",
      Words.NO_FLAMES),
  PROPAN_2_OL(
      "propan-2-ol",
      "isopropanol, 2-propanol, isopropyl alcohol, rubbing alcohol",
      "Highly flammable liquid and vapour; causes serious eye irritation; may cause drowsiness or"
          + " dizziness.",
      Words.NO_FLAMES),
  PROPANONE(
      "propanone",
      "acetone",
      "Highly flammable liquid and vapour; causes serious eye irritation; may cause drowsiness or"
          + " dizziness; repeated exposure may cause dry skin.",
      Words.NO_FLAMES),
  ETHYL_ETHANOATE(
      "ethyl ethanoate",
      "ethyl acetate",
      "Highly flammable liquid and vapour; causes serious eye irritation; may cause drowsiness or"
          + " dizziness; repeated exposure may cause dry skin.",
      Words.NO_FLAMES),
  PETROLEUM_ETHER(
      "petroleum ether",
      "light petroleum, petroleum spirit",
      "Highly flammable liquid and vapour; may be fatal if swallowed and enters airways; may cause"
          + " drowsiness or dizziness; toxic to aquatic life with long lasting effects. It may hold"
          + " hexane.",
      Words.NO_FLAMES + " Use a fume cupboard. Never pour it down the sink."),
  AMMONIA(
      "ammonia solution",
      "ammonia, ammonium hydroxide",
      "Concentrated: causes severe skin burns and eye damage, may cause respiratory irritation,"
          + " very toxic to aquatic life. Dilute: the vapour irritates.",
      "Fume cupboard for the concentrated solution; chemical splash goggles and gloves. Never near"
          + " bleach: they give off a toxic gas.");

  private static final class Words {
    static final String NO_FLAMES =
        "No flames, hot plates or sparks anywhere near; good ventilation; eye protection; lid on."
            + " Collect what is left in the waste bottle for organic solvents. Dry the paper in a"
            + " fume cupboard, never over a flame.";
  }

  private final String name;

  /** Parted by commas. */
  private final String otherNames;

  private final String hazards;
  private final String care;

  Solvent(String name, String otherNames, String hazards, String care) {
    this.name = name;
    this.otherNames = otherNames;
    this.hazards = hazards;
    this.care = care;
  }

  /** Returns the solvent of a name; empty for one that is not known here. */
  static Optional<Solvent> named(String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(s -> !wanted.isEmpty())
        .filter(s -> s.name.equals(wanted) || List.of(s.otherNames.split(", ")).contains(wanted))
        .findFirst();
  }

  /** Returns what to say about a solvent, whether it is known here or not. */
  public static List<String> cautions(String text) {
    Optional<Solvent> known = named(text);
    return List.of(
        known
            .map(s -> "Solvent: " + s.name + ". " + s.hazards)
            .orElse(
                "Solvent: "
                    + text.strip()
                    + ". Nothing about it is known here, so treat it as hazardous: keep it from"
                    + " flames, ventilate, wear eye protection and gloves, and find out first."),
        known.map(s -> s.care).orElse("Do not pour it down the sink before you know that you may."),
        "Never draw it up by mouth. Glass capillaries break and cut: keep them in a beaker, and put"
            + " broken ones into the glass waste.",
        "The supplier's safety data sheet, the rules of your school and the teacher in charge come"
            + " before this page.");
  }
}
