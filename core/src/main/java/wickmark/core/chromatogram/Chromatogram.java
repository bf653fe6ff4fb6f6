package wickmark.core.chromatogram;

import java.util.ArrayList;
import java.util.List;

/**
 * What one developed strip shows.
 *
 * @param lengthsAreMillimetres whether distances are millimetres; otherwise only Rf means something
 * @param centre which point of a spot Rf counts
 * @param lanes from left to right
 */
public record Chromatogram(
    boolean lengthsAreMillimetres, SpotCentre centre, List<Lane> lanes, List<Caution> cautions) {

  /** Keeps copies of the lists. */
  public Chromatogram {
    lanes = List.copyOf(lanes);
    cautions = List.copyOf(cautions);
  }

  /** Measures a strip: distances, Rf, their uncertainties and the cautions that go with them. */
  public static Chromatogram of(StripEvidence strip, SpotCentre centre) {
    List<Lane> lanes = new ArrayList<>();
    List<Caution> cautions = new ArrayList<>();
    for (LaneEvidence evidence : strip.lanes()) {
      LaneMeasurement lane = new LaneMeasurement(strip, evidence, centre);
      lanes.add(lane.lane());
      cautions.addAll(lane.cautions());
    }
    return new Chromatogram(strip.lengthsAreMillimetres(), centre, lanes, cautions);
  }
}
