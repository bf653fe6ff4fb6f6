package wickmark.core.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickmark.core.check.MeasuredSheet.MeasuredLane;

/**
 * Finds the slips that explain a reader's lengths best.
 *
 * <p>Over the sheet one way of writing holds; over a lane another may hold instead, and over a
 * reading yet another, or none that is known. Each departure costs what it is rarer than correct
 * reading (minus the logarithm of its probability), each reading what it is off (minus the
 * logarithm of its density under a normal distribution). The cheapest choice of all is taken, so
 * that a slip is named only where scatter explains the readings worse.
 */
final class SlipSearch {
  /** Cost of a reading that nothing explains: anywhere over 150 mm, as rare as a slip. */
  private static final double UNEXPLAINED = StrictMath.log(150) + 5;

  private final SlipHypotheses hypotheses;
  private final List<LengthReading> readings;
  private final Map<MeasuredLane, List<LengthReading>> lanes = new LinkedHashMap<>();

  /** What explains each reading best by itself. */
  private final Map<LengthReading, Choice> alone = new HashMap<>();

  /** What explains each lane best by itself; none for a lane with one reading. */
  private final Map<MeasuredLane, Choice> laneAlone = new HashMap<>();

  SlipSearch(SlipHypotheses hypotheses, List<LengthReading> readings) {
    this.hypotheses = hypotheses;
    this.readings = List.copyOf(readings);
    for (LengthReading reading : readings) {
      lanes.computeIfAbsent(reading.lane(), lane -> new ArrayList<>()).add(reading);
      alone.put(reading, ofReadingAlone(reading));
    }
    lanes.forEach(
        (lane, own) -> {
          if (own.size() > 1) {
            laneAlone.put(lane, ofLaneAlone(lane, own));
          }
        });
  }

  /**
   * How one reading came about.
   *
   * @param hypothesis empty where nothing explains it
   */
  record Assigned(Optional<LengthHypothesis> hypothesis) {}

  /** A choice for some readings and what it costs. */
  private record Choice(Map<LengthReading, Assigned> assigned, double cost) {

    static Choice of(LengthReading reading, Optional<LengthHypothesis> hypothesis, double cost) {
      return new Choice(Map.of(reading, new Assigned(hypothesis)), cost);
    }

    Choice or(Choice other) {
      return other.cost < cost ? other : this;
    }

    Choice dearer(double by) {
      return new Choice(assigned, cost + by);
    }

    static Choice all(List<Choice> choices) {
      Map<LengthReading, Assigned> assigned = new HashMap<>();
      double cost = 0;
      for (Choice choice : choices) {
        assigned.putAll(choice.assigned);
        cost += choice.cost;
      }
      return new Choice(assigned, cost);
    }
  }

  /** Returns how each reading came about, in the order given. */
  Map<LengthReading, Assigned> explain() {
    Choice best = ofSheet(hypotheses.correct());
    if (readings.size() > 1) {
      for (LengthHypothesis hypothesis : hypotheses.ofSheet(readings)) {
        best = best.or(ofSheet(hypothesis).dearer(hypothesis.cost()));
      }
    }
    Map<LengthReading, Assigned> ordered = new LinkedHashMap<>();
    for (LengthReading reading : readings) {
      ordered.put(reading, best.assigned().getOrDefault(reading, new Assigned(Optional.empty())));
    }
    return ordered;
  }

  private Choice ofSheet(LengthHypothesis base) {
    List<Choice> choices = new ArrayList<>();
    lanes.forEach(
        (lane, own) -> {
          Choice choice = ofReadings(own, base);
          choices.add(choice.or(laneAlone.getOrDefault(lane, choice)));
        });
    return Choice.all(choices);
  }

  private Choice ofLaneAlone(MeasuredLane lane, List<LengthReading> own) {
    Choice best = null;
    for (LengthHypothesis hypothesis : hypotheses.ofLane(lane)) {
      Choice choice = ofReadings(own, hypothesis).dearer(hypothesis.cost());
      best = best == null ? choice : best.or(choice);
    }
    return best == null ? ofReadings(own, hypotheses.correct()) : best;
  }

  private Choice ofReadings(List<LengthReading> own, LengthHypothesis base) {
    List<Choice> choices = new ArrayList<>();
    for (LengthReading reading : own) {
      Choice choice = Choice.of(reading, Optional.of(base), base.costOf(reading));
      choices.add(choice.or(alone.getOrDefault(reading, choice)));
    }
    return Choice.all(choices);
  }

  private Choice ofReadingAlone(LengthReading reading) {
    Choice best = Choice.of(reading, Optional.empty(), UNEXPLAINED);
    for (LengthHypothesis hypothesis : hypotheses.ofReading(reading)) {
      double cost = hypothesis.cost() + hypothesis.costOf(reading);
      best = best.or(Choice.of(reading, Optional.of(hypothesis), cost));
    }
    return best;
  }
}
