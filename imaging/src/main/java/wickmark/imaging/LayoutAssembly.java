package wickmark.imaging;

import java.util.ArrayList;
import java.util.List;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.measure.StripMeasurer;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.spot.LaneDensity;
import wickmark.imaging.spot.SpotRegion;
import wickmark.imaging.straight.StripFrame;

/** Says where everything lies on the straightened picture. */
final class LayoutAssembly {
  /**
   * About 5 mm apart, so that the bend of a usual view between them is under a tenth of a pixel.
   */
  private static final double GRID_MM = 5;

  private LayoutAssembly() {}

  static StraightLayout of(
      ReadingAssembly.Straight straight,
      ReadingAssembly.Lanes lanes,
      double unitsPerCell,
      double cellsPerMm) {
    List<StraightLayout.Lane> places = new ArrayList<>();
    for (int k = 0; k < lanes.tracks().size(); k++) {
      LaneDensity density = lanes.densities().get(k);
      places.add(
          new StraightLayout.Lane(
              lanes.tracks().get(k).originX(),
              lanes.spots().get(k).stream().map(LayoutAssembly::spot).toList(),
              new StraightLayout.Density(density.start(), density.step(), density.density())));
    }
    StripFrame frame = straight.frame();
    double[] middle = {frame.width() / 2.0, frame.height() / 2.0};
    return new StraightLayout(
        unitsPerCell,
        course(straight.baseline()),
        course(straight.front()),
        places,
        grid(frame, cellsPerMm),
        new StraightLayout.Hand(
            SaidPlaces.lineUncertainty(frame, middle, cellsPerMm),
            StripMeasurer.handDefinition(cellsPerMm),
            SaidPlaces.spotUncertainty(frame, middle, cellsPerMm)));
  }

  private static StraightLayout.Spot spot(SpotRegion spot) {
    return new StraightLayout.Spot(
        spot.centroid().x(),
        spot.centroid().y(),
        spot.box().top(),
        spot.box().bottom(),
        spot.densest()[0],
        spot.densest()[1]);
  }

  private static StraightLayout.Course course(FittedLine line) {
    return new StraightLayout.Course(line.middle(), line.half(), line.coefficients());
  }

  private static StraightLayout.Grid grid(StripFrame frame, double cellsPerMm) {
    int columns = 1 + (int) Math.ceil(frame.width() / (GRID_MM * cellsPerMm));
    int rows = 1 + (int) Math.ceil(frame.height() / (GRID_MM * cellsPerMm));
    List<PhotoPoint> places = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        places.add(
            frame.toPhoto(
                frame.width() * column / (columns - 1.0), frame.height() * row / (rows - 1.0)));
      }
    }
    return new StraightLayout.Grid(columns, rows, places);
  }
}
