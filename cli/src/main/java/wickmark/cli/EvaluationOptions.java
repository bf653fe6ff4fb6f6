package wickmark.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.cli.measuring.OptionText;
import wickmark.imaging.ReadingRequest;

/** How the person wants spots to be measured and compared. */
final class EvaluationOptions {
  private static final double LARGEST_RF = 1;
  private static final double LARGEST_DIFFERENCE = 100;

  @Option(
      names = "--spot-centre",
      paramLabel = "centroid|middle|densest",
      description =
          "The point of a spot that its Rf is of: the balance point of its dye (without the"
              + " option), the middle of what is visible, or its densest point.")
  @Nullable String centre;

  @Option(
      names = "--tolerance-rf",
      paramLabel = "RF",
      description =
          "How far apart in Rf spots of one dye in two lanes may lie, k = 2, their uncertainties on"
              + " top (default: 0.02).")
  @Nullable Double toleranceRf;

  @Option(
      names = "--tolerance-colour",
      paramLabel = "DE",
      description =
          "How far apart in colour spots of one dye may lie at like strength, CIEDE2000, k = 2"
              + " (default: 4).")
  @Nullable Double toleranceColour;

  /**
   * Returns what was said of the picture together with what was said here.
   *
   * @throws IllegalArgumentException if a value makes no sense
   */
  MeasuringRequest of(ReadingRequest reading) {
    MeasuringRequest usual = MeasuringRequest.of(reading);
    double rf =
        toleranceRf == null
            ? usual.matching().toleranceRf()
            : OptionText.within("--tolerance-rf", toleranceRf, LARGEST_RF);
    double colour =
        toleranceColour == null
            ? usual.matching().toleranceColour()
            : OptionText.within("--tolerance-colour", toleranceColour, LARGEST_DIFFERENCE);
    MeasuringRequest said = usual.withTolerances(rf, colour);
    return centre == null ? said : said.withCentre(OptionText.spotCentre(centre));
  }
}
