package wickmark.testdata.lettering;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A plain hand of single strokes. Each glyph is drawn on a grid four wide and six high; strokes are
 * lists of corners, parted by semicolons.
 */
public final class StrokeFont {
  private static final double CAPITAL = 6;
  private static final double GAP = 1.6;
  private static final Pattern LINE_END = Pattern.compile(";");
  private static final Pattern NUMBER_END = Pattern.compile("[ ,]+");
  private static final Map<Character, int[][]> GLYPHS = glyphs();

  private StrokeFont() {}

  /** Returns the strokes of a text; a character without a glyph leaves a gap. */
  public static List<Stroke> strokes(String text) {
    List<Stroke> strokes = new ArrayList<>();
    double pen = 0;
    for (int at = 0; at < text.length(); at++) {
      int[][] glyph = glyph(text, at);
      for (int[] line : glyph) {
        for (int i = 2; i < line.length; i += 2) {
          strokes.add(
              new Stroke(
                  (pen + line[i - 2]) / CAPITAL, line[i - 1] / CAPITAL,
                  (pen + line[i]) / CAPITAL, line[i + 1] / CAPITAL));
        }
      }
      pen += breadth(glyph) + GAP;
    }
    return strokes;
  }

  /** Returns the width of a text in units of a capital's height. */
  public static double width(String text) {
    double pen = 0;
    for (int at = 0; at < text.length(); at++) {
      pen += breadth(glyph(text, at)) + GAP;
    }
    return Math.max(0, pen - GAP) / CAPITAL;
  }

  private static int[][] glyph(String text, int at) {
    return GLYPHS.getOrDefault(text.charAt(at), new int[0][]);
  }

  private static double breadth(int[][] glyph) {
    int right = glyph.length == 0 ? 2 : 0;
    for (int[] line : glyph) {
      for (int i = 0; i < line.length; i += 2) {
        right = Math.max(right, line[i]);
      }
    }
    return right;
  }

  private static Map<Character, int[][]> glyphs() {
    Map<Character, int[][]> glyphs = new HashMap<>();
    TABLE.lines().forEach(row -> glyphs.put(row.charAt(0), lines(row.substring(1).trim())));
    return glyphs;
  }

  private static int[][] lines(String text) {
    List<String> parts = LINE_END.splitAsStream(text).toList();
    int[][] lines = new int[parts.size()][];
    for (int i = 0; i < lines.length; i++) {
      lines[i] =
          NUMBER_END.splitAsStream(parts.get(i).trim()).mapToInt(Integer::parseInt).toArray();
    }
    return lines;
  }

