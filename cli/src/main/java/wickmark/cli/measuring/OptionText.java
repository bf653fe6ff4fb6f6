package wickmark.cli.measuring;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wickmark.imaging.photo.PhotoPoint;

/** Reads the values of options; a wrong one is answered with what would be right. */
public final class OptionText {
  private OptionText() {}

  /** Reads "X1,Y1,X2,Y2". */
  public static PhotoLine line(String text) {
    List<Double> four = numbers(text, 4, "four numbers: X1,Y1,X2,Y2");
    return new PhotoLine(
        new PhotoPoint(four.get(0), four.get(1)), new PhotoPoint(four.get(2), four.get(3)));
  }

  /** Reads "X1,Y1,X2,Y2,X3,Y3,X4,Y4". */
  public static List<PhotoPoint> corners(String text) {
    List<Double> eight = numbers(text, 8, "eight numbers: X1,Y1,X2,Y2,X3,Y3,X4,Y4");
    List<PhotoPoint> corners = new ArrayList<>();
    for (int i = 0; i < 8; i += 2) {
      corners.add(new PhotoPoint(eight.get(i), eight.get(i + 1)));
    }
    return corners;
  }

  /** Reads "X,Y". */
  public static PhotoPoint point(String text) {
    List<Double> two = numbers(text, 2, "two numbers: X,Y");
    return new PhotoPoint(two.get(0), two.get(1));
  }

  /** Reads "X1,Y1,X2,Y2=MM". */
  public static SaidScale.Span span(String text) {
    int equals = text.indexOf('=');
    if (equals < 0) {
      throw new IllegalArgumentException(
          "two points and their distance in mm are needed: X1,Y1,X2,Y2=MM, was \"" + text + "\"");
    }
    double millimetres =
        numbers(text.substring(equals + 1), 1, "a distance in mm after the =").get(0);
    return new SaidScale.Span(line(text.substring(0, equals)), millimetres);
  }

  /** Reads "up", "down", "left" or "right". */
  public static BottomEnd bottomEnd(String text) {
    for (BottomEnd end : BottomEnd.values()) {
      if (of(end).equals(text.toLowerCase(Locale.ROOT))) {
        return end;
      }
    }
    throw new IllegalArgumentException(
        "one of up, down, left, right is needed, was \"" + text + "\"");
  }

  /** Returns the word of the option. */
  public static String of(BottomEnd end) {
    return end.name().toLowerCase(Locale.ROOT);
  }

  private static List<Double> numbers(String text, int count, String wanted) {
    String[] parts = text.split(",", -1);
    List<Double> numbers = new ArrayList<>();
    try {
      for (String part : parts) {
        double number = Double.parseDouble(part.strip());
        if (!Double.isFinite(number) || Math.abs(number) > 1e6) {
          throw new NumberFormatException(part);
        }
        numbers.add(number);
      }
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(wanted + " are needed, was \"" + text + "\"", e);
    }
    if (numbers.size() != count) {
      throw new IllegalArgumentException(wanted + " are needed, was \"" + text + "\"");
    }
    return numbers;
  }
}
