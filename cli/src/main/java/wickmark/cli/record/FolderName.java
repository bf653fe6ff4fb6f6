package wickmark.cli.record;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;

/** The name of a record's folder: the picture's name without its ending, safe on every system. */
public final class FolderName {
  private static final Set<String> RESERVED =
      Set.of(
          "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7",
          "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9",
          "com¹", "com²", "com³", "lpt¹", "lpt²", "lpt³", "conin$", "conout$");

  /** File systems allow 255 bytes; some are left for "-2" and for what is put beside. */
  private static final int LONGEST_BYTES = 220;

  private FolderName() {}

  /** Returns the name for a picture that holds one strip. */
  public static String of(String pictureName) {
    int dot = pictureName.lastIndexOf('.');
    String stem = dot > 0 ? pictureName.substring(0, dot) : pictureName;
    StringBuilder safe = new StringBuilder();
    stem.codePoints().map(FolderName::safe).forEach(safe::appendCodePoint);
    cutTrailing(safe);
    if (safe.isEmpty() || safe.charAt(0) == '.') {
      safe.insert(0, '_');
    }
    String name = safe.toString();
    String device = name.split("\\.", 2)[0].strip().toLowerCase(Locale.ROOT);
    return shortened(RESERVED.contains(device) ? "_" + name : name);
  }

  /** A long name is cut; what is cut off is told apart by a few digits made from the whole. */
  private static String shortened(String name) {
    if (bytes(name) <= LONGEST_BYTES) {
      return name;
    }
    String digits = String.format(Locale.ROOT, "~%08x", name.hashCode());
    StringBuilder cut = new StringBuilder();
    int length = digits.length();
    for (int character : name.codePoints().toArray()) {
      length += bytes(Character.toString(character));
      if (length > LONGEST_BYTES) {
        break;
      }
      cut.appendCodePoint(character);
    }
    cutTrailing(cut);
    return cut + digits;
  }

  private static int bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8).length;
  }

  private static void cutTrailing(StringBuilder name) {
    while (!name.isEmpty() && (last(name) == '.' || last(name) == ' ')) {
      name.setLength(name.length() - 1);
    }
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
            || Character.getType(character) == Character.SURROGATE
            || Character.getType(character) == Character.LINE_SEPARATOR
            || Character.getType(character) == Character.PARAGRAPH_SEPARATOR
            || "<>:\"/\\|?*".indexOf(character) >= 0;
    return bad ? '_' : character;
  }
}
