package wickmark.cli;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import wickmark.cli.measuring.OptionText;
import wickmark.cli.measuring.SaidPlaces;

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
   * Returns what was said.
   *
   * @throws IllegalArgumentException if a value makes no sense
   */
  SaidPlaces said() {
    return new SaidPlaces(
        optional(bottom).map(OptionText::bottomEnd),
        optional(corners).map(OptionText::corners).orElse(List.of()),
        optional(baseline).map(OptionText::line),
        optional(front).map(OptionText::line),
        ignored.stream().map(OptionText::line).toList());
  }

  private static Optional<String> optional(@Nullable String value) {
    return Optional.ofNullable(value);
  }
}
