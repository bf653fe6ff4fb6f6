package wickmark.cli.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wickmark.core.record.RunRecord;

/** Compares a record with the truth: what in it is wrong, in words; empty where all is right. */
final class StripScore {
  /** Below this, dye is what was left at the origin and counts neither way. */
  static final double ORIGIN = 0.03;

  /** An Rf that is farther off is wrong. */
  private static final double WRONG_RF = 0.03;

  private StripScore() {}

  static List<String> wrong(TruthFile truth, RunRecord record) {
    List<String> wrong = new ArrayList<>();
    if (truth.lanes().size() != record.lanes().size()) {
      wrong.add(record.lanes().size() + " lanes for " + truth.lanes().size());
      return wrong;
    }
    for (int k = 0; k < truth.lanes().size(); k++) {
      compare(truth.lanes().get(k), record.lanes().get(k), wrong);
    }
    return wrong;
  }

  private static void compare(TruthFile.Lane truth, RunRecord.Lane lane, List<String> wrong) {
    List<TruthFile.Spot> spots = truth.spots().stream().filter(s -> s.rf() >= ORIGIN).toList();
    List<Double> found =
        lane.spots().stream().map(RunRecord.Spot::rf).sorted(Comparator.naturalOrder()).toList();
    int[] pair = SpotPairing.of(spots.stream().map(TruthFile.Spot::rf).toList(), found);
    boolean[] used = new boolean[found.size()];
    for (int i = 0; i < pair.length; i++) {
      if (pair[i] < 0) {
        if (!spots.get(i).faint()) {
          wrong.add("spot missed");
        }
        continue;
      }
      used[pair[i]] = true;
      if (error(spots.get(i), found.get(pair[i])) > WRONG_RF) {
        wrong.add("Rf off");
      }
    }
    for (int j = 0; j < used.length; j++) {
      if (!used[j] && found.get(j) >= ORIGIN) {
        wrong.add("false spot");
      }
    }
  }

  /** Of a tailing spot the middle of its extent is as good as its centroid. */
  private static double error(TruthFile.Spot truth, double found) {
    double error = Math.abs(found - truth.rf());
    return truth.tailing() ? Math.min(error, Math.abs(found - truth.middleRf())) : error;
  }
}
