package wickmark.core.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import wickmark.core.chromatogram.Chromatogram;
import wickmark.core.chromatogram.Lane;
import wickmark.core.chromatogram.Spot;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.core.colour.ColourName;
import wickmark.core.colour.LabColour;
import wickmark.core.match.LaneReading;
import wickmark.core.match.UnknownReading;
import wickmark.core.rf.RetardationFactor;
import wickmark.core.uncertainty.Decimals;
import wickmark.core.uncertainty.UncertaintyBudget;

/**
 * The parts of a run record that a chromatogram and its readings give, rounded to what their
 * numbers carry. Lengths are {@code null} where the strip's unit is not the millimetre.
 */
public final class ChromatogramRecord {
  private static final int MM_DECIMALS = 3;
  private static final int RF_DECIMALS = 5;
  private static final int PX_DECIMALS = 2;
  private static final int LAB_DECIMALS = 2;
  private static final int ABSORBANCE_DECIMALS = 4;
  private static final int SHARE_DECIMALS = 3;

  private final Chromatogram strip;
  private final Set<String> originsByHand;

  private ChromatogramRecord(Chromatogram strip, Set<String> originsByHand) {
    this.strip = strip;
    this.originsByHand = originsByHand;
  }

  /**
   * Returns the record's lanes.
   *
   * @param pictures one for each lane, in the same order
   * @param originsByHand names of the lanes whose origin a person said
   */
  public static List<RunRecord.Lane> lanes(
      Chromatogram strip, List<LanePicture> pictures, Set<String> originsByHand) {
    ChromatogramRecord record = new ChromatogramRecord(strip, originsByHand);
    List<RunRecord.Lane> lanes = new ArrayList<>();
    for (int i = 0; i < strip.lanes().size(); i++) {
      lanes.add(record.lane(strip.lanes().get(i), pictures.get(i)));
    }
    return List.copyOf(lanes);
  }

  /** Returns the record's warnings that come from measuring the lanes and from matching them. */
  public static List<RunRecord.Warning> warnings(
      Chromatogram strip, List<UnknownReading> readings) {
    Stream<RunRecord.Warning> ofLanes =
        strip.cautions().stream()
            .map(caution -> new RunRecord.Warning(caution.kind().code(), caution.message()));
    Stream<RunRecord.Warning> ofReadings =
        readings.stream().flatMap(r -> Stream.concat(ofBlends(r), ofHiddenDyes(r)));
    return Stream.concat(ofLanes, ofReadings).toList();
  }

  /** One row of the table that stands for two dyes is to be seen as such. */
  private static Stream<RunRecord.Warning> ofBlends(UnknownReading reading) {
    return reading.blendedSpots().stream()
        .map(
            spot ->
                new RunRecord.Warning(
                    "spot-of-two-dyes",
                    "Lane "
                        + reading.lane()
                        + ", spot "
                        + spot
                        + " is explained only as two dyes on top of one another, so that the"
                        + " table's one Rf stands for both. A longer run, a smaller sample or"
                        + " another solvent may part them."));
  }

  private static Stream<RunRecord.Warning> ofHiddenDyes(UnknownReading reading) {
    return reading.hidden().stream()
        .map(
            dye ->
                new RunRecord.Warning(
                    "spot-may-be-two",
                    "Lane "
                        + reading.lane()
                        + ", spot "
                        + dye.unknownSpot()
                        + " is longer than its dye alone would be, and "
                        + dye.reference()
                        + " has a spot of the same colour within it (Rf "
                        + Decimals.text(dye.rf(), 2)
                        + "): it may be two dyes that ran into one, and the table's one Rf that of"
                        + " neither. A longer run, a smaller sample or another solvent may part"
                        + " them."));
  }

  /** Returns the record's unknowns. */
  public static List<RunRecord.Unknown> unknowns(List<UnknownReading> readings) {
    return readings.stream().map(ChromatogramRecord::unknown).toList();
  }

