package wickmark.core.check;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import wickmark.core.record.RunRecord;

/** The machine's values of one strip, as a person with a ruler would find them; millimetres. */
public record MeasuredSheet(List<MeasuredLane> lanes) {

  /** Keeps a copy of the list. */
  public MeasuredSheet {
    lanes = List.copyOf(lanes);
  }

  /**
   * One lane.
   *
   * @param front distance of the front from the baseline
   * @param margin from the paper's lower edge up to the baseline
   * @param paperTop distance of the paper's upper edge from the baseline
   * @param spots number 1, nearest the front, first
   */
  public record MeasuredLane(
      String name,
      double front,
      double frontUncertainty,
      double margin,
      double paperTop,
      List<MeasuredSpot> spots) {

    /** Keeps a copy of the list. */
    public MeasuredLane {
      spots = List.copyOf(spots);
    }

    /** Returns how many spots have left the origin. */
    int moved() {
      return (int) spots.stream().filter(spot -> !spot.isOnBaseline()).count();
    }

    /** Returns a spot by its number; empty if there is none. */
    public Optional<MeasuredSpot> spot(int number) {
      return number >= 1 && number <= spots.size()
          ? Optional.of(spots.get(number - 1))
          : Optional.empty();
    }
  }

  /**
   * One spot, by distances from the baseline.
   *
   * @param middle the middle of what is visible, which a person measures
   * @param top its rim nearest the front
   * @param bottom its rim nearest the baseline
   */
  public record MeasuredSpot(double middle, double middleUncertainty, double top, double bottom) {
    /** Says whether it is what stayed at the origin, which hardly anybody reads. */
    boolean isOnBaseline() {
      return bottom < 0 && top > 0;
    }
  }

  /** Returns a lane by its name, whatever its case; empty if there is none. */
  public Optional<MeasuredLane> lane(String name) {
    String wanted = name.strip();
    Optional<MeasuredLane> exact =
        lanes.stream().filter(lane -> lane.name().equals(wanted)).findFirst();
    return exact.isPresent()
        ? exact
        : lanes.stream()
            .filter(
                lane ->
                    lane.name().toLowerCase(Locale.ROOT).equals(wanted.toLowerCase(Locale.ROOT)))
            .findFirst();
  }

  /**
   * Returns the machine's values of a record; empty if the record has no millimetres, as nothing
   * can then be compared with a ruler.
   */
  public static Optional<MeasuredSheet> of(RunRecord record) {
    if (record.lanes().stream().anyMatch(lane -> lane.frontDistanceMm() == null)) {
      return Optional.empty();
    }
    PaperEdges edges = new PaperEdges(record.strip());
    return Optional.of(
        new MeasuredSheet(record.lanes().stream().map(lane -> lane(lane, edges)).toList()));
  }

  private static MeasuredLane lane(RunRecord.Lane lane, PaperEdges edges) {
    double across = edges.across(lane.originPx());
    return new MeasuredLane(
        lane.name(),
        known(lane.frontDistanceMm()),
        known(lane.frontDistanceUncertaintyMm()),
        -edges.lower(across),
        edges.upper(across),
        lane.spots().stream().map(MeasuredSheet::spot).toList());
  }

  private static MeasuredSpot spot(RunRecord.Spot spot) {
    return new MeasuredSpot(
        known(spot.middleMm()),
        known(spot.distanceUncertaintyMm()),
        known(spot.topMm()),
        known(spot.bottomMm()));
  }

  private static double known(@Nullable Double value) {
    if (value == null) {
      throw new IllegalArgumentException(
          "a record with a front distance in millimetres has every distance in millimetres");
    }
    return value;
  }
}
