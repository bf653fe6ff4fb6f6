package wickmark.cli.hand;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** The text of a file that a spreadsheet wrote, whatever its encoding. */
public final class FileText {
  /** A class of thirty is a few kilobytes; what is larger by far is no list of readings. */
  private static final int LARGEST_BYTES = 8 << 20;

  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

  private FileText() {}

  /**
   * Returns the text.
   *
   * @param shown the name to use in messages
   */
  public static String of(Path file, String shown) throws UnreadableReadingsException {
    byte[] bytes = bytes(file, shown);
    if (startsWith(bytes, 'P', 'K', 3, 4)) {
      throw new UnreadableReadingsException(
          shown,
          "it is a spreadsheet (.xlsx or .ods), whatever its name says. Open it in the spreadsheet"
              + " program and save it as CSV.");
    }
    if (startsWith(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
      throw new UnreadableReadingsException(
          shown,
          "it is a spreadsheet in the old .xls format, whatever its name says. Open it in the"
              + " spreadsheet program and save it as CSV.");
    }
    if (startsWith(bytes, 0xFF, 0xFE)) {
      return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16LE);
    }
    if (startsWith(bytes, 0xFE, 0xFF)) {
      return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16BE);
    }
    if (bytes.length >= 4 && bytes.length % 2 == 0 && bytes[1] == 0 && isText(bytes[0])) {
      return text16(bytes, StandardCharsets.UTF_16LE, shown);
    }
    if (bytes.length >= 4 && bytes.length % 2 == 0 && bytes[0] == 0 && isText(bytes[1])) {
      return text16(bytes, StandardCharsets.UTF_16BE, shown);
    }
    for (byte b : bytes) {
      if (b == 0) {
        throw noText(shown);
      }
    }
    return withoutMark(decoded(bytes));
  }

  private static boolean isText(byte b) {
    return b >= ' ' || b == '\t';
  }

  /** Text of two bytes a letter that lacks the mark which says so. */
  private static String text16(byte[] bytes, Charset charset, String shown)
      throws UnreadableReadingsException {
    String text = new String(bytes, charset);
    if (text.chars().anyMatch(c -> c == 0 || c == 0xFFFD)) {
      throw noText(shown);
    }
    return text;
  }

  private static UnreadableReadingsException noText(String shown) {
    return new UnreadableReadingsException(
        shown, "it is no text. Save the readings as CSV in the spreadsheet program.");
  }

  private static byte[] bytes(Path file, String shown) throws UnreadableReadingsException {
    try {
      if (Files.isDirectory(file)) {
        throw new UnreadableReadingsException(shown, "it is a folder.");
      }
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        throw new UnreadableReadingsException(shown, "it is no ordinary file.");
      }
      try (InputStream in = Files.newInputStream(file)) {
        byte[] bytes = in.readNBytes(LARGEST_BYTES + 1);
        if (bytes.length > LARGEST_BYTES) {
          throw new UnreadableReadingsException(
              shown, "it is larger than " + (LARGEST_BYTES >> 20) + " MB.");
        }
        return bytes;
      }
    } catch (NoSuchFileException e) {
      throw new UnreadableReadingsException(shown, "there is no such file.");
    } catch (AccessDeniedException e) {
      throw new UnreadableReadingsException(shown, "you have no permission to read it.");
    } catch (IOException e) {
      throw new UnreadableReadingsException(
          shown, "the system reports \"" + e.getMessage() + "\" while reading.");
    }
  }

  private static boolean startsWith(byte[] bytes, int... beginning) {
    if (bytes.length < beginning.length) {
      return false;
    }
    for (int i = 0; i < beginning.length; i++) {
      if ((bytes[i] & 0xFF) != beginning[i]) {
        return false;
      }
    }
    return true;
  }

  /** What is not UTF-8 throughout is taken for the encoding that spreadsheets on Windows use. */
  private static String decoded(byte[] bytes) {
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPORT)
          .onUnmappableCharacter(CodingErrorAction.REPORT)
          .decode(ByteBuffer.wrap(bytes))
          .toString();
    } catch (CharacterCodingException e) {
      return new String(bytes, WINDOWS_1252);
    }
  }

  private static String withoutMark(String text) {
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }
}
