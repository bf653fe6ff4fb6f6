package wickmark.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import wickmark.cli.measuring.StraightPicture;
import wickmark.core.chromatogram.LaneEvidence;
import wickmark.core.chromatogram.SpotEvidence;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.core.chromatogram.StripEvidence;
import wickmark.core.colour.ColourName;
import wickmark.core.record.RunRecord;
import wickmark.core.uncertainty.Decimals;
import wickmark.imaging.StraightLayout;
import wickmark.imaging.photo.PhotoPoint;

/**
 * What the page's script needs to measure again when something is moved: the component names are
 * the names in its JSON. Places are pixels of the straightened picture; those of the photo say so.
 *
 * @param width of the straightened picture
 * @param height of the straightened picture
 * @param centre which point of a spot its Rf is of
 */
record EditData(
    RunRecord.Photo photo,
    int number,
    int of,
    List<List<Double>> cornersPx,
    Map<String, Object> settings,
    String centre,
    boolean millimetres,
    int width,
    int height,
    double pixelsPerMm,
    double unitsPerPixel,
    StraightLayout.Course baseline,
    StraightLayout.Course front,
    StraightLayout.Hand hand,
    StripEvidence.SharedUncertainties shared,
    List<Lane> lanes,
    Grid grid) {

  private static final String CENTROID = "centroid";

  /** A photo's pixel and a straightened one's are known no better. */
  private static final int PLACE_DECIMALS = 2;

  private static final int SPOT_DECIMALS = 4;
  private static final int UNCERTAINTY_DECIMALS = 7;

  /** A lane, with everything found in it. */
  record Lane(
      String name,
      String role,
      double originX,
      double baselineU,
      double frontU,
      List<Spot> spots) {}

  /** A spot; its uncertainties are standard ones in the strip's unit of length. */
  record Spot(
      double x,
      double y,
      double top,
      double bottom,
      double densestX,
      double densestY,
      double u,
      double uMiddle,
      double uDensest,
      String colour,
      List<String> flags) {}

  /** Places of the photo over an even grid: x and y in turn, row by row. */
  record Grid(int columns, int rows, List<Double> xy) {}

  static EditData of(RunRecord record, StraightPicture straightened, StripNumber number) {
    StraightLayout layout = straightened.layout();
    StripEvidence evidence = straightened.evidence();
    List<Lane> lanes = new ArrayList<>();
    for (int k = 0; k < layout.lanes().size(); k++) {
      lanes.add(lane(evidence.lanes().get(k), layout.lanes().get(k)));
    }
    return new EditData(
        record.photo(),
        number.number(),
        number.of(),
        record.strip().cornersPx(),
        record.settings(),
        String.valueOf(record.settings().getOrDefault("spotCentre", CENTROID)),
        evidence.lengthsAreMillimetres(),
        straightened.picture().widthPx(),
        straightened.picture().heightPx(),
        straightened.pixelsPerMm(),
        layout.unitsPerPixel(),
        layout.baseline(),
        layout.front(),
        layout.hand(),
        evidence.uncertainties(),
        lanes,
        grid(layout.photo()));
  }

  private static Lane lane(LaneEvidence lane, StraightLayout.Lane layout) {
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < layout.spots().size(); i++) {
      spots.add(spot(lane.spots().get(i), layout.spots().get(i)));
    }
    return new Lane(
        lane.name(),
        lane.role().word(),
        Decimals.rounded(layout.originX(), SPOT_DECIMALS),
        uncertainty(lane.baseline().standardUncertainty()),
        uncertainty(lane.front().standardUncertainty()),
        spots);
  }

  private static Spot spot(SpotEvidence spot, StraightLayout.Spot layout) {
    return new Spot(
        Decimals.rounded(layout.x(), SPOT_DECIMALS),
        Decimals.rounded(layout.y(), SPOT_DECIMALS),
        layout.top(),
        layout.bottom(),
        layout.densestX(),
        layout.densestY(),
        uncertainty(spot.centroid().standardUncertainty()),
        uncertainty(spot.middle().standardUncertainty()),
        uncertainty(spot.densest().standardUncertainty()),
        ColourName.of(spot.look().colour()).word(),
        spot.flags().stream().map(SpotFlag::word).toList());
  }

  private static double uncertainty(double value) {
    return Decimals.rounded(value, UNCERTAINTY_DECIMALS);
  }

  private static Grid grid(StraightLayout.Grid grid) {
    List<Double> xy = new ArrayList<>();
    for (PhotoPoint place : grid.places()) {
      xy.add(Decimals.rounded(place.x(), PLACE_DECIMALS));
      xy.add(Decimals.rounded(place.y(), PLACE_DECIMALS));
    }
    return new Grid(grid.columns(), grid.rows(), xy);
  }
}
