package wickmark.imaging.scale;

import java.util.List;

/**
 * A graduated edge of a ruler as it was read.
 *
 * @param marks the marks in the order of their index, at least eight; they lie on one line that is
 *     parallel to the ruler's edge on the ruler
 * @param unit what one step of the index is
 * @param confidence 0 to 1: how well lengths and spacing of the marks bear out index and unit;
 *     below 0.5 the unit is a guess
 * @param residualPx robust standard deviation of the marks from an even spacing in perspective,
 *     along the ruler, in photo pixels
 * @param asideSigmaPx robust standard deviation of the middles of neighbouring marks from the line
 *     that all share, across the ruler, in photo pixels
 * @param shownShare share of the marks between the first and the last that was seen, 0 to 1
 */
public record RulerEdge(
    List<Graduation> marks,
    GraduationUnit unit,
    double confidence,
    double residualPx,
    double asideSigmaPx,
    double shownShare) {
  public RulerEdge {
    marks = List.copyOf(marks);
    if (!(confidence >= 0 && confidence <= 1)) {
      throw new IllegalArgumentException("confidence must lie between 0 and 1, was " + confidence);
    }
  }

  /** Returns the millimetres from one index to the next. */
  public double millimetresPerMark() {
    return unit.millimetres();
  }
}
