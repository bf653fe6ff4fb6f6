package wickmark.testdata.truth;

import java.util.List;

/**
 * One spot.
 *
 * @param number counted from the baseline up, from 1
 * @param dye name of its dye
 * @param residue whether it is dye that never left the origin, and not a spot
 * @param flags "tailing", "overlapped", "at_front", "at_origin", "crescent", "overloaded"
 */
public record SpotTruth(
    int number, String dye, boolean residue, List<String> flags, Where where, SpotLook look) {
  public SpotTruth {
    flags = List.copyOf(flags);
  }

  /** Centre and extent together. */
  public record Where(SpotPlace place, SpotExtent extent, double middleRf) {}

  public double rf() {
    return where.place().rf();
  }

  public double distanceMm() {
    return where.place().distanceMm();
  }

  /** Returns the Rf of the middle of the visible extent. */
  public double middleRf() {
    return where.middleRf();
  }

  public SpotExtent extent() {
    return where.extent();
  }

  public PointMm centroid() {
    return where.place().centroid();
  }
}
