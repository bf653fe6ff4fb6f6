package wickmark.imaging.scale;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;

/** Finds the graduated edges of rulers in a photo and numbers their marks. */
public final class RulerReader {
  /** The search runs on a picture reduced to at most this many pixels. */
  private static final double SEARCH_PIXELS = 5.3e6;

  /** Marks closer than this, in pixels, are measured at full size where there is one. */
  private static final double FINE_PITCH = 9;

  /** Groups of strokes followed at most: a picture full of texture must not take forever. */
  private static final int MOST_SEEDS = 12;

  private static final double LEAST_PITCHES = 8;

  private RulerReader() {}

  /** Returns the edges found, the surest first; none is a result, not a failure. */
  public static List<RulerEdge> read(Photo photo) {
    return read(photo, List.of());
  }

  /**
   * Returns the edges found outside the given outlines, the surest first.
   *
   * @param outlines polygons in photo pixels that hold no ruler, such as the strip
   */
  public static List<RulerEdge> read(Photo photo, List<List<PhotoPoint>> outlines) {
    int factor = 1;
    while ((double) photo.widthPx() * photo.heightPx() / (factor * factor) > SEARCH_PIXELS) {
      factor *= 2;
    }
    Luminance coarse = Luminance.reduced(photo, factor);
    List<PeriodicCell> cells = new ArrayList<>();
    for (PeriodicCell cell : new PeriodicTexture(coarse).cells()) {
      PhotoPoint at = new PhotoPoint(cell.x() * coarse.factor(), cell.y() * coarse.factor());
      if (outlines.stream().noneMatch(outline -> Polygon.holds(outline, at))) {
        cells.add(cell);
      }
    }
    List<CombTrace> traces = new ArrayList<>();
    List<RulerEdge> edges = new ArrayList<>();
    int followed = 0;
    for (CombSeed seed : SeedGrouping.seeds(cells)) {
      boolean longEnough = seed.uHigh() - seed.uLow() > LEAST_PITCHES * seed.pitchPx();
      if (!longEnough || followed >= MOST_SEEDS) {
        continue;
      }
      followed++;
      boolean fine = seed.pitchPx() < FINE_PITCH && factor > 1;
      Luminance plane = fine ? Luminance.reduced(photo, factor / 2) : coarse;
      CombSeed scaled = fine ? seed.enlarged(2) : seed;
      Optional<CombTrace> trace = CombTrace.follow(plane, scaled);
      trace.flatMap(t -> EdgeReading.read(t, plane.factor())).ifPresent(edges::add);
    }
    edges.sort(Comparator.comparingDouble(RulerEdge::confidence).reversed());
    return List.copyOf(edges);
  }
}
