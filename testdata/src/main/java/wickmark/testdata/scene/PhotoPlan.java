package wickmark.testdata.scene;

import java.util.ArrayList;
import java.util.List;

/**
 * A photograph to take.
 *
 * @param things what lies on the desk
 * @param seed chance of the desk's grain and the sensor's noise
 */
public record PhotoPlan(
    CameraPlan camera, Desk desk, LightPlan light, SensorPlan sensor, Things things, long seed) {

  /**
   * What lies on the desk, in the order: clutter on top, then rulers, then strips, the first of
   * each uppermost.
   *
   * @param rulersBelow whether strips lie over the rulers instead
   * @param prints printed sheets, below all else
   * @param shadesThings whether things shade what they lie on, as they do; else only the desk
   */
  public record Things(
      List<StripItem> strips,
      List<RulerItem> rulers,
      List<Clutter> clutter,
      boolean rulersBelow,
      List<PrintItem> prints,
      boolean shadesThings) {
    public Things {
      strips = List.copyOf(strips);
      rulers = List.copyOf(rulers);
      clutter = List.copyOf(clutter);
      prints = List.copyOf(prints);
    }

    /** Things that shade only the desk. */
    public Things(
        List<StripItem> strips,
        List<RulerItem> rulers,
        List<Clutter> clutter,
        boolean rulersBelow,
        List<PrintItem> prints) {
      this(strips, rulers, clutter, rulersBelow, prints, false);
    }

    /** Returns the same things, shading what they lie on. */
    public Things shadingThings() {
      return new Things(strips, rulers, clutter, rulersBelow, prints, true);
    }

    /** Things without printed sheets. */
    public Things(
        List<StripItem> strips,
        List<RulerItem> rulers,
        List<Clutter> clutter,
        boolean rulersBelow) {
      this(strips, rulers, clutter, rulersBelow, List.of());
    }
  }

  /** Returns a plain photograph: grey laminate, even light, a good camera. */
  public static PhotoPlan of(CameraPlan camera, StripItem... strips) {
    Things things = new Things(List.of(strips), List.of(), List.of(), false);
    return new PhotoPlan(
        camera, Desk.GREY_LAMINATE, LightPlan.even(), SensorPlan.good(), things, 1);
  }

  public PhotoPlan onto(Desk value) {
    return new PhotoPlan(camera, value, light, sensor, things, seed);
  }

  public PhotoPlan lit(LightPlan value) {
    return new PhotoPlan(camera, desk, value, sensor, things, seed);
  }

  public PhotoPlan with(SensorPlan value) {
    return new PhotoPlan(camera, desk, light, value, things, seed);
  }

  public PhotoPlan with(RulerItem ruler) {
    List<RulerItem> rulers = new ArrayList<>(things.rulers);
    rulers.add(ruler);
    return with(
        new Things(
            things.strips,
            rulers,
            things.clutter,
            things.rulersBelow,
            things.prints,
            things.shadesThings));
  }

  public PhotoPlan with(Clutter thing) {
    List<Clutter> clutter = new ArrayList<>(things.clutter);
    clutter.add(thing);
    return with(
        new Things(
            things.strips,
            things.rulers,
            clutter,
            things.rulersBelow,
            things.prints,
            things.shadesThings));
  }

  public PhotoPlan with(PrintItem print) {
    List<PrintItem> prints = new ArrayList<>(things.prints);
    prints.add(print);
    return with(
        new Things(
            things.strips,
            things.rulers,
            things.clutter,
            things.rulersBelow,
            prints,
            things.shadesThings));
  }

  public PhotoPlan with(Things value) {
    return new PhotoPlan(camera, desk, light, sensor, value, seed);
  }

  public PhotoPlan seeded(long value) {
    return new PhotoPlan(camera, desk, light, sensor, things, value);
  }
}
