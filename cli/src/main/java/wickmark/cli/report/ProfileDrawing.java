package wickmark.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import wickmark.core.record.RunRecord;
import wickmark.core.uncertainty.Decimals;
import wickmark.imaging.StraightLayout;

/** Draws the density along each lane in columns of one width and one scale. */
final class ProfileDrawing {
  /** Widest column, in letter heights. */
  private static final double WIDEST = 4;

  /** All columns together are no wider than this part of the strip. */
  private static final double WIDEST_TOGETHER = 0.7;

  /** Part of a column that the densest place fills; the spots' numbers stand in the rest. */
  private static final double FILLED = 0.66;

  private final RunRecord record;
  private final StraightLayout layout;
  private final Function<List<Double>, double[]> projection;
  private final double letter;

  ProfileDrawing(
      RunRecord record,
      StraightLayout layout,
      Function<List<Double>, double[]> projection,
      double letter) {
    this.record = record;
    this.layout = layout;
    this.projection = projection;
    this.letter = letter;
  }

  /**
   * Returns a profile a lane.
   *
   * @param left where the first column begins
   * @param stripWidth width of the strip
   */
  List<DensityProfile> profiles(double left, double stripWidth) {
    int lanes = layout.lanes().size();
    double most =
        layout.lanes().stream()
            .flatMap(lane -> lane.density().density().stream())
            .mapToDouble(Double::doubleValue)
            .max()
            .orElse(0);
    if (!(most > 0)) {
      return List.of();
    }
    double column = Math.min(WIDEST * letter, WIDEST_TOGETHER * stripWidth / lanes);
    List<DensityProfile> profiles = new ArrayList<>();
    for (int k = 0; k < lanes; k++) {
      double base = left + 0.6 * letter + k * column;
      profiles.add(profile(k, base, column, FILLED * column / most));
    }
    return profiles;
  }

  private DensityProfile profile(int lane, double base, double column, double perDensity) {
    RunRecord.Lane measured = record.lanes().get(lane);
    StraightLayout.Density density = layout.lanes().get(lane).density();
    double zero = projection.apply(measured.originPx())[1];
    StringBuilder curve = new StringBuilder(point(base, zero - density.start()));
    double y = zero;
    for (int i = 0; i < density.density().size(); i++) {
      y = zero - density.start() - i * density.step();
      curve.append(' ').append(point(base + perDensity * density.density().get(i), y));
    }
    curve.append(' ').append(point(base, y));
    List<DensityProfile.Mark> spots = new ArrayList<>();
    for (RunRecord.Spot spot : measured.spots()) {
      spots.add(
          new DensityProfile.Mark(
              number(base),
              number(base + FILLED * column),
              number(projection.apply(spot.centrePx())[1]),
              String.valueOf(spot.number())));
    }
    return new DensityProfile(
        number(base),
        number(y),
        number(zero),
        curve.toString(),
        new Sketch.Label(
            number(base + 0.42 * column), number(zero + 1.6 * letter), measured.name()),
        spots,
        base + column);
  }

  private static String point(double x, double y) {
    return number(x) + "," + number(y);
  }

  private static String number(double value) {
    return Decimals.text(value, 1);
  }
}