  private static final String TABLE =
      """
      A 0,0 2,6 4,0; 1,2 3,2
      B 0,0 0,6 2,6 3,5 3,4 2,3 0,3; 2,3 4,2 4,1 3,0 0,0
      C 4,5 3,6 1,6 0,4 0,2 1,0 3,0 4,1
      D 0,0 0,6 2,6 4,4 4,2 2,0 0,0
      E 4,6 0,6 0,0 4,0; 0,3 3,3
      F 4,6 0,6 0,0; 0,3 3,3
      G 4,5 3,6 1,6 0,4 0,2 1,0 3,0 4,1 4,3 2,3
      H 0,0 0,6; 4,0 4,6; 0,3 4,3
      I 0,0 0,6
      J 3,6 3,1 2,0 1,0 0,1
      K 0,0 0,6; 4,6 0,3 4,0
      L 0,6 0,0 4,0
      M 0,0 0,6 2,2 4,6 4,0
      N 0,0 0,6 4,0 4,6
      O 1,0 0,2 0,4 1,6 3,6 4,4 4,2 3,0 1,0
      P 0,0 0,6 3,6 4,5 4,4 3,3 0,3
      Q 1,0 0,2 0,4 1,6 3,6 4,4 4,2 3,0 1,0; 3,2 4,0
      R 0,0 0,6 3,6 4,5 4,4 3,3 0,3; 2,3 4,0
      S 4,5 3,6 1,6 0,5 0,4 1,3 3,3 4,2 4,1 3,0 1,0 0,1
      T 0,6 4,6; 2,6 2,0
      U 0,6 0,1 1,0 3,0 4,1 4,6
      V 0,6 2,0 4,6
      W 0,6 1,0 2,4 3,0 4,6
      X 0,0 4,6; 0,6 4,0
      Y 0,6 2,3 4,6; 2,3 2,0
      Z 0,6 4,6 0,0 4,0
      a 3,4 1,4 0,3 0,1 1,0 2,0 3,1; 3,4 3,0
      b 0,6 0,0; 0,3 1,4 2,4 3,3 3,1 2,0 1,0 0,1
      c 3,3 2,4 1,4 0,3 0,1 1,0 2,0 3,1
      d 3,6 3,0; 3,3 2,4 1,4 0,3 0,1 1,0 2,0 3,1
      e 0,2 3,2 3,3 2,4 1,4 0,3 0,1 1,0 3,0
      f 3,6 2,6 1,5 1,0; 0,4 2,4
      g 3,4 3,-1 2,-2 0,-2; 3,3 2,4 1,4 0,3 0,1 1,0 2,0 3,1
      h 0,6 0,0; 0,3 1,4 2,4 3,3 3,0
      i 0,4 0,0; 0,5 0,6
      k 0,6 0,0; 3,4 0,2 3,0
      l 0,6 0,0
      m 0,4 0,0; 0,3 1,4 2,3 2,0; 2,3 3,4 4,3 4,0
      n 0,4 0,0; 0,3 1,4 2,4 3,3 3,0
      o 1,0 0,1 0,3 1,4 2,4 3,3 3,1 2,0 1,0
      p 0,4 0,-2; 0,3 1,4 2,4 3,3 3,1 2,0 1,0 0,1
      q 3,4 3,-2; 3,3 2,4 1,4 0,3 0,1 1,0 2,0 3,1
      r 0,4 0,0; 0,3 1,4 2,4
      s 3,4 1,4 0,3 3,1 2,0 0,0
      t 1,6 1,1 2,0 3,0; 0,4 3,4
      u 0,4 0,1 1,0 2,0 3,1; 3,4 3,0
      v 0,4 2,0 3,4
      w 0,4 1,0 2,3 3,0 4,4
      x 0,4 3,0; 0,0 3,4
      y 0,4 2,0; 3,4 1,-2
      z 0,4 3,4 0,0 3,0
      0 1,0 0,1 0,5 1,6 3,6 4,5 4,1 3,0 1,0
      1 0,4 2,6 2,0
      2 0,5 1,6 3,6 4,5 4,4 0,0 4,0
      3 0,5 1,6 3,6 4,5 4,4 3,3 1,3; 3,3 4,2 4,1 3,0 1,0 0,1
      4 3,0 3,6 0,2 4,2
      5 4,6 0,6 0,3 3,3 4,2 4,1 3,0 1,0 0,1
      6 4,5 3,6 1,6 0,5 0,1 1,0 3,0 4,1 4,2 3,3 0,3
      7 0,6 4,6 1,0
      8 1,3 0,4 0,5 1,6 3,6 4,5 4,4 3,3 1,3 0,2 0,1 1,0 3,0 4,1 4,2 3,3
      9 4,3 1,3 0,4 0,5 1,6 3,6 4,5 4,1 3,0 1,0 0,1
      ? 0,5 1,6 3,6 4,5 4,4 2,3 2,2; 2,1 2,0
      . 0,0 0,1
      - 0,3 3,3
      = 0,2 3,2; 0,4 3,4
      : 0,1 0,1; 0,4 0,4
      + 0,3 4,3; 2,1 2,5
      / 0,0 3,6
      """;
}
