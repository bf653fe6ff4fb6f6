package wickmark.core.chromatogram;

import wickmark.core.rf.RetardationFactor;
import wickmark.core.uncertainty.Measured;
import wickmark.core.uncertainty.UncertaintyBudget;

/**
 * One separated spot.
 *
 * @param number 1 is the one nearest the front
 * @param evidenceIndex its place in {@link LaneEvidence#spots}, from 0
 * @param evidence what was found of it
 * @param distances from the baseline, in the strip's unit of length
 * @param factors Rf by each definition of the centre
 * @param rfBudget where the uncertainty of Rf comes from
 * @param distanceBudget where the uncertainty of the centroid's distance comes from
 */
public record Spot(
    int number,
    int evidenceIndex,
    SpotEvidence evidence,
    Distances distances,
    Factors factors,
    UncertaintyBudget rfBudget,
    UncertaintyBudget distanceBudget) {

  /**
   * Distances from the baseline, growing towards the front, in the strip's unit of length.
   *
   * @param top the rim nearest the front
   * @param bottom the rim nearest the baseline; below 0 where the spot reaches under the line
   */
  public record Distances(
      Measured centroid, Measured middle, Measured densest, double top, double bottom) {}

  /**
   * Rf by each definition of the centre.
   *
   * @param chosen the one that counts
   */
  public record Factors(
      SpotCentre chosen,
      RetardationFactor centroid,
      RetardationFactor middle,
      RetardationFactor densest) {

    /** Returns the factor by the definition that counts. */
    public RetardationFactor counting() {
      return by(chosen);
    }

    /** Returns the factor by a definition. */
    public RetardationFactor by(SpotCentre centre) {
      return switch (centre) {
        case CENTROID -> centroid;
        case MIDDLE -> middle;
        case DENSEST -> densest;
      };
    }
  }

  /** Returns the Rf that counts. */
  public RetardationFactor rf() {
    return factors.counting();
  }
}
