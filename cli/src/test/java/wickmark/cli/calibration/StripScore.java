package wickmark.cli.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.core.record.RunRecord;

/**
 * Compares what came of a strip with the truth. Lanes go by their order or, where their number is
 * wrong, by their origins; spots by {@link SpotPairing}. A faint spot may be missed, and what is
 * left at the origin counts neither way.
 */
final class StripScore {
  /** An Rf that is farther off is wrong. */
  private static final double WRONG_RF = 0.03;

  /** A lane that is farther off than this part of the least gap between lanes is another. */
  private static final double LANE_REACH = 0.6;

  private final TruthFile truth;
  private final List<String> wrong = new ArrayList<>();
  private final SortedSet<String> warnings = new TreeSet<>();
  private final Outcome outcome;
  private int lanesFound;

  final Share lanes = new Share();
  final Share spots = new Share();
  final Share faint = new Share();
  final Share foundSpots = new Share();
  final Share colours = new Share();
  final Share explained = new Share();
  final Share unexplained = new Share();
  final Errors distanceMm = new Errors();
  final Errors rf = new Errors();
  final Errors frontMm = new Errors();
  final Errors scalePercent = new Errors();
  final Errors cornerPx = new Errors();
  final Errors cornerMm = new Errors();

  private enum Outcome {
    MEASURED,
    REFUSED,
    NO_ANSWER
  }

  private StripScore(TruthFile truth, Outcome outcome) {
    this.truth = truth;
    this.outcome = outcome;
  }

  /** The score of a strip that nothing is known of, as where the picture seemed to hold others. */
  static StripScore noAnswer(TruthFile truth, String why) {
    StripScore score = new StripScore(truth, Outcome.NO_ANSWER);
    score.wrong.add(why);
    return score;
  }

  static StripScore of(TruthFile truth, MeasuredStrip outcome) {
    StripScore score =
        new StripScore(
            truth, outcome instanceof MeasuredStrip.Done ? Outcome.MEASURED : Outcome.REFUSED);
    if (outcome instanceof MeasuredStrip.Done done) {
      done.record().warnings().forEach(w -> score.warnings.add(w.code()));
      if (truth.toRefuse()) {
        score.wrong.add("should be refused");
      } else {
        score.compare(done.record());
      }
    } else if (!truth.toRefuse()) {
      score.wrong.add("refused, should be measured");
    }
    return score;
  }

  TruthFile truth() {
    return truth;
  }

  /** What is wrong, in words; nothing where all is right. */
  List<String> wrong() {
    return wrong;
  }

  /** The codes of the record's warnings. */
  SortedSet<String> warnings() {
    return warnings;
  }

  boolean isMeasured() {
    return outcome == Outcome.MEASURED;
  }

  boolean isRefused() {
    return outcome == Outcome.REFUSED;
  }

  /** Whether it was to be measured, and was. */
  boolean isAnswer() {
    return isMeasured() && !truth.toRefuse();
  }

  boolean isFlawless() {
    return isAnswer() && wrong.isEmpty();
  }

  /** Whether a warning says that a finding is not sure; others tell of what was seen. */
  boolean isDoubted() {
    return FindingTable.isDoubt(warnings);
  }

  boolean isSilentlyWrong() {
    return isMeasured() && !wrong.isEmpty() && warnings.isEmpty();
  }

  boolean hasLaneCount() {
    return lanesFound == lanes.all();
  }

  private void compare(RunRecord record) {
    compareStrip(record);
    lanesFound = record.lanes().size();
    int[] pair = lanePairs(record);
    Map<Integer, Integer> laneOf = new HashMap<>();
    Map<String, Map<Integer, TruthFile.Spot>> spotOf = new HashMap<>();
    for (int i = 0; i < pair.length; i++) {
      TruthFile.Lane lane = truth.lanes().get(i);
      lanes.add(pair[i] >= 0);
      if (pair[i] >= 0) {
        laneOf.put(pair[i], i);
        spotOf.put(lane.name(), compareLane(lane, record.lanes().get(pair[i])));
      } else {
        lane.spots().stream().filter(s -> s.counts() && !s.faint()).forEach(s -> spots.add(false));
      }
    }
    if (!hasLaneCount()) {
      wrong.add(lanesFound + " lanes for " + truth.lanes().size());
    }
    for (int j = 0; j < lanesFound; j++) {
      if (!laneOf.containsKey(j)) {
        record.lanes().get(j).spots().stream()
            .filter(s -> s.rf() >= TruthFile.Spot.ORIGIN)
            .forEach(s -> foundSpots.add(false));
      }
    }
    Map<String, String> names = new HashMap<>();
    laneOf.forEach((j, i) -> names.put(record.lanes().get(j).name(), truth.lanes().get(i).name()));
    truth.unknowns().forEach(unknown -> compareUnknown(unknown, record, names, spotOf));
  }

  private void compareStrip(RunRecord record) {
    @Nullable Double scale = record.scale().millimetresPerPixel();
    if (truth.hasScale() && scale != null) {
      scalePercent.add(
          100 * (scale / truth.millimetresPerPixel() - 1),
          record.scale().relativeUncertainty() == null
              ? null
              : Double.valueOf(100 * record.scale().relativeUncertainty()));
    } else if (!truth.hasScale() && scale != null) {
      wrong.add("millimetres where there is no scale");
    }
    if (truth.cornersInside()) {
      double farthest = 0;
      for (int k = 0; k < truth.corners().size(); k++) {
        farthest =
            Math.max(farthest, apart(truth.corners().get(k), record.strip().cornersPx().get(k)));
      }
      cornerPx.add(farthest);
      cornerMm.add(farthest * truth.millimetresPerPixel());
    }
  }

