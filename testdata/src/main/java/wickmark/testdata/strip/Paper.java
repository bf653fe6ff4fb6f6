package wickmark.testdata.strip;

import wickmark.testdata.colour.LinearRgb;

/**
 * A kind of paper.
 *
 * @param white its reflectance
 * @param cloudiness standard deviation of the slow unevenness of a sheet held to light, as a share
 * @param grain the same of the fibres' fine grain
 * @param fibreMm size of the grain, mm
 */
public record Paper(LinearRgb white, double cloudiness, double grain, double fibreMm) {
  public static final Paper FILTER = new Paper(LinearRgb.ofSrgb(238, 236, 229), 0.006, 0.012, 0.16);
  public static final Paper CHROMATOGRAPHY =
      new Paper(LinearRgb.ofSrgb(241, 240, 235), 0.004, 0.008, 0.12);
  public static final Paper CREAM = new Paper(LinearRgb.ofSrgb(236, 229, 210), 0.008, 0.014, 0.20);
  public static final Paper KITCHEN =
      new Paper(LinearRgb.ofSrgb(240, 239, 238), 0.012, 0.022, 0.45);
  public static final Paper COFFEE_FILTER =
      new Paper(LinearRgb.ofSrgb(206, 180, 142), 0.012, 0.020, 0.25);
  public static final Paper BLUISH = new Paper(LinearRgb.ofSrgb(226, 232, 240), 0.005, 0.010, 0.14);
  public static final Paper PLATE = new Paper(LinearRgb.ofSrgb(246, 246, 245), 0.002, 0.004, 0.08);
}
