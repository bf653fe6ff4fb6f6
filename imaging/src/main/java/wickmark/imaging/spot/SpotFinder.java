package wickmark.imaging.spot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wickmark.imaging.lane.DyeMap;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.lane.OriginZone;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;

/** Finds the spots of every lane. */
public final class SpotFinder {
  /** Dye stops at the front; its blur and the front's own width reach a little beyond, mm. */
  static final double BEYOND_MM = 1.5;

  private SpotFinder() {}

  /**
   * Returns the spots of each lane, those nearest the front first and what stayed at the origin
   * last.
   *
   * @param zone where no spot is looked for but one that stayed
   * @return one list for each lane, in the order of the lanes
   */
  public static List<List<SpotRegion>> find(
      DensityMap map,
      FittedLine baseline,
      FittedLine front,
      DyeMap dye,
      OriginZone zone,
      List<LaneTrack> lanes) {
    LaneStain stain = LaneStain.of(dye, lanes, map.cellsPerMm());
    OriginStain stayed = new OriginStain(map, dye.density(), baseline);
    return IntStream.range(0, lanes.size())
        .parallel()
        .mapToObj(
            k -> {
              LaneTrack lane = lanes.get(k);
              List<SpotRegion> moved =
                  inLane(map, baseline, front, dye, zone, lane, stain.cells(k));
              // Ink that ran from the line stains all origins.
              return zone.ran() ? moved : with(moved, stayed.of(lane));
            })
        .toList();
  }

  private static List<SpotRegion> with(List<SpotRegion> moved, Optional<SpotRegion> stayed) {
    if (stayed.isEmpty()) {
      return moved;
    }
    List<SpotRegion> all = new ArrayList<>(moved);
    all.removeIf(spot -> OriginStain.holds(stayed.get(), spot));
    all.add(stayed.get());
    return all;
  }

  private static List<SpotRegion> inLane(
      DensityMap map,
      FittedLine baseline,
      FittedLine front,
      DyeMap dye,
      OriginZone zone,
      LaneTrack lane,
      int[] cells) {
    if (cells.length == 0) {
      return List.of();
    }
    double mm = map.cellsPerMm();
    double run = (baseline.at(lane.originX()) - front.at(lane.originX())) / mm;
    Raster[] density = dye.density();
    LaneProfile profile =
        LaneProfile.of(map, density, baseline, cells, zone.heightMm(), run + BEYOND_MM);
    PeakFit fit = PeakSearch.find(profile);
    Raster[] clear =
        StreakBand.removed(
            new StreakBand.Lane(baseline, lane.originX(), cells, dye.mask(), mm),
            density,
            fit,
            profile);
    if (clear != density) {
      density = clear;
      profile = LaneProfile.of(map, density, baseline, cells, zone.heightMm(), run + BEYOND_MM);
      fit = PeakSearch.find(profile);
    }
    List<SpotRegion> found = new ArrayList<>();
    SpotMeasurer measurer =
        new SpotMeasurer(map, baseline, front, dye.noise(), density, zone, cells, fit);
    for (SpotPeaks peaks : SpotPeaks.of(fit, new PeakParting(profile))) {
      SpotRegion spot = measurer.measure(peaks);
      if (spot != null) {
        found.add(spot);
      }
    }
    found.sort(Comparator.comparingDouble(s -> s.centroid().y()));
    return found;
  }
}
