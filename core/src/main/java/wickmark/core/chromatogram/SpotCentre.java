package wickmark.core.chromatogram;

import java.util.Locale;

/**
 * Which point of a spot counts as its centre. Three are in authoritative use; on a round spot they
 * agree.
 */
public enum SpotCentre {
  /** The absorbance-weighted centre: "the centre of the spot" of IUPAC (1993), by its dye. */
  CENTROID("the absorbance-weighted centre"),
  /** The middle of the visible extent: what a person with a ruler measures. */
  MIDDLE("the middle of what is visible"),
  /** The point of greatest absorbance (United States Pharmacopeia, chapter 621). */
  DENSEST("the densest point");

  private final String description;

  SpotCentre(String description) {
    this.description = description;
  }

  /** Returns the word that settings and records use. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Returns what it is, for a sentence. */
  public String description() {
    return description;
  }
}
