package wickmark.testdata.scene;

import java.util.List;

/**
 * A flatbed scan. World coordinates: (0, 0) is the glass's upper left corner, y up, so places on it
 * have a negative y.
 *
 * @param dpi resolution
 * @param glass the part of the glass that is scanned
 * @param strips strips on the glass, as they will be seen in the picture
 * @param rulers rulers beside them
 */
public record ScanPlan(
    double dpi,
    Glass glass,
    List<StripItem> strips,
    List<RulerItem> rulers,
    SensorPlan sensor,
    long seed) {
  public ScanPlan {
    if (!(dpi >= 20)) {
      throw new IllegalArgumentException("a scan needs at least 20 dpi, was " + dpi);
    }
    strips = List.copyOf(strips);
    rulers = List.copyOf(rulers);
  }

  /** Width and height scanned in mm, and the lid above. */
  public record Glass(double widthMm, double heightMm, Lid lid) {}

  /** The inside of a scanner's lid. */
  public enum Lid {
    WHITE("white"),
    GREY("grey"),
    BLACK("black");

    private final String word;

    Lid(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /** Returns a scan of one strip, upright, with a white lid showing so far on all sides. */
  public static ScanPlan of(wickmark.testdata.strip.StripPlan strip, double dpi, double aroundMm) {
    double width = strip.sheet().widthMm() + 2 * aroundMm;
    double height = strip.sheet().heightMm() + 2 * aroundMm;
    StripItem item = StripItem.of(strip, new Placement(width / 2, -height / 2, 0));
    return new ScanPlan(
        dpi,
        new Glass(width, height, Lid.WHITE),
        List.of(item),
        List.of(),
        SensorPlan.scanner(),
        1);
  }

  public ScanPlan under(Lid lid) {
    return new ScanPlan(
        dpi, new Glass(glass.widthMm, glass.heightMm, lid), strips, rulers, sensor, seed);
  }

  public ScanPlan seeded(long value) {
    return new ScanPlan(dpi, glass, strips, rulers, sensor, value);
  }
}
