package wickmark.core.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import wickmark.core.uncertainty.Decimals;

/** Says in words what a search has found, so that a student understands it. */
final class MatchSentences {
  private final LaneSignature unknown;
  private final ExplanationSearch search;
  private final MatchSettings settings;

  MatchSentences(LaneSignature unknown, ExplanationSearch search, MatchSettings settings) {
    this.unknown = unknown;
    this.search = search;
    this.settings = settings;
  }

  /**
   * All sentences.
   *
   * @param hidden dyes that may lie within spots which are explained without them
   * @param stayed what stayed at the origin, here and of a reference
   */
  List<String> findings(List<UnknownReading.HiddenDye> hidden, List<UnknownReading.Match> stayed) {
    List<String> findings = new ArrayList<>();
    findings.add(main(!stayed.isEmpty()));
    stayed.stream().map(this::hasStayed).forEach(findings::add);
    findings.addAll(blends());
    findings.addAll(unexplained());
    hidden.stream().map(this::mayHide).forEach(findings::add);
    findings.addAll(notNeeded(hidden.stream().map(UnknownReading.HiddenDye::reference).toList()));
    search.best().fits().stream()
        .map(this::tooPale)
        .flatMap(Optional::stream)
        .forEach(findings::add);
    next().ifPresent(findings::add);
    if (!search.best().fits().isEmpty()) {
      findings.add(
          "One solvent cannot tell apart dyes that travel alike: the same colour at the same Rf is "
              + "no proof that it is the same dye.");
    }
    return findings;
  }

  private String main(boolean someStayed) {
    String name = unknown.name();
    if (unknown.moved().isEmpty()) {
      return "Lane " + name + " has no spot that could be compared.";
    }
    if (search.best().fits().isEmpty()) {
      return search.fits().isEmpty()
          ? "There is no reference on this strip to compare " + name + " with."
          : "No reference explains " + name + ": none has all of its spots in it.";
    }
    List<ReferenceSet> good = search.equallyGood();
    if (good.size() > 1) {
      List<String> sets = good.stream().map(set -> words(set.names(), "and")).toList();
      return name
          + " can be explained in more than one way, equally well: "
          + String.join("; or ", sets)
          + ". This strip cannot tell which.";
    }
    List<String> names = search.best().names();
    boolean isAll = search.best().unexplained().isEmpty();
    String what =
        !isAll
            ? words(names, "and") + " together with something else"
            : names.size() == 1 && !someStayed ? names.get(0) + " alone" : words(names, "and");
    return name
        + " is consistent with "
        + what
        + ". Every spot of "
        + (names.size() == 1 ? "it" : "these")
        + (hasPale() ? " that is strong enough to be seen" : "")
        + " has a counterpart in "
        + name
        + ", in Rf and in colour.";
  }

  private boolean hasPale() {
    return search.best().fits().stream().anyMatch(fit -> !search.best().missing(fit).isEmpty());
  }

  private List<String> blends() {
    return search.best().blends().stream()
        .map(
            blend ->
                "Spot "
                    + blend.unknown().number()
                    + " of "
                    + unknown.name()
                    + " looks like two that ran into one: "
                    + spotOf(blend.first())
                    + " and "
                    + spotOf(blend.second())
                    + " together give its colour.")
        .toList();
  }

  private String spotOf(SpotSignature spot) {
    String owner =
        search.best().fits().stream()
            .filter(fit -> ReferenceSet.isOf(fit, spot))
            .map(fit -> fit.reference().name())
            .findFirst()
            .orElse("");
    return "spot " + spot.number() + " of " + owner + " (" + SpotWords.look(spot) + ")";
  }

  private List<String> unexplained() {
    List<String> sentences = new ArrayList<>();
    if (search.fits().isEmpty()) {
      return sentences;
    }
    for (SpotSignature spot : search.best().unexplained()) {
      sentences.add(
          "Spot "
              + spot.number()
              + " of "
              + unknown.name()
              + " ("
              + SpotWords.look(spot)
              + ") is not explained: "
              + whyNot(spot));
    }
    return sentences;
  }