  private RunRecord.Lane lane(Lane lane, LanePicture picture) {
    List<RunRecord.Spot> spots =
        lane.spots().stream()
            .map(spot -> spot(spot, picture.spots().get(spot.evidenceIndex())))
            .toList();
    return new RunRecord.Lane(
        lane.name(),
        lane.role().word(),
        rounded(picture.originPx(), PX_DECIMALS),
        originsByHand.contains(lane.name()),
        Decimals.rounded(picture.confidence(), SHARE_DECIMALS),
        millimetres(lane.frontDistance().value()),
        millimetres(lane.frontDistance().standardUncertainty()),
        LaneReading.of(lane),
        spots);
  }

  private RunRecord.Spot spot(Spot spot, LanePicture.SpotPicture picture) {
    Spot.Distances distances = spot.distances();
    LabColour colour = spot.evidence().look().colour();
    return new RunRecord.Spot(
        spot.number(),
        millimetres(distances.centroid().value()),
        millimetres(distances.centroid().standardUncertainty()),
        millimetres(distances.middle().value()),
        millimetres(distances.densest().value()),
        millimetres(distances.top()),
        millimetres(distances.bottom()),
        millimetres(spot.evidence().extent().width()),
        millimetres(spot.evidence().extent().area()),
        rf(spot.rf()),
        Decimals.rounded(spot.rf().standardUncertainty(), RF_DECIMALS),
        rf(spot.factors().middle()),
        rf(spot.factors().densest()),
        Decimals.rounded(spot.evidence().look().peakAbsorbance(), ABSORBANCE_DECIMALS),
        rounded(picture.centrePx(), PX_DECIMALS),
        rounded(List.of(colour.lightness(), colour.a(), colour.b()), LAB_DECIMALS),
        ColourName.of(colour).word(),
        spot.evidence().flags().stream().map(SpotFlag::word).toList(),
        Decimals.rounded(spot.evidence().confidence(), SHARE_DECIMALS),
        budget(spot.rfBudget()),
        picture.outlinePx().stream().map(point -> rounded(point, PX_DECIMALS)).toList());
  }

  private static List<RunRecord.BudgetLine> budget(UncertaintyBudget budget) {
    return budget.contributions().stream()
        .map(
            line ->
                new RunRecord.BudgetLine(
                    line.source(),
                    Decimals.rounded(line.standardUncertainty(), RF_DECIMALS),
                    Decimals.rounded(line.share(), SHARE_DECIMALS)))
        .toList();
  }

  private static RunRecord.Unknown unknown(UnknownReading reading) {
    return new RunRecord.Unknown(
        reading.lane(),
        reading.explanations().stream().map(ChromatogramRecord::explanation).toList(),
        reading.unexplainedSpots(),
        reading.ruledOut().stream()
            .map(out -> new RunRecord.RuledOut(out.reference(), out.reason()))
            .toList(),
        reading.findings());
  }

  private static RunRecord.Explanation explanation(UnknownReading.Explanation explanation) {
    List<RunRecord.SpotMatch> matches =
        explanation.matches().stream()
            .map(
                match ->
                    new RunRecord.SpotMatch(
                        match.unknownSpot(),
                        match.reference(),
                        match.referenceSpot(),
                        Decimals.rounded(match.rfDifference(), RF_DECIMALS),
                        Decimals.rounded(match.colourDifference(), LAB_DECIMALS)))
            .toList();
    return new RunRecord.Explanation(
        explanation.references(), Decimals.rounded(explanation.score(), SHARE_DECIMALS), matches);
  }

  private static double rf(RetardationFactor factor) {
    return Decimals.rounded(factor.value(), RF_DECIMALS);
  }

  private @Nullable Double millimetres(double length) {
    return strip.lengthsAreMillimetres() ? Decimals.rounded(length, MM_DECIMALS) : null;
  }

  private static List<Double> rounded(List<Double> values, int decimals) {
    return values.stream().map(value -> Decimals.rounded(value, decimals)).toList();
  }
}
