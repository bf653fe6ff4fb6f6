package wickmark.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import wickmark.cli.measuring.OptionText;
import wickmark.imaging.ReadingRequest.SaidScale;

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

  @Option(
      names = "--printed-length",
      paramLabel = "MM",
      description =
          "The bar of 100 mm on the printed card (wickmark card) measures MM millimetres on the"
              + " print.")
  @Nullable Double printedLength;

  private Optional<SaidScale> size() {
    if (stripWidth != null && stripHeight != null) {
      return Optional.of(
          new SaidScale.StripSize(
              OptionText.positive("--strip-width", stripWidth),
              OptionText.positive("--strip-height", stripHeight)));
    }
    if (stripWidth != null) {
      return Optional.of(
          new SaidScale.StripWidth(OptionText.positive("--strip-width", stripWidth)));
    }
    return Optional.ofNullable(stripHeight)
        .map(mm -> new SaidScale.StripHeight(OptionText.positive("--strip-height", mm)));
  }

  /**
   * Returns the scale that was said.
   *
   * @throws IllegalArgumentException if more than one was said, or one makes no sense
   */
  Optional<SaidScale> said() {
    List<SaidScale> said = new ArrayList<>();
    if (dpi != null) {
      said.add(new SaidScale.Dpi(OptionText.positive("--dpi", dpi)));
    }
    size().ifPresent(said::add);
    if (span != null) {
      said.add(OptionText.span(span));
    }
    if (printedLength != null) {
      said.add(new SaidScale.Print(OptionText.printedLength(printedLength)));
    }
    if (said.size() > 1) {
      throw new IllegalArgumentException(
          "say the scale in one way only: --dpi, the strip's size (--strip-width, --strip-height or"
              + " both), --span, or --printed-length of the card");
    }
    return said.stream().findFirst();
  }
}
