package wickmark.imaging.line;

/** What a line across the strip is made of. */
public enum LineKind {
  /** Graphite: dark and grey. */
  PENCIL("pencil"),
  /** Graphite at either side of the strip only, a front's: in records the same as a line of it. */
  TICKS("pencil"),
  /** What the solvent carried to its edge: faint and brownish, or a change of tone. */
  TIDE_MARK("tide-mark"),
  /** Ink, that the solvent took along: coloured, and no place for a baseline. */
  INK("ink"),
  /** Said by the person. */
  BY_HAND("by-hand");

  private final String word;

  LineKind(String word) {
    this.word = word;
  }

  /** The word in records. */
  public String word() {
    return word;
  }
}
