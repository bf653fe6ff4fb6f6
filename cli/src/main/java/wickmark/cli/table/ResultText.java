package wickmark.cli.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import wickmark.core.record.RunRecord;
import wickmark.core.rf.RetardationFactor;
import wickmark.core.uncertainty.Decimals;
import wickmark.core.uncertainty.Measured;

/** The words and numbers that screen and report share. Uncertainties are expanded ones, k = 2. */
public final class ResultText {
  private static final double KNOWN_EXACTLY = 0;

  private ResultText() {}

  /** Returns one line: lanes, spots, scale. */
  public static String overview(RunRecord record) {
    int spots = record.lanes().stream().mapToInt(lane -> lane.spots().size()).sum();
    return count(record.lanes().size(), "lane")
        + ", "
        + count(spots, "spot")
        + "; "
        + scale(record);
  }

  /** Returns how the scale was found and what it is. */
  public static String scale(RunRecord record) {
    RunRecord.Scale scale = record.scale();
    @Nullable Double millimetres = scale.millimetresPerPixel();
    if (millimetres == null) {
      return "no scale, so Rf but no millimetres";
    }
    String from =
        switch (scale.source()) {
          case "ruler" -> "scale from the ruler";
          case "card" -> "scale from the printed card";
          case "resolution" -> "scale from the scan's resolution";
          case "strip-size" -> "scale from the strip's size as told";
          case "span" -> "scale from the span as told";
          default -> "scale from " + scale.source();
        };
    return from + ", " + Decimals.text(millimetres, 4) + " mm a pixel";
  }

  /** Returns how much light of each colour the card's white sent back. */
  public static String light(RunRecord.Card card) {
    return String.format(
        Locale.ROOT,
        "the card's white has %d %% of full red, %d %% of green and %d %% of blue light",
        Math.round(100 * card.whiteRgb().get(0)),
        Math.round(100 * card.whiteRgb().get(1)),
        Math.round(100 * card.whiteRgb().get(2)));
  }

  /** Returns the colour of the strip's blank paper. */
  public static String paper(RunRecord.Card card) {
    return card.paperColour()
        + " against the card's white: L* "
        + Decimals.text(card.paperLab().get(0), 1)
        + ", a* "
        + Decimals.text(card.paperLab().get(1), 1)
        + ", b* "
        + Decimals.text(card.paperLab().get(2), 1);
  }

  /** Returns what to know where the Rf is of another point of the spot than its distance. */
  public static Optional<String> rfOfAnotherPoint(RunRecord record) {
    return switch (String.valueOf(record.settings().get("spotCentre"))) {
      case "middle" ->
          Optional.of(
              "Rf is, as asked for, that of the middle of what is visible of a spot; the distance is"
                  + " that of its dye's balance point.");
      case "densest" ->
          Optional.of(
              "Rf is, as asked for, that of a spot's densest point; the distance is that of its"
                  + " dye's balance point.");
      default -> Optional.empty();
    };
  }

  /** Returns the distance of the front, or a dash. */
  public static String front(RunRecord.Lane lane) {
    return measured(lane.frontDistanceMm(), lane.frontDistanceUncertaintyMm());
  }

  /** Returns the distance of the spot, or a dash. */
  public static String distance(RunRecord.Spot spot) {
    return measured(spot.distanceMm(), spot.distanceUncertaintyMm());
  }

  /** Returns the distance of the middle of the visible extent, or a dash. */
  public static String middle(RunRecord.Spot spot) {
    @Nullable Double middle = spot.middleMm();
    return middle == null ? "–" : Decimals.text(middle, 1);
  }

  /** Returns Rf with its uncertainty. */
  public static String rf(RunRecord.Spot spot) {
    return new RetardationFactor(spot.rf(), spot.rfUncertainty()).textWithUncertainty();
  }

  /** Returns the flags in words. */
  public static String flags(RunRecord.Spot spot) {
    return spot.flags().stream()
        .map(flag -> flag.replace('-', ' '))
        .collect(Collectors.joining(", "));
  }

  /** Returns what explains an unknown and what does not, in sentences. */
  public static List<String> answers(RunRecord.Unknown unknown) {
    List<String> sentences = new ArrayList<>(unknown.findings());
    for (RunRecord.RuledOut out : unknown.ruledOut()) {
      String reason = out.reason().endsWith(".") ? out.reason() : out.reason() + ".";
      sentences.add(out.reference() + " is ruled out: " + reason);
    }
    return sentences;
  }

  private static String measured(@Nullable Double value, @Nullable Double uncertainty) {
    if (value == null) {
      return "–";
    }
    return new Measured(value, uncertainty == null ? KNOWN_EXACTLY : uncertainty).text();
  }

  private static String count(int number, String thing) {
    return number + " " + thing + (number == 1 ? "" : "s");
  }
}
