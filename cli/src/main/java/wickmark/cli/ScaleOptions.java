package wickmark.cli;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import wickmark.cli.measuring.OptionText;
import wickmark.cli.measuring.SaidScale;

/** The scale as the person says it, in place of the one that is searched for. */
final class ScaleOptions {
  @Option(names = "--dpi", paramLabel = "N", description = "The scan has N dots per inch.")
  @Nullable Double dpi;

  @Option(
      names = "--strip-width",
      paramLabel = "MM",
      description = "The strip is MM millimetres wide (along the baseline).")
  @Nullable Double stripWidth;

  @Option(
      names = "--strip-height",
      paramLabel = "MM",
      description = "The strip is MM millimetres high (from its lower to its upper edge).")
  @Nullable Double stripHeight;

  @Option(
      names = "--span",
      paramLabel = "X1,Y1,X2,Y2=MM",
      description = "Two points of the picture, on the strip, lie MM millimetres apart.")
  @Nullable String span;

  /**
   * Returns the scale that was said.
   *
   * @throws IllegalArgumentException if more than one was said, or one makes no sense
   */
  Optional<SaidScale> said() {
    boolean size = stripWidth != null || stripHeight != null;
    int ways = (dpi != null ? 1 : 0) + (size ? 1 : 0) + (span != null ? 1 : 0);
    if (ways > 1) {
      throw new IllegalArgumentException(
          "say the scale in one way only: --dpi, --span, or --strip-width and --strip-height");
    }
    if (dpi != null) {
      return Optional.of(new SaidScale.DotsPerInch(dpi));
    }
    if (span != null) {
      return Optional.of(OptionText.span(span));
    }
    return size
        ? Optional.of(new SaidScale.StripSize(optional(stripWidth), optional(stripHeight)))
        : Optional.empty();
  }

  private static OptionalDouble optional(@Nullable Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
