package wickmark.testdata.truth;

import java.util.List;
import java.util.function.Function;

/** A strip and where it is seen in its picture. */
public final class SeenStrip {
  private final StripTruth strip;
  private final Function<PointMm, PointPx> projection;
  private final int widthPx;
  private final int heightPx;

  /**
   * @param projection where a place on the strip is seen, exactly
   * @param widthPx the picture's width
   * @param heightPx the picture's height
   */
  public SeenStrip(
      StripTruth strip, Function<PointMm, PointPx> projection, int widthPx, int heightPx) {
    this.strip = strip;
    this.projection = projection;
    this.widthPx = widthPx;
    this.heightPx = heightPx;
  }

  public StripTruth strip() {
    return strip;
  }

  /** Returns where a place on the strip is seen. */
  public PointPx at(PointMm place) {
    return projection.apply(place);
  }

  /** Returns top-left, top-right, bottom-right and bottom-left corner of the strip itself. */
  public List<PointPx> corners() {
    return strip.sheet().corners().stream().map(this::at).toList();
  }

  /** Returns whether all four corners are in the picture. */
  public boolean cornersInside() {
    return corners().stream()
        .allMatch(c -> c.x() >= 0 && c.y() >= 0 && c.x() <= widthPx && c.y() <= heightPx);
  }

  /** Returns the local scale across the strip at its middle, mm per pixel. */
  public double mmPerPxAcross() {
    PointMm c = strip.sheet().centre();
    return 2 / at(new PointMm(c.x() - 1, c.y())).distanceTo(at(new PointMm(c.x() + 1, c.y())));
  }

  /** Returns the local scale along the strip at its middle, mm per pixel. */
  public double mmPerPxAlong() {
    PointMm c = strip.sheet().centre();
    return 2 / at(new PointMm(c.x(), c.y() - 1)).distanceTo(at(new PointMm(c.x(), c.y() + 1)));
  }

  /** Returns the geometric mean of both local scales at the strip's middle, mm per pixel. */
  public double mmPerPx() {
    return Math.sqrt(mmPerPxAcross() * mmPerPxAlong());
  }
}
