package wickmark.core.chromatogram;

import wickmark.core.rf.RetardationFactor;
import wickmark.core.uncertainty.Measured;
import wickmark.core.uncertainty.UncertaintyBudget;

/**
 * Turns places along one lane into distances and Rf with their uncertainties.
 *
 * <p>With s, b, f the places of spot, baseline and front, L = f − b and R = (s − b)/L, the place of
 * the baseline enters both distances, so that
 *
 * <pre>  u(R)² = [u(s)² + R² u(f)² + (1 − R)² u(b)²] / L²</pre>
 *
 * (JCGM 100:2008, 5.1.2, with s, b and f independent). The scale cancels. Straightening adds q R (1
 * − R). Paper that does not lie flat stretches at random along the lane, which leaves a place
 * between the two lines uncertain like a bridge held at both ends: 2 h √(R (1 − R)) / L, h being
 * the uncertainty halfway.
 */
final class LaneRuler {
  private final Place baseline;
  private final Place front;
  private final StripEvidence.SharedUncertainties shared;

  LaneRuler(LaneEvidence lane, StripEvidence.SharedUncertainties shared) {
    this.baseline = lane.baseline();
    this.front = lane.front();
    this.shared = shared;
  }

  double length() {
    return front.along() - baseline.along();
  }

  /** The part of the front's distance at which a place lies, clamped to 0 to 1. */
  double part(Place place) {
    return Math.max(0, Math.min(1, (place.along() - baseline.along()) / length()));
  }

  UncertaintyBudget rfBudget(Place spot) {
    double part = part(spot);
    return UncertaintyBudget.builder()
        .add(UncertaintySource.SPOT.words(), 1 / length(), spot.standardUncertainty())
        .add(UncertaintySource.FRONT.words(), -part / length(), front.standardUncertainty())
        .add(
            UncertaintySource.BASELINE.words(),
            -(1 - part) / length(),
            baseline.standardUncertainty())
        .add(UncertaintySource.STRAIGHTENING.words(), part * (1 - part), shared.straightening())
        .add(
            UncertaintySource.FLATNESS.words(),
            2 * StrictMath.sqrt(part * (1 - part)) / length(),
            shared.flatness())
        .build();
  }

  RetardationFactor factor(Place spot) {
    return new RetardationFactor(part(spot), rfBudget(spot).combined());
  }

  /** The budget of a distance from the baseline, for a spot or, at the lane's length, the front. */
  UncertaintyBudget distanceBudget(UncertaintySource what, Place place) {
    double part = part(place);
    double distance = place.along() - baseline.along();
    return UncertaintyBudget.builder()
        .add(what.words(), 1, place.standardUncertainty())
        .add(UncertaintySource.BASELINE.words(), -1, baseline.standardUncertainty())
        .add(UncertaintySource.SCALE.words(), distance, shared.relativeScale())
        .add(UncertaintySource.STRAIGHTENING.words(), distance * (1 - part), shared.straightening())
        .add(UncertaintySource.FLATNESS.words(), 2 * StrictMath.sqrt(part), shared.flatness())
        .build();
  }

  Measured distance(Place spot) {
    return new Measured(
        spot.along() - baseline.along(), distanceBudget(UncertaintySource.SPOT, spot).combined());
  }

  Measured frontDistance() {
    return new Measured(length(), distanceBudget(UncertaintySource.FRONT, front).combined());
  }

  double distanceOf(double along) {
    return along - baseline.along();
  }

  double beyondFront(Place place) {
    return place.along() - front.along();
  }

  double belowBaseline(Place place) {
    return baseline.along() - place.along();
  }

  /** Standard uncertainty of a place against the front, without what all places share. */
  double againstFront(Place place) {
    return StrictMath.hypot(place.standardUncertainty(), front.standardUncertainty());
  }

  double againstBaseline(Place place) {
    return StrictMath.hypot(place.standardUncertainty(), baseline.standardUncertainty());
  }
}
