package wickmark.testdata.truth;

import java.util.List;

/**
 * A ruler in the picture.
 *
 * @param style its material, as a word
 * @param thicknessMm height of its graduation above the desk
 * @param body its four corners
 * @param marks its numbered graduations
 */
public record RulerTruth(String style, double thicknessMm, List<PointPx> body, List<Mark> marks) {
  public RulerTruth {
    body = List.copyOf(body);
    marks = List.copyOf(marks);
  }

  /**
   * One graduation.
   *
   * @param unit "mm" or "inch"
   * @param value what it stands for in that unit
   * @param outer its end at the ruler's edge
   * @param inner its other end
   */
  public record Mark(String unit, double value, PointPx outer, PointPx inner) {}
}
