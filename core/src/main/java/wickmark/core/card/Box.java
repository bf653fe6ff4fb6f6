package wickmark.core.card;

/** An upright rectangle on the card, mm from the sheet's upper left corner. */
public record Box(double left, double top, double right, double bottom) {
  public Box {
    if (!(left < right && top < bottom)) {
      throw new IllegalArgumentException(
          "a box runs from its left to its right and from its top to its bottom");
    }
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return bottom - top;
  }

  /** Whether the place lies inside; the rim counts. */
  public boolean contains(double x, double y) {
    return x >= left && x <= right && y >= top && y <= bottom;
  }

  /** The same with its sides moved outwards; inwards if the distance is below 0. */
  public Box grown(double by) {
    return new Box(left - by, top - by, right + by, bottom + by);
  }
}
