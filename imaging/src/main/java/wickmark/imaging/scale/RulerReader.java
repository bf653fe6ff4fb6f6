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

  /** Confidence of an edge that makes a further search needless. */
  private static final double SURE = 0.5;

  /** A small picture is not enlarged beyond this many pixels. */
  private static final double MOST_PIXELS = 9e6;

  /** Marks closer than this, in pixels, are measured at twice the size where there is one. */
  private static final double FINE_PITCH = 9;

  /** Marks closer than this are followed there from the start. */
  private static final double TIGHT_PITCH = 5.5;

  /** Groups of strokes followed at most: a picture full of texture must not take forever. */
  private static final int MOST_SEEDS = 12;

  private static final double LEAST_PITCHES = 8;

  /** A reduced picture with a side shorter than this, in pixels, is not reduced again. */
  private static final int LEAST_SIDE = 400;

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
    List<CombTrace> known = new ArrayList<>();
    List<RulerEdge> edges = new ArrayList<>();
    Luminance plane = Luminance.reduced(photo, factor);
    collect(photo, plane, outlines, known, edges);
    // Marks too far apart for the first search, as of a ruler close to the camera.
    if (Math.min(plane.width(), plane.height()) > LEAST_SIDE) {
      collect(photo, plane.halved(), outlines, known, edges);
    }
    // Marks too close for the first search, as of a ruler far from the camera.
    boolean small = 4.0 * photo.widthPx() * photo.heightPx() < MOST_PIXELS;
    boolean sure = edges.stream().anyMatch(edge -> edge.confidence() >= SURE);
    if (!sure && (factor > 1 || small)) {
      known.clear();
      Luminance finer = factor > 1 ? Luminance.reduced(photo, factor / 2) : plane.doubled();
      collect(photo, finer, outlines, known, edges);
    }
    List<RulerEdge> compared = EdgePairs.compared(edges);
    compared.sort(
        Comparator.comparingDouble(RulerEdge::confidence)
            .thenComparingInt(edge -> edge.marks().size())
            .reversed());
    return List.copyOf(compared);
  }

  private static void collect(
      Photo photo,
      Luminance plane,
      List<List<PhotoPoint>> outlines,
      List<CombTrace> known,
      List<RulerEdge> edges) {
    int tried = 0;
    for (CombSeed seed : SeedGrouping.seeds(cells(plane, outlines))) {
      boolean longEnough = seed.uHigh() - seed.uLow() > LEAST_PITCHES * seed.pitchPx();
      if (!longEnough || tried >= MOST_SEEDS || covered(known, seed.axis(), plane.factor())) {
        continue;
      }
      tried++;
      RulerEdge best = null;
      CombTrace followed = null;
      for (CombTrace trace : follow(photo, plane, seed)) {
        Optional<RulerEdge> edge =
            covered(known, trace.middle(), trace.reduction())
                ? Optional.empty()
                : EdgeReading.read(trace);
        if (edge.isPresent() && (best == null || edge.get().confidence() > best.confidence())) {
          best = edge.get();
          followed = trace;
        }
      }
      if (best != null && followed != null) {
        edges.add(best);
        known.add(followed);
      }
    }
  }

  private static List<PeriodicCell> cells(Luminance coarse, List<List<PhotoPoint>> outlines) {
    List<PeriodicCell> cells = new ArrayList<>();
    for (PeriodicCell cell : new PeriodicTexture(coarse).cells()) {
      PhotoPoint at = new PhotoPoint(cell.x() * coarse.factor(), cell.y() * coarse.factor());
      if (outlines.stream().noneMatch(outline -> Polygon.holds(outline, at))) {
        cells.add(cell);
      }
    }
    return cells;
  }

  static List<CombTrace> follow(Photo photo, Luminance coarse, CombSeed seed) {
    if (coarse.factor() <= 1 || seed.pitchPx() > FINE_PITCH) {
      return CombFollower.follow(coarse, seed);
    }
    Luminance fine = Luminance.lazy(photo, (int) coarse.factor() / 2);
    return seed.pitchPx() > TIGHT_PITCH
        ? CombFollower.follow(coarse, seed, fine)
        : CombFollower.follow(fine, seed.enlarged(2));
  }

  private static boolean covered(List<CombTrace> known, CombSeed.Axis place, double factor) {
    return known.stream()
        .anyMatch(
            trace -> {
              double scale = factor / trace.reduction();
              return trace.covers(place.x() * scale, place.y() * scale);
            });
  }
}
