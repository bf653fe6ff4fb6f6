package wickmark.core.chromatogram;

/** What the uncertainty of a distance or an Rf comes from. */
public enum UncertaintySource {
  /** The place of the spot. */
  SPOT("finding the spot's centre"),
  /** The place of the solvent front. */
  FRONT("finding the solvent front"),
  /** The place of the baseline, which enters both distances. */
  BASELINE("finding the baseline"),
  /** What perspective and lens have left. */
  STRAIGHTENING("straightening the picture"),
  /** Paper that does not lie flat. */
  FLATNESS("paper not lying flat"),
  /** Millimetres a pixel; it cancels in Rf. */
  SCALE("the scale");

  private final String words;

  UncertaintySource(String words) {
    this.words = words;
  }

  /** Returns the words that budgets and records use. */
  public String words() {
    return words;
  }
}
