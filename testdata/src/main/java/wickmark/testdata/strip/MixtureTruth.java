package wickmark.testdata.strip;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wickmark.testdata.truth.LaneTruth;
import wickmark.testdata.truth.Role;
import wickmark.testdata.truth.SpotTruth;
import wickmark.testdata.truth.UnknownTruth;

/** Works out which references explain an unknown, by the names of their dyes. */
final class MixtureTruth {
  private final List<LaneTruth> references;

  MixtureTruth(List<LaneTruth> lanes) {
    this.references = lanes.stream().filter(lane -> lane.role() == Role.REFERENCE).toList();
  }

  UnknownTruth explain(LaneTruth unknown) {
    Set<String> dyes = dyes(unknown);
    List<LaneTruth> fitting =
        references.stream()
            .filter(lane -> !dyes(lane).isEmpty() && dyes.containsAll(dyes(lane)))
            .toList();
    Set<String> covered = new LinkedHashSet<>();
    fitting.forEach(lane -> covered.addAll(dyes(lane)));
    List<Integer> left =
        unknown.spots().stream()
            .filter(spot -> !spot.residue() && !covered.contains(spot.dye()))
            .map(SpotTruth::number)
            .toList();
    List<String> leftDyes = dyes.stream().filter(dye -> !covered.contains(dye)).toList();
    return new UnknownTruth(unknown.name(), smallestCovers(fitting, covered), leftDyes, left);
  }

  /** Tries every set of the fitting references; there are never more than a handful. */
  private static List<List<String>> smallestCovers(List<LaneTruth> fitting, Set<String> covered) {
    List<List<String>> best = new ArrayList<>();
    int smallest = Integer.MAX_VALUE;
    for (int choice = 0; choice < 1 << fitting.size(); choice++) {
      Set<String> reached = new LinkedHashSet<>();
      List<String> names = new ArrayList<>();
      for (int i = 0; i < fitting.size(); i++) {
        if ((choice >> i & 1) == 1) {
          reached.addAll(dyes(fitting.get(i)));
          names.add(fitting.get(i).name());
        }
      }
      if (reached.equals(covered) && names.size() <= smallest) {
        if (names.size() < smallest) {
          best.clear();
          smallest = names.size();
        }
        best.add(names);
      }
    }
    return best;
  }

  private static Set<String> dyes(LaneTruth lane) {
    Set<String> dyes = new LinkedHashSet<>();
    lane.spots().stream().filter(spot -> !spot.residue()).forEach(spot -> dyes.add(spot.dye()));
    return dyes;
  }
}
