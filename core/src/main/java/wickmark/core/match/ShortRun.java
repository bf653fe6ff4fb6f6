package wickmark.core.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickmark.core.rf.RetardationFactor;

/**
 * An unknown whose spots are those of references if all its distances are stretched by one factor:
 * its lane has run shorter (or longer) than the others.
 *
 * @param factor distances of the unknown over those of the references
 */
record ShortRun(double factor, ReferenceSet set) {

  /** A factor nearer to 1 than this is the usual spread between lanes. */
  private static final double LEAST_CHANGE = 0.06;

  private static final double SMALLEST = 0.5;
  private static final double LARGEST = 1.5;

  /** How much the one factor must save to be believed: e⁸, three thousand to one. */
  private static final double LEAST_SAVING = 8;

  /** Two spots nearer than this in Rf say little about a factor. */
  private static final double LEAST_SPAN = 0.1;

  static Optional<ShortRun> find(
      LaneSignature unknown,
      List<LaneSignature> references,
      MatchSettings settings,
      ReferenceSet asItIs) {
    ShortRun best = null;
    for (double factor : candidates(unknown, references, settings)) {
      ReferenceSet rough = explain(unknown, factor, references, settings);
      double refined = factor * meanRatio(rough);
      if (Math.abs(1 - refined) < LEAST_CHANGE) {
        continue;
      }
      ReferenceSet set = explain(unknown, refined, references, settings);
      if (set.cost() > asItIs.cost() - LEAST_SAVING || span(set) < LEAST_SPAN) {
        continue;
      }
      if (best == null || set.cost() < best.set().cost()) {
        best = new ShortRun(refined, set);
      }
    }
    return Optional.ofNullable(best);
  }

  /** The ratios of Rf of all pairs of spots of like colour, as far as they tell something. */
  private static List<Double> candidates(
      LaneSignature unknown, List<LaneSignature> references, MatchSettings settings) {
    List<Double> factors = new ArrayList<>();
    for (LaneSignature reference : references) {
      for (SpotSignature own : reference.moved()) {
        for (SpotSignature spot : unknown.moved()) {
          double factor = spot.rf().value() / own.rf().value();
          boolean tells =
              Math.abs(1 - factor) >= LEAST_CHANGE && factor >= SMALLEST && factor <= LARGEST;
          if (tells && SpotPair.of(spot, own, settings).fitsInColour()) {
            factors.add(factor);
          }
        }
      }
    }
    return factors;
  }

  private static ReferenceSet explain(
      LaneSignature unknown,
      double factor,
      List<LaneSignature> references,
      MatchSettings settings) {
    return new ExplanationSearch(stretched(unknown, factor), references, settings).best();
  }

  /** Rf of the unknown's explained spots over that of the references': sum over sum. */
  private static double meanRatio(ReferenceSet set) {
    double unknown = 0;
    double reference = 0;
    for (ReferenceFit fit : set.fits()) {
      for (SpotPair pair : fit.pairs()) {
        unknown += pair.unknown().rf().value();
        reference += pair.reference().rf().value();
      }
    }
    return reference > 0 && unknown > 0 ? unknown / reference : 1;
  }

  private static LaneSignature stretched(LaneSignature unknown, double factor) {
    List<SpotSignature> spots = new ArrayList<>();
    for (SpotSignature spot : unknown.spots()) {
      double rf = spot.rf().value() / factor;
      spots.add(
          new SpotSignature(
              spot.number(),
              new RetardationFactor(Math.min(1, rf), spot.rf().standardUncertainty() / factor),
              spot.colour(),
              spot.peakAbsorbance(),
              spot.halfHeight() / factor,
              spot.flags(),
              spot.confidence()));
    }
    return new LaneSignature(unknown.name(), unknown.role(), spots);
  }

  private static double span(ReferenceSet set) {
    double least = 1;
    double most = 0;
    for (ReferenceFit fit : set.fits()) {
      for (SpotPair pair : fit.pairs()) {
        least = Math.min(least, pair.reference().rf().value());
        most = Math.max(most, pair.reference().rf().value());
      }
    }
    return most - least;
  }
}
