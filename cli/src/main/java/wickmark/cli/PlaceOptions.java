package wickmark.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import wickmark.cli.measuring.OptionText;
import wickmark.imaging.ReadingRequest.SaidLines;
import wickmark.imaging.ReadingRequest.SaidStrip;
import wickmark.imaging.photo.PhotoPoint;

/** Places in the picture as the person says them; each replaces the search for that part only. */
final class PlaceOptions {
  @Option(
      names = "--bottom",
      paramLabel = "up|down|left|right",
      description = "The strip's baseline end lies towards this side of the picture.")
  @Nullable String bottom;

  @Option(
      names = "--corners",
      paramLabel = "X1,Y1,X2,Y2,X3,Y3,X4,Y4",
      description = "The strip's four corners, in order round the strip.")
  @Nullable String corners;

  @Option(
      names = "--baseline",
      paramLabel = "X1,Y1,X2,Y2",
      description = "Two points of the baseline.")
  @Nullable String baseline;

  @Option(
      names = "--front",
      paramLabel = "X1,Y1,X2,Y2",
      description = "Two points of the solvent front.")
  @Nullable String front;

  @Option(
      names = "--ignore",
      paramLabel = "X1,Y1,X2,Y2",
      description = "Two opposite corners of an area to leave out. May be given several times.")
  List<String> ignored = List.of();

  /**
   * Returns what was said of the strip's place.
   *
   * @throws IllegalArgumentException if a value makes no sense
   */
  SaidStrip strip() {
    return new SaidStrip(
        Optional.ofNullable(corners).map(OptionText::corners).orElse(List.of()),
        Optional.ofNullable(bottom).map(OptionText::bottom),
        ignored.stream().map(OptionText::area).toList());
  }

  /**
   * Returns what was said of the lines.
   *
   * @throws IllegalArgumentException if a value makes no sense
   */
  SaidLines lines(Map<String, PhotoPoint> origins) {
    return new SaidLines(
        Optional.ofNullable(baseline).map(OptionText::segment),
        Optional.ofNullable(front).map(OptionText::segment),
        origins);
  }

  /** Returns whether anything was said that holds for one picture only. */
  boolean isEmpty() {
    return bottom == null
        && corners == null
        && baseline == null
        && front == null
        && ignored.isEmpty();
  }
}
