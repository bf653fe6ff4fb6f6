package wickmark.imaging.spot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
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

  private final DensityMap map;
  private final FittedLine baseline;
  private final FittedLine front;
  private final DyeMap dye;
  private final OriginZone zone;

  private SpotFinder(
      DensityMap map, FittedLine baseline, FittedLine front, DyeMap dye, OriginZone zone) {
    this.map = map;
    this.baseline = baseline;
    this.front = front;
    this.dye = dye;
    this.zone = zone;
  }

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
    return new SpotFinder(map, baseline, front, dye, zone).in(lanes);
  }

  private List<List<SpotRegion>> in(List<LaneTrack> lanes) {
    LaneStain stain = LaneStain.of(dye, lanes, map.cellsPerMm());
    List<Dyed> dyed = each(lanes, k -> dyed(lanes.get(k), stain.cells(k)));
    List<LanePeaks> peaks = dyed.stream().map(Dyed::peaks).toList();
    OriginStain stayed = new OriginStain(map, dye.density(), baseline);
    return each(
        lanes,
        k -> {
          List<SpotRegion> moved = measured(dyed.get(k), TwinPeaks.in(peaks, k));
          // Ink that ran from the line stains all origins.
          return zone.ran() ? moved : with(moved, stayed.of(lanes.get(k)));
        });
  }

  private static <T> List<T> each(List<LaneTrack> lanes, IntFunction<T> of) {
    return IntStream.range(0, lanes.size()).parallel().mapToObj(of).toList();
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

  /**
   * A lane's stained cells and the peaks that were fitted to them.
   *
   * @param density red, green and blue, without the streaks that the dyes left on their way
   */
  private record Dyed(int[] cells, Raster[] density, LanePeaks peaks) {}

  private Dyed dyed(LaneTrack lane, int[] cells) {
    double mm = map.cellsPerMm();
    double run = (baseline.at(lane.originX()) - front.at(lane.originX())) / mm;
    Raster[] density = dye.density();
    LaneProfile profile = profile(density, cells, run);
    PeakFit fit = PeakSearch.find(profile);
    if (!fit.shapes().isEmpty()) {
      Raster[] clear =
          StreakBand.removed(
              new StreakBand.Lane(baseline, lane.originX(), cells, dye.mask(), mm),
              density,
              fit,
              profile);
      if (clear != density) {
        density = clear;
        profile = profile(density, cells, run);
        fit = PeakSearch.find(profile);
      }
    }
    return new Dyed(cells, density, new LanePeaks(profile, fit, run));
  }

  private LaneProfile profile(Raster[] density, int[] cells, double run) {
    return LaneProfile.of(map, density, baseline, cells, zone.heightMm(), run + BEYOND_MM);
  }

  private List<SpotRegion> measured(Dyed lane, Optional<TwinPeaks> twins) {
    PeakFit fit = twins.map(TwinPeaks::fit).orElse(lane.peaks().fit());
    if (fit.shapes().isEmpty()) {
      return List.of();
    }
    List<SpotRegion> found = new ArrayList<>();
    SpotMeasurer measurer =
        new SpotMeasurer(
            map, baseline, front, dye.noise(), lane.density(), zone, lane.cells(), fit);
    for (SpotPeaks peaks : SpotPeaks.of(fit, new PeakParting(lane.peaks().profile(), twins))) {
      SpotRegion spot = measurer.measure(peaks);
      if (spot != null) {
        found.add(spot);
      }
    }
    found.sort(Comparator.comparingDouble(s -> s.centroid().y()));
    return found;
  }
}
