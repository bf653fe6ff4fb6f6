package wickmark.testdata.scene;

/** What the strip lies on. */
public enum Desk {
  PINE("pine"),
  OAK("oak"),
  DARK_WOOD("dark-wood"),
  GREY_LAMINATE("grey-laminate"),
  SAND_LAMINATE("sand-laminate"),
  WHITE_BENCH("white-bench"),
  DARK_BENCH("dark-bench"),
  TILES("tiles"),
  GREEN_MAT("green-mat"),
  CLOTH("cloth"),
  SQUARED_PAPER("squared-paper"),
  RULED_PAPER("ruled-paper");

  private final String word;

  Desk(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
