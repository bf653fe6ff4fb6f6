package wickmark.testdata.scene;

import java.util.List;
import wickmark.testdata.colour.LinearRgb;

/**
 * The light on the desk.
 *
 * @param colour its colour, as the camera's white balance leaves it; white is (1, 1, 1)
 * @param slope how it falls off over the desk
 * @param direction where it comes from
 * @param edges shadows of things outside the picture
 * @param spots bright spots of a lamp or a flash
 * @param patterns light and shade in a pattern
 */
public record LightPlan(
    LinearRgb colour,
    Slope slope,
    Direction direction,
    List<ShadowEdge> edges,
    List<HotSpot> spots,
    List<ShadePattern> patterns) {
  public LightPlan {
    edges = List.copyOf(edges);
    spots = List.copyOf(spots);
    patterns = List.copyOf(patterns);
  }

  /** Light without a pattern. */
  public LightPlan(
      LinearRgb colour,
      Slope slope,
      Direction direction,
      List<ShadowEdge> edges,
      List<HotSpot> spots) {
    this(colour, slope, direction, edges, spots, List.of());
  }

  /**
   * Change over the desk.
   *
   * @param perMetreX relative change of brightness to the right, per metre
   * @param perMetreY the same upwards
   * @param farColour colour of a second light, as strong as the first 300 mm to the right
   */
  public record Slope(double perMetreX, double perMetreY, LinearRgb farColour) {}

  /**
   * Where the light comes from: azimuth 0 from the right, 90 from the top; elevation above the
   * desk.
   */
  public record Direction(double azimuthDeg, double elevationDeg) {}

  /**
   * The straight edge of a shadow.
   *
   * @param xMm a place on it in the world
   * @param yMm the same
   * @param normalDeg direction in which the shadow lies
   * @param softMm width over which it darkens
   * @param left light left in the shadow, in each channel
   */
  public record ShadowEdge(
      double xMm, double yMm, double normalDeg, double softMm, LinearRgb left) {}

  /** A round bright spot; {@code strength} is its share of the other light at its middle. */
  public record HotSpot(
      double xMm, double yMm, double radiusMm, double strength, LinearRgb colour) {}

  /** Returns even white light from the upper left. */
  public static LightPlan even() {
    LinearRgb white = new LinearRgb(1, 1, 1);
    return new LightPlan(
        white, new Slope(0, 0, white), new Direction(130, 55), List.of(), List.of());
  }

  public LightPlan withColour(LinearRgb value) {
    return new LightPlan(
        value,
        new Slope(slope.perMetreX, slope.perMetreY, value),
        direction,
        edges,
        spots,
        patterns);
  }

  public LightPlan withSlope(double perMetreX, double perMetreY) {
    return new LightPlan(
        colour,
        new Slope(perMetreX, perMetreY, slope.farColour),
        direction,
        edges,
        spots,
        patterns);
  }

  public LightPlan withEdges(List<ShadowEdge> value) {
    return new LightPlan(colour, slope, direction, value, spots, patterns);
  }

  public LightPlan withSpots(List<HotSpot> value) {
    return new LightPlan(colour, slope, direction, edges, value, patterns);
  }

  public LightPlan withPatterns(List<ShadePattern> value) {
    return new LightPlan(colour, slope, direction, edges, spots, value);
  }

  /** Returns the direction to the light as a unit vector of the world. */
  double[] towards() {
    double azimuth = StrictMath.toRadians(direction.azimuthDeg);
    double elevation = StrictMath.toRadians(direction.elevationDeg);
    return new double[] {
      StrictMath.cos(elevation) * StrictMath.cos(azimuth),
      StrictMath.cos(elevation) * StrictMath.sin(azimuth),
      StrictMath.sin(elevation)
    };
  }
}
