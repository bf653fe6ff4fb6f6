package wickmark.testdata.truth;

import java.util.List;
import wickmark.testdata.colour.Cielab;

/**
 * The sheet of paper itself.
 *
 * @param corners top-left, top-right, bottom-right, bottom-left
 */
public record SheetTruth(double widthMm, double heightMm, List<PointMm> corners, Cielab paper) {
  public SheetTruth {
    corners = List.copyOf(corners);
  }

  public PointMm centre() {
    return new PointMm(widthMm / 2, heightMm / 2);
  }
}
