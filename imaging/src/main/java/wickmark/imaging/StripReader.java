package wickmark.imaging;

import java.util.List;
import java.util.Optional;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.strip.StripFinder;
import wickmark.imaging.strip.StripOutline;

/** Reads strips from a photo or a scan: finds them, then takes each through its stages. */
public final class StripReader {
  /** Outlines looked at, those that lie beside the best with them. */
  private static final int MOST_OUTLINES = 20;

  private StripReader() {}

  /** Reads all strips in a photo, from the left. */
  public static List<StripOutcome> readAll(Photo photo, ReadingRequest request) {
    ScaleSources scales = ScaleSources.in(photo, request);
    List<StripChoice.Candidate> strips = strips(photo, request, scales);
    List<StripOutcome> outcomes = outcomes(photo, request, scales, strips);
    boolean isCardFree =
        request.strip().corners().isEmpty()
            && scales
                .card()
                .filter(card -> strips.stream().noneMatch(s -> CardPlace.holds(card, s.outline())))
                .isPresent();
    return isCardFree ? outcomes.stream().map(StripRefusals::withCardFree).toList() : outcomes;
  }

  private static List<StripOutcome> outcomes(
      Photo photo,
      ReadingRequest request,
      ScaleSources scales,
      List<StripChoice.Candidate> strips) {
    if (strips.isEmpty()) {
      return List.of(StripRefusals.noStrip());
    }
    Optional<String> beside = StripSelection.saidBeside(strips, request);
    if (beside.isPresent()) {
      return List.of(StripRefusals.besideStrip(beside.get()));
    }
    return strips.stream()
        .map(strip -> StripStages.read(photo, request, strip, scales.card()))
        .toList();
  }

  private static List<StripChoice.Candidate> strips(
      Photo photo, ReadingRequest request, ScaleSources scales) {
    if (!request.strip().corners().isEmpty()) {
      List<StripOutline> said = List.of(SaidOutline.of(request.strip().corners()));
      return strips(photo, request, said, scales);
    }
    List<StripChoice.Candidate> onCard =
        strips(photo, request, onCard(photo, request, scales), scales);
    if (!onCard.isEmpty() && StripSelection.saidBeside(onCard, request).isEmpty()) {
      return onCard;
    }
    List<StripChoice.Candidate> strips =
        strips(photo, request, anywhere(photo, request, scales), scales);
    return strips.isEmpty() && scales.card().isEmpty()
        ? strips(photo, request, List.of(SaidOutline.wholePicture(photo)), scales)
        : strips;
  }

  private static List<StripChoice.Candidate> strips(
      Photo photo, ReadingRequest request, List<StripOutline> outlines, ScaleSources scales) {
    return StripSelection.of(
        StripChoice.weigh(photo, request, outlines, scales), request, scales.rulers());
  }

  private static List<StripOutline> onCard(
      Photo photo, ReadingRequest request, ScaleSources scales) {
    return scales
        .card()
        .map(
            card ->
                new CardPlace(photo, card)
                    .outlines(
                        StripChoice.BEST_OUTLINES, MOST_OUTLINES, request.strip().ignoredAreas()))
        .orElse(List.of());
  }

  private static List<StripOutline> anywhere(
      Photo photo, ReadingRequest request, ScaleSources scales) {
    return StripFinder.find(
            photo,
            StripChoice.BEST_OUTLINES,
            MOST_OUTLINES,
            request.strip().ignoredAreas(),
            RulerRow.marks(scales.rulers()))
        .stream()
        .filter(o -> scales.card().filter(card -> CardPlace.isCard(card, o)).isEmpty())
        .toList();
  }
}
