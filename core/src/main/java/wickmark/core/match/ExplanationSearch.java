package wickmark.core.match;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Tries all sets of references as explanations of one unknown.
 *
 * <p>Only references whose every spot has a counterpart, or may be too pale to see or hidden in
 * another spot, take part. Up to {@link #MOST_REFERENCES} of them all sets are tried; of more,
 * those that save most by themselves take part. A set in which one reference explains nothing that
 * the others do not explain is left out: it says no more than the set without.
 */
final class ExplanationSearch {
  static final int MOST_REFERENCES = 12;

  /**
   * Sets whose cost differs by no more than this are called equally good: the worse is then at
   * least a seventh as likely as the better.
   */
  static final double EQUALLY_GOOD = 2;

  private final LaneSignature unknown;
  private final MatchSettings settings;
  private final List<ReferenceFit> fits;
  private final List<ReferenceSet> ranked;

  ExplanationSearch(LaneSignature unknown, List<LaneSignature> references, MatchSettings settings) {
    this.unknown = unknown;
    this.settings = settings;
    this.fits =
        references.stream()
            .map(reference -> ReferenceFit.of(reference, unknown, settings))
            .toList();
    this.ranked = rank();
  }

  private List<ReferenceSet> rank() {
    List<ReferenceFit> possible = mostSaving(possible());
    List<ReferenceSet> sets = new ArrayList<>();
    for (int bits = 0; bits < 1 << possible.size(); bits++) {
      List<ReferenceFit> chosen = new ArrayList<>();
      for (int i = 0; i < possible.size(); i++) {
        if ((bits >> i & 1) == 1) {
          chosen.add(possible.get(i));
        }
      }
      ReferenceSet set = ReferenceSet.of(chosen, unknown, settings);
      if (set.needsAll(unknown)) {
        sets.add(set);
      }
    }
    sets.sort(Comparator.comparingDouble(ReferenceSet::cost));
    return sets;
  }

  /** References that may be in the unknown; of repeats of one reference the one that fits best. */
  private List<ReferenceFit> possible() {
    Map<String, ReferenceFit> byName = new LinkedHashMap<>();
    for (ReferenceFit fit : fits) {
      if (fit.isPossible() || fit.mayHide()) {
        byName.merge(fit.reference().name(), fit, (a, b) -> saving(b) > saving(a) ? b : a);
      }
    }
    return List.copyOf(byName.values());
  }

  private List<ReferenceFit> mostSaving(List<ReferenceFit> possible) {
    if (possible.size() <= MOST_REFERENCES) {
      return possible;
    }
    List<ReferenceFit> best = new ArrayList<>(possible);
    best.sort(Comparator.comparingDouble(fit -> -saving(fit)));
    List<ReferenceFit> kept = best.subList(0, MOST_REFERENCES);
    return possible.stream().filter(kept::contains).toList();
  }

  /** How much cheaper the unknown becomes by one reference. */
  private double saving(ReferenceFit fit) {
    return -ReferenceSet.of(List.of(fit), unknown, settings).cost();
  }

  /** All references, as they fit by themselves. */
  List<ReferenceFit> fits() {
    return fits;
  }

  ReferenceSet best() {
    return ranked.get(0);
  }

  /**
   * The best set and those that are as good. The empty set is only ever the best; of two sets one
   * of which holds the other, only the better is given: they are no alternatives.
   */
  List<ReferenceSet> equallyGood() {
    List<ReferenceSet> good = new ArrayList<>();
    for (ReferenceSet set : ranked) {
      boolean isNew = good.stream().noneMatch(other -> areNested(set, other));
      if (good.isEmpty() || (set.cost() <= best().cost() + EQUALLY_GOOD && isNew)) {
        good.add(set);
      }
    }
    return good;
  }

  private static boolean areNested(ReferenceSet first, ReferenceSet second) {
    return first.names().containsAll(second.names()) || second.names().containsAll(first.names());
  }

  /** Says whether a reference is in one of the equally good sets. */
  boolean isUsed(ReferenceFit fit) {
    return equallyGood().stream().anyMatch(set -> set.names().contains(fit.reference().name()));
  }

  /** The sets that are worse, best first; the empty set among them. */
  List<ReferenceSet> others() {
    List<ReferenceSet> good = equallyGood();
    return ranked.stream().filter(set -> !good.contains(set)).toList();
  }

  /** Probability of a set among all that were tried, if each was as likely beforehand. */
  double probability(ReferenceSet set) {
    double sum = 0;
    for (ReferenceSet other : ranked) {
      sum += StrictMath.exp(best().cost() - other.cost());
    }
    return StrictMath.exp(best().cost() - set.cost()) / sum;
  }
}
