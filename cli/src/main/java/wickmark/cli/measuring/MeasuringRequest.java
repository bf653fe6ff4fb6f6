package wickmark.cli.measuring;

import wickmark.core.chromatogram.SpotCentre;
import wickmark.core.match.MatchSettings;
import wickmark.imaging.ReadingRequest;

/**
 * All that the person says of a measurement.
 *
 * @param reading what is said of the picture
 * @param centre which point of a spot its Rf is of
 * @param matching when two spots count as alike
 */
public record MeasuringRequest(ReadingRequest reading, SpotCentre centre, MatchSettings matching) {

  /** Returns a request with the usual centre and the usual tolerances. */
  public static MeasuringRequest of(ReadingRequest reading) {
    return new MeasuringRequest(reading, SpotCentre.CENTROID, MatchSettings.defaults());
  }

  /** Returns the request with other tolerances, in Rf and in CIEDE2000. */
  public MeasuringRequest withTolerances(double rf, double colour) {
    return new MeasuringRequest(
        reading, centre, new MatchSettings(rf, colour, matching.detectionLimit()));
  }

  /** Returns the request with another centre. */
  public MeasuringRequest withCentre(SpotCentre other) {
    return new MeasuringRequest(reading, other, matching);
  }
}
