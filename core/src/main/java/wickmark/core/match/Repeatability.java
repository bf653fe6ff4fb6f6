package wickmark.core.match;

import java.util.List;
import wickmark.core.chromatogram.LaneRole;

/**
 * How well Rf repeats between lanes, learnt from references that are on the strip more than once
 * (lanes of the same name).
 */
final class Repeatability {
  /** How many differences the default is worth. */
  private static final double DEFAULT_WEIGHT = 4;

  private Repeatability() {}

  /**
   * Returns the settings with a tolerance that takes into account how repeated references differ:
   * the mean of the default variance, which counts as four differences, and of what was seen.
   */
  static MatchSettings learn(List<LaneSignature> lanes, MatchSettings settings) {
    double sum = DEFAULT_WEIGHT * settings.repeatability() * settings.repeatability();
    double weight = DEFAULT_WEIGHT;
    for (int i = 0; i < lanes.size(); i++) {
      for (int j = i + 1; j < lanes.size(); j++) {
        List<SpotSignature> first = lanes.get(i).moved();
        List<SpotSignature> second = lanes.get(j).moved();
        if (!areRepeats(lanes.get(i), lanes.get(j)) || first.size() != second.size()) {
          continue;
        }
        for (int k = 0; k < first.size(); k++) {
          sum += excess(first.get(k), second.get(k));
          weight++;
        }
      }
    }
    return new MatchSettings(
        2 * StrictMath.sqrt(sum / weight), settings.toleranceColour(), settings.detectionLimit());
  }

  private static boolean areRepeats(LaneSignature first, LaneSignature second) {
    return first.role() == LaneRole.REFERENCE
        && second.role() == LaneRole.REFERENCE
        && first.name().equals(second.name());
  }

  /** Squared difference beyond what the measuring itself explains. */
  private static double excess(SpotSignature first, SpotSignature second) {
    double difference = first.rf().value() - second.rf().value();
    double own = first.rf().standardUncertainty();
    double other = second.rf().standardUncertainty();
    return Math.max(0, difference * difference - own * own - other * other);
  }
}
