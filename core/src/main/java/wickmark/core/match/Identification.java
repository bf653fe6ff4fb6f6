package wickmark.core.match;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import wickmark.core.chromatogram.Chromatogram;
import wickmark.core.chromatogram.LaneRole;

/** Explains the unknowns of a strip by its references. */
public final class Identification {
  private Identification() {}

  /** Returns a reading for each unknown, from left to right. */
  public static List<UnknownReading> of(Chromatogram strip, MatchSettings settings) {
    return of(strip.lanes().stream().map(LaneSignature::of).toList(), settings);
  }

  /** Returns a reading for each unknown, in the order of the lanes. */
  static List<UnknownReading> of(List<LaneSignature> lanes, MatchSettings settings) {
    MatchSettings learnt = Repeatability.learn(lanes, settings);
    List<LaneSignature> references = withRole(lanes, LaneRole.REFERENCE);
    List<UnknownReading> readings = new ArrayList<>();
    for (LaneSignature unknown : withRole(lanes, LaneRole.UNKNOWN)) {
      readings.add(read(unknown, references, learnt));
    }
    return readings;
  }

  private static List<LaneSignature> withRole(List<LaneSignature> lanes, LaneRole role) {
    return lanes.stream().filter(lane -> lane.role() == role).toList();
  }

  private static UnknownReading read(
      LaneSignature unknown, List<LaneSignature> references, MatchSettings settings) {
    ExplanationSearch search = new ExplanationSearch(unknown, references, settings);
    return ShortRun.find(unknown, references, settings, search.best())
        .map(run -> withoutMatch(unknown, run))
        .orElseGet(() -> withMatch(unknown, search, settings));
  }

  private static UnknownReading withoutMatch(LaneSignature unknown, ShortRun run) {
    return new UnknownReading(
        unknown.name(),
        List.of(),
        numbers(unknown.moved()),
        List.of(),
        OptionalDouble.empty(),
        OptionalDouble.of(run.factor()),
        List.of(),
        List.of(MatchSentences.ofShortRun(unknown, run)));
  }

  private static UnknownReading withMatch(
      LaneSignature unknown, ExplanationSearch search, MatchSettings settings) {
    List<UnknownReading.Match> stayed = StayedDyes.of(unknown, search, settings);
    List<UnknownReading.Explanation> explanations = new ArrayList<>();
    for (ReferenceSet set : search.equallyGood()) {
      if (!set.fits().isEmpty() || !stayed.isEmpty()) {
        explanations.add(explanation(set, stayed, search.probability(set)));
      }
    }
    List<UnknownReading.HiddenDye> hidden = new HiddenDyes(unknown, search, settings).all();
    List<String> possible =
        Stream.concat(
                hidden.stream().map(UnknownReading.HiddenDye::reference),
                stayed.stream().map(UnknownReading.Match::reference))
            .toList();
    List<UnknownReading.RuledOut> ruledOut =
        new RuledOutReasons(unknown, search, settings)
            .all().stream().filter(out -> !possible.contains(out.reference())).toList();
    return new UnknownReading(
        unknown.name(),
        explanations,
        numbers(search.best().unexplained()),
        ruledOut,
        timesLikelier(search),
        OptionalDouble.empty(),
        hidden,
        new MatchSentences(unknown, search, settings).findings(hidden, stayed));
  }

  private static UnknownReading.Explanation explanation(
      ReferenceSet set, List<UnknownReading.Match> stayed, double score) {
    List<UnknownReading.Match> matches = new ArrayList<>();
    for (ReferenceFit fit : set.fits()) {
      for (SpotPair pair : set.pairs(fit)) {
        matches.add(
            new UnknownReading.Match(
                pair.unknown().number(),
                fit.reference().name(),
                pair.reference().number(),
                pair.rfDifference(),
                pair.colourDifference()));
      }
    }
    for (Blend blend : set.blends()) {
      for (SpotSignature hidden : List.of(blend.first(), blend.second())) {
        matches.add(match(set, blend, hidden));
      }
    }
    matches.addAll(stayed);
    Set<String> names = new TreeSet<>(set.names());
    stayed.forEach(match -> names.add(match.reference()));
    return new UnknownReading.Explanation(List.copyOf(names), score, matches);
  }

  private static UnknownReading.Match match(ReferenceSet set, Blend blend, SpotSignature hidden) {
    ReferenceFit owner =
        set.fits().stream().filter(fit -> ReferenceSet.isOf(fit, hidden)).findFirst().orElseThrow();
    return new UnknownReading.Match(
        blend.unknown().number(),
        owner.reference().name(),
        hidden.number(),
        blend.unknown().rf().value() - hidden.rf().value(),
        blend.colourDifference());
  }

  private static OptionalDouble timesLikelier(ExplanationSearch search) {
    List<ReferenceSet> others = search.others();
    if (others.isEmpty()) {
      return OptionalDouble.empty();
    }
    double gap = others.get(0).cost() - search.best().cost();
    return OptionalDouble.of(StrictMath.exp(gap));
  }

  private static List<Integer> numbers(List<SpotSignature> spots) {
    return spots.stream().map(SpotSignature::number).toList();
  }
}