  private int[] lanePairs(RunRecord record) {
    int n = truth.lanes().size();
    int m = record.lanes().size();
    if (n == m) {
      return OrderedPairing.of(n, m, (i, j) -> i == j ? 0 : Double.POSITIVE_INFINITY, 1);
    }
    double gap = Double.POSITIVE_INFINITY;
    for (int i = 1; i < n; i++) {
      gap = Math.min(gap, apart(truth.lanes().get(i - 1).origin(), truth.lanes().get(i).origin()));
    }
    return OrderedPairing.of(
        n,
        m,
        (i, j) -> apart(truth.lanes().get(i).origin(), record.lanes().get(j).originPx()),
        Double.isInfinite(gap) ? 1e9 : LANE_REACH * gap);
  }

  /** Counts a lane's spots and returns which true spot each number of the record's is. */
  private Map<Integer, TruthFile.Spot> compareLane(TruthFile.Lane lane, RunRecord.Lane found) {
    if (truth.hasScale() && found.frontDistanceMm() != null) {
      frontMm.add(found.frontDistanceMm() - lane.frontMm(), found.frontDistanceUncertaintyMm());
    }
    List<TruthFile.Spot> counted = lane.spots().stream().filter(TruthFile.Spot::counts).toList();
    List<RunRecord.Spot> ascending =
        found.spots().stream().sorted(Comparator.comparingDouble(RunRecord.Spot::rf)).toList();
    int[] pair = SpotPairing.of(counted, ascending.stream().map(RunRecord.Spot::rf).toList());
    Map<Integer, TruthFile.Spot> trueOf = new HashMap<>();
    for (int i = 0; i < pair.length; i++) {
      TruthFile.Spot spot = counted.get(i);
      (spot.faint() ? faint : spots).add(pair[i] >= 0);
      if (pair[i] >= 0) {
        trueOf.put(ascending.get(pair[i]).number(), spot);
        compareSpot(lane, spot, ascending.get(pair[i]));
      } else if (!spot.faint()) {
        say("lane %s: spot at Rf %.2f missed", lane.name(), spot.rf());
      }
    }
    for (RunRecord.Spot spot : ascending) {
      boolean real = trueOf.containsKey(spot.number());
      if (real || spot.rf() >= TruthFile.Spot.ORIGIN) {
        foundSpots.add(real);
        if (!real) {
          say("lane %s: false spot at Rf %.2f", lane.name(), spot.rf());
        }
      }
    }
    return trueOf;
  }

  private void compareSpot(TruthFile.Lane lane, TruthFile.Spot spot, RunRecord.Spot found) {
    double off = spot.rfError(found.rf());
    rf.add(off, found.rfUncertainty());
    if (Math.abs(off) > WRONG_RF) {
      say("lane %s: Rf %.2f off by %.3f", lane.name(), spot.rf(), off);
    }
    if (truth.hasScale() && found.distanceMm() != null) {
      distanceMm.add(spot.distanceErrorMm(found.distanceMm()), found.distanceUncertaintyMm());
    }
    colours.add(spot.colours().contains(found.colour()));
  }

  /**
   * Whether the best explanation is a true one, and whether what it leaves over is what no
   * reference has; what is false, faint or left at the origin may be left over or not.
   *
   * @param names the pencilled name of each lane of the record that is one
   * @param spotOf by pencilled name of lane and the record's number, which spot it is
   */
  private void compareUnknown(
      TruthFile.Unknown unknown,
      RunRecord record,
      Map<String, String> names,
      Map<String, Map<Integer, TruthFile.Spot>> spotOf) {
    RunRecord.@Nullable Unknown answer =
        record.unknowns().stream()
            .filter(u -> unknown.lane().equals(names.get(u.lane())))
            .findFirst()
            .orElse(null);
    if (answer == null) {
      explained.add(false);
      unexplained.add(false);
      return;
    }
    Set<String> references =
        answer.explanations().isEmpty()
            ? Set.of()
            : answer.explanations().get(0).references().stream()
                .map(name -> names.getOrDefault(name, "?" + name))
                .collect(Collectors.toSet());
    explained.add(unknown.explanations().contains(references));
    Map<Integer, TruthFile.Spot> spotsOf = spotOf.getOrDefault(unknown.lane(), Map.of());
    Set<Integer> left = new HashSet<>();
    for (int number : answer.unexplainedSpots()) {
      TruthFile.@Nullable Spot spot = spotsOf.get(number);
      if (spot != null) {
        left.add(spot.number());
      }
    }
    List<TruthFile.Spot> inLane =
        truth.lanes().stream()
            .filter(lane -> lane.name().equals(unknown.lane()))
            .findFirst()
            .orElseThrow()
            .spots();
    boolean right = true;
    for (TruthFile.Spot spot : inLane) {
      boolean must = unknown.unexplained().contains(spot.number());
      boolean isLeft = left.contains(spot.number());
      right &= must ? isLeft || spot.faint() : !isLeft || spot.faint() || spot.residue();
    }
    unexplained.add(right);
  }

  private void say(String words, Object... values) {
    wrong.add(String.format(Locale.ROOT, words, values));
  }

  private static double apart(List<Double> a, List<Double> b) {
    return Math.hypot(a.get(0) - b.get(0), a.get(1) - b.get(1));
  }
}
