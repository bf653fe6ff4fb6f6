package wickmark.cli.record;

import java.util.Locale;
import java.util.Set;

/** The name of a record's folder: the picture's name without its ending, safe on every system. */
public final class FolderName {
  private static final Set<String> RESERVED =
      Set.of(
          "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7",
          "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

  private FolderName() {}

  /** Returns the name for a picture that holds one strip. */
  public static String of(String pictureName) {
    int dot = pictureName.lastIndexOf('.');
    String stem = dot > 0 ? pictureName.substring(0, dot) : pictureName;
    StringBuilder safe = new StringBuilder();
    stem.codePoints().map(FolderName::safe).forEach(safe::appendCodePoint);
    while (!safe.isEmpty() && (last(safe) == '.' || last(safe) == ' ')) {
      safe.setLength(safe.length() - 1);
    }
    if (safe.isEmpty() || safe.charAt(0) == '.') {
      safe.insert(0, '_');
    }
    String name = safe.toString();
    String device = name.split("\\.", 2)[0].toLowerCase(Locale.ROOT);
    return RESERVED.contains(device) ? "_" + name : name;
  }

  /** Returns the name for strip {@code number}, counted from 1 at the left, of several. */
  public static String of(String pictureName, int number) {
    return of(pictureName) + "-" + number;
  }

  private static char last(StringBuilder text) {
    return text.charAt(text.length() - 1);
  }

  private static int safe(int character) {
    boolean bad =
        Character.isISOControl(character)
            || Character.getType(character) == Character.FORMAT
            || "<>:\"/\\|?*".indexOf(character) >= 0;
    return bad ? '_' : character;
  }
}
