package wickmark.cli.measuring;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wickmark.cli.text.VisibleText;
import wickmark.core.chromatogram.SpotCentre;
import wickmark.imaging.ReadingRequest.Area;
import wickmark.imaging.ReadingRequest.Bottom;
import wickmark.imaging.ReadingRequest.SaidScale;
import wickmark.imaging.ReadingRequest.Segment;
import wickmark.imaging.photo.PhotoPoint;

/** Reads the values of options; a wrong one is answered with what would be right. */
public final class OptionText {
  private static final double SHORTEST_PRINT = 50;
  private static final double LONGEST_PRINT = 200;
  private static final double LARGEST = 1e6;

  private OptionText() {}

  /** Reads "X1,Y1,X2,Y2". */
  public static Segment segment(String text) {
    List<Double> four = numbers(text, 4, "four numbers: X1,Y1,X2,Y2");
    PhotoPoint from = new PhotoPoint(four.get(0), four.get(1));
    PhotoPoint to = new PhotoPoint(four.get(2), four.get(3));
    if (from.equals(to)) {
      throw new IllegalArgumentException("two different points are needed, was \"" + text + "\"");
    }
    return new Segment(from, to);
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

  /** Reads two opposite corners "X1,Y1,X2,Y2". */
  public static Area area(String text) {
    Segment diagonal = segment(text);
    return new Area(diagonal.from(), diagonal.to());
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
    Segment between = segment(text.substring(0, equals));
    return new SaidScale.Span(between.from(), between.to(), positive("--span", millimetres));
  }

  /**
   * Returns the value of a length or a resolution.
   *
   * @throws IllegalArgumentException if it is not above 0
   */
  public static double positive(String option, double value) {
    if (!(value > 0 && value <= LARGEST)) {
      throw new IllegalArgumentException(option + " must be above 0, was " + value);
    }
    return value;
  }

  /**
   * Returns what a bar of 100 mm measures on a print.
   *
   * @throws IllegalArgumentException if no printer would print it so
   */
  public static double printedLength(double millimetres) {
    if (!(millimetres >= SHORTEST_PRINT && millimetres <= LONGEST_PRINT)) {
      throw new IllegalArgumentException(
          "--printed-length is what the card's bar of 100 mm measures on the print, in mm: 50 to"
              + " 200, was "
              + millimetres);
    }
    return millimetres;
  }

  /**
   * Returns the value.
   *
   * @throws IllegalArgumentException if it is not above 0, or above the largest that makes sense
   */
  public static double within(String option, double value, double largest) {
    if (!(value > 0 && value <= largest)) {
      throw new IllegalArgumentException(
          option + " must be above 0 and at most " + Math.round(largest) + ", was " + value);
    }
    return value;
  }

  /**
   * Makes sure that a name or a title shows as it is: nothing in it breaks a line or turns the
   * direction of writing, so that what stands beside it cannot be read wrongly.
   *
   * @throws IllegalArgumentException if something does
   */
  public static void checkVisible(String option, String text) {
    if (!VisibleText.is(text)) {
      throw new IllegalArgumentException(option + " " + VisibleText.REFUSAL);
    }
  }

  /** Reads "centroid", "middle" or "densest". */
  public static SpotCentre spotCentre(String text) {
    for (SpotCentre centre : SpotCentre.values()) {
      if (centre.word().equals(text.toLowerCase(Locale.ROOT))) {
        return centre;
      }
    }
    throw new IllegalArgumentException(
        "one of centroid, middle, densest is needed, was \"" + text + "\"");
  }

  /** Reads "up", "down", "left" or "right". */
  public static Bottom bottom(String text) {
    for (Bottom end : Bottom.values()) {
      if (of(end).equals(text.toLowerCase(Locale.ROOT))) {
        return end;
      }
    }
    throw new IllegalArgumentException(
        "one of up, down, left, right is needed, was \"" + text + "\"");
  }

  /** Returns the word of the option. */
  public static String of(Bottom end) {
    return end.name().toLowerCase(Locale.ROOT);
  }

  private static List<Double> numbers(String text, int count, String wanted) {
    String[] parts = text.split(",", -1);
    List<Double> numbers = new ArrayList<>();
    try {
      for (String part : parts) {
        double number = Double.parseDouble(part.strip());
        if (!Double.isFinite(number) || Math.abs(number) > LARGEST) {
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
