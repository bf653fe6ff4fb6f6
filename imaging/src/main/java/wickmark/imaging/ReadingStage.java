package wickmark.imaging;

/** What a strip goes through while it is read, in this order; the later ones once a strip. */
public enum ReadingStage {
  /** Rulers are looked for and their marks read; another thread looks for the card meanwhile. */
  RULER("ruler"),
  /** The printed card is waited for, and read. */
  CARD("card"),
  /** Outlines of sheets are waited for or looked for; once more where the card holds no strip. */
  FIND("find"),
  /** What is on the outlined sheets is looked at coarsely, to choose the strips among them. */
  CHOOSE("choose"),
  /** The strip is laid straight, and its paper's light taken off. */
  STRAIGHTEN("straighten"),
  /** Baseline and front are measured. */
  LINES("lines"),
  /** The dye is told from the paper, and the lanes from one another. */
  LANES("lanes"),
  /** The spots are found and measured. */
  SPOTS("spots"),
  /** What was found becomes distances with uncertainties. */
  DISTANCES("distances");

  private final String word;

  ReadingStage(String word) {
    this.word = word;
  }

  /** The stage's name for people. */
  public String word() {
    return word;
  }
}