  /** Why no reference accounts for a spot: what is nearest to it. */
  private String whyNot(SpotSignature spot) {
    SpotPair nearest = null;
    ReferenceFit owner = null;
    for (ReferenceFit fit : search.fits()) {
      for (SpotSignature own : fit.reference().moved()) {
        SpotPair pair = SpotPair.of(spot, own, settings);
        boolean tells = pair.fitsInRf() || pair.isOfOneName();
        if (tells && (nearest == null || pair.cost() < nearest.cost())) {
          nearest = pair;
          owner = fit;
        }
      }
    }
    if (nearest == null || owner == null) {
      return "no reference has such a dye.";
    }
    String where = "spot " + nearest.reference().number() + " of " + owner.reference().name();
    if (nearest.fits()) {
      return owner.isPossible()
          ? where + " would fit, but has a better counterpart."
          : where + " would fit, but not every spot of that reference is here.";
    }
    if (nearest.fitsInRf()) {
      return where
          + " travels as far but is of another colour ("
          + SpotWords.colours(nearest)
          + ").";
    }
    return where
        + " has the colour but travels to Rf "
        + nearest.reference().rf().text()
        + ", not "
        + spot.rf().text()
        + ".";
  }

  private String hasStayed(UnknownReading.Match match) {
    return "What stayed at the origin of "
        + unknown.name()
        + " has the colour of "
        + match.reference()
        + ", all of which stayed: consistent with "
        + match.reference()
        + ", but what this solvent does not move it cannot tell apart.";
  }

  private String mayHide(UnknownReading.HiddenDye dye) {
    return dye.reference()
        + " cannot be ruled out: its spot "
        + dye.referenceSpot()
        + " (Rf "
        + Decimals.text(dye.rf(), 2)
        + ") lies within spot "
        + dye.unknownSpot()
        + " of "
        + unknown.name()
        + ", which has its colour and is longer than one dye's.";
  }

  /** References that fit but add nothing to the explanation, and of which nothing else is said. */
  private List<String> notNeeded(List<String> saidAlready) {
    List<String> sentences = new ArrayList<>();
    if (search.best().fits().isEmpty()) {
      return sentences;
    }
    for (String name : namesOf(search.fits().stream().filter(this::isNotNeeded).toList())) {
      if (!saidAlready.contains(name)) {
        sentences.add(
            name
                + " cannot be ruled out: all its spots coincide with spots that are explained "
                + "without it.");
      }
    }
    return sentences;
  }

  private boolean isNotNeeded(ReferenceFit fit) {
    return fit.isPossible() && fit.missing().isEmpty() && !search.isUsed(fit) && isCovered(fit);
  }

  private boolean isCovered(ReferenceFit fit) {
    return fit.pairs().stream()
        .allMatch(pair -> search.best().fits().stream().anyMatch(f -> f.explains(pair.unknown())));
  }

  private Optional<String> tooPale(ReferenceFit fit) {
    List<SpotSignature> missing = search.best().missing(fit);
    if (missing.isEmpty()) {
      return Optional.empty();
    }
    List<String> spots = missing.stream().map(SpotWords::look).toList();
    return Optional.of(
        "Of "
            + fit.reference().name()
            + " no counterpart was seen of "
            + words(spots, "and")
            + ": so little of it would be in "
            + unknown.name()
            + " that it may be too pale to see.");
  }

  private Optional<String> next() {
    List<ReferenceSet> others =
        search.others().stream().filter(set -> !set.fits().isEmpty()).toList();
    if (search.best().fits().isEmpty() || others.isEmpty()) {
      return Optional.empty();
    }
    double times = StrictMath.exp(others.get(0).cost() - search.best().cost());
    String figure = times > 1000 ? "more than 1000" : "about " + Decimals.text(times, 0);
    return Optional.of(
        "The next best explanation, "
            + words(others.get(0).names(), "and")
            + ", is "
            + figure
            + " times less likely.");
  }

  static String ofShortRun(LaneSignature unknown, ShortRun run) {
    boolean isShorter = run.factor() < 1;
    return "In lane "
        + unknown.name()
        + " the colours of "
        + words(run.set().names(), "and")
        + " come back, but all its distances are "
        + (isShorter ? "shorter" : "longer")
        + " by the same factor, "
        + Decimals.text(run.factor(), 2)
        + ": the lane seems to have run "
        + (isShorter ? "short" : "too far")
        + ". No match is claimed; run it again beside the references.";
  }

  private static List<String> namesOf(List<ReferenceFit> fits) {
    return List.copyOf(new TreeSet<>(fits.stream().map(fit -> fit.reference().name()).toList()));
  }

  private static String words(List<String> words, String last) {
    if (words.size() == 1) {
      return words.get(0);
    }
    return String.join(", ", words.subList(0, words.size() - 1))
        + " "
        + last
        + " "
        + words.get(words.size() - 1);
  }
}
