package wickmark.imaging;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import wickmark.imaging.photo.PhotoArea;
import wickmark.imaging.photo.PhotoPoint;

/**
 * What the person says about a picture. What is said replaces the search for that part only.
 *
 * @param laneNames from left to right with the baseline at the bottom; empty for 1, 2, 3 …
 * @param unknowns names of the lanes to explain
 * @param laneCount how many lanes there are, where names do not say it
 * @param scale the scale, if said
 * @param strip what is said of the strip's place
 * @param lines what is said of baseline, front and origins
 * @param spots what is said of single spots
 */
public record ReadingRequest(
    List<String> laneNames,
    Set<String> unknowns,
    OptionalInt laneCount,
    Optional<SaidScale> scale,
    SaidStrip strip,
    SaidLines lines,
    List<SaidSpot> spots) {

  public ReadingRequest {
    laneNames = List.copyOf(laneNames);
    unknowns = Set.copyOf(unknowns);
    spots = List.copyOf(spots);
  }

  /** Nothing said of single spots. */
  public ReadingRequest(
      List<String> laneNames,
      Set<String> unknowns,
      OptionalInt laneCount,
      Optional<SaidScale> scale,
      SaidStrip strip,
      SaidLines lines) {
    this(laneNames, unknowns, laneCount, scale, strip, lines, List.of());
  }

  /** The same with something said of single spots. */
  public ReadingRequest withSpots(List<SaidSpot> said) {
    return new ReadingRequest(laneNames, unknowns, laneCount, scale, strip, lines, said);
  }

  /** Nothing said. */
  public static ReadingRequest nothing() {
    return new ReadingRequest(
        List.of(),
        Set.of(),
        OptionalInt.empty(),
        Optional.empty(),
        SaidStrip.nothing(),
        SaidLines.nothing());
  }

  /** How many lanes the person speaks of. */
  public OptionalInt lanes() {
    return laneNames.isEmpty() ? laneCount : OptionalInt.of(laneNames.size());
  }

  /** A scale that the person says. */
  public sealed interface SaidScale {
    /** Dots per inch of a scan. */
    record Dpi(double dpi) implements SaidScale {}

    /** The strip's true width. */
    record StripWidth(double mm) implements SaidScale {}

    /** The strip's true height. */
    record StripHeight(double mm) implements SaidScale {}

    /** Both, from which the view can be checked too. */
    record StripSize(double widthMm, double heightMm) implements SaidScale {}

    /** What the printed card's bar of 100 mm measures on the print. */
    record Print(double barMm) implements SaidScale {}

    /** Two places of the picture, on the plane of the paper, and the true distance between them. */
    record Span(PhotoPoint from, PhotoPoint to, double mm) implements SaidScale {}
  }

  /** Which way the strip's bottom points in the picture. */
  public enum Bottom {
    UP,
    DOWN,
    LEFT,
    RIGHT
  }

  /** A part of the picture to leave out, in photo pixels. */
  public record Area(PhotoPoint from, PhotoPoint to) {
    PhotoArea inPhoto() {
      return PhotoArea.between(from, to);
    }
  }

  /** A line by two of its points. */
  public record Segment(PhotoPoint from, PhotoPoint to) {}

  /**
   * The strip's place.
   *
   * @param corners four, in any order around it; or none
   */
  public record SaidStrip(List<PhotoPoint> corners, Optional<Bottom> bottom, List<Area> ignored) {
    public SaidStrip {
      corners = List.copyOf(corners);
      ignored = List.copyOf(ignored);
      if (!corners.isEmpty() && corners.size() != 4) {
        throw new IllegalArgumentException("a strip has four corners, got " + corners.size());
      }
    }

    List<PhotoArea> ignoredAreas() {
      return ignored.stream().map(Area::inPhoto).toList();
    }

    static SaidStrip nothing() {
      return new SaidStrip(List.of(), Optional.empty(), List.of());
    }
  }

  /** What is said of one spot. */
  public sealed interface SaidSpot {
    /** Where it is, or where the one was found that is meant. */
    PhotoPoint place();

    /** A spot that was not found: its centre, and the lane it belongs to. */
    record Added(String lane, PhotoPoint place) implements SaidSpot {}

    /** A spot that was found at one place has its centre at another. */
    record Moved(String lane, PhotoPoint found, PhotoPoint place) implements SaidSpot {}

    /** What was found at a place is no spot. */
    record Removed(PhotoPoint place) implements SaidSpot {}
  }

  /** The lines, and lanes' places on the baseline by name. */
  public record SaidLines(
      Optional<Segment> baseline, Optional<Segment> front, Map<String, PhotoPoint> origins) {
    public SaidLines {
      origins = Map.copyOf(origins);
    }

    static SaidLines nothing() {
      return new SaidLines(Optional.empty(), Optional.empty(), Map.of());
    }
  }
}
