package wickmark.testdata.truth;

import java.util.Locale;

/** What a lane is there for. */
public enum Role {
  REFERENCE,
  UNKNOWN;

  /** Returns the word used in files. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
