package wickmark.imaging;

import java.util.List;
import java.util.Optional;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.strip.SheetOutlines;

/** Reads strips from a photo or a scan: finds them, then takes each through its stages. */
public final class StripReader {
  /** Outlines looked at by their rank alone. */
  private static final int BEST_OUTLINES = 5;

  /** The same where none of those is surely a strip: on drawn tiles it ranked 6th to 14th. */
  private static final int MORE_OUTLINES = 20;

  /** Outlines looked at, those that lie beside the best with them. */
  private static final int MOST_OUTLINES = 20;

  /**
   * Score of an outline that is surely a sheet's or a tile's: the picture is then no sheet itself.
   * In drawn pictures that are, the best outline had 0.30; a blank sheet had 0.83, a tile 0.65.
   */
  private static final double CLEAR_SHEET = 0.55;

  private final Photo photo;
  private final ReadingRequest request;
  private final StageWatch watch;

  private StripReader(Photo photo, ReadingRequest request, StageWatch watch) {
    this.photo = photo;
    this.request = request;
    this.watch = watch;
  }

  /** Reads all strips in a photo, from the left. */
  public static List<StripOutcome> readAll(Photo photo, ReadingRequest request) {
    return readAll(photo, request, StageWatch.nobody());
  }

  /** Reads all strips in a photo, from the left, and tells of each stage when it begins. */
  public static List<StripOutcome> readAll(Photo photo, ReadingRequest request, StageWatch watch) {
    return new StripReader(photo, request, watch).outcomes();
  }

  private List<StripOutcome> outcomes() {
    EarlySearch early = EarlySearch.begin(photo, request);
    ScaleSources scales = ScaleSources.in(photo, request, early, watch);
    List<StripChoice.Candidate> strips = strips(scales, early);
    List<StripOutcome> outcomes = outcomes(scales, strips);
    boolean isCardFree =
        request.strip().corners().isEmpty()
            && scales
                .card()
                .filter(card -> strips.stream().noneMatch(s -> CardPlace.holds(card, s.outline())))
                .isPresent();
    return isCardFree ? outcomes.stream().map(StripRefusals::withCardFree).toList() : outcomes;
  }

  private List<StripOutcome> outcomes(ScaleSources scales, List<StripChoice.Candidate> strips) {
    if (strips.isEmpty()) {
      return List.of(StripRefusals.noStrip());
    }
    Optional<String> beside = StripSelection.saidBeside(strips, request);
    if (beside.isPresent()) {
      return List.of(StripRefusals.besideStrip(beside.get()));
    }
    return strips.stream()
        .map(strip -> StripStages.read(photo, request, strip, scales.card(), watch))
        .toList();
  }

  private List<StripChoice.Candidate> strips(ScaleSources scales, EarlySearch early) {
    if (!request.strip().corners().isEmpty()) {
      return strips(SheetOutlines.of(SaidOutline.of(request.strip().corners())), scales);
    }
    List<StripChoice.Candidate> onCard = onCard(scales);
    if (!onCard.isEmpty() && StripSelection.saidBeside(onCard, request).isEmpty()) {
      return onCard;
    }
    SheetOutlines seen = anywhere(scales, early, BEST_OUTLINES, MOST_OUTLINES, false);
    List<StripChoice.Candidate> strips = strips(seen, scales);
    if (strips.stream().noneMatch(s -> StripSelection.isSure(s, scales.rulers()))) {
      // A strip on tiles or on a tray ranks below what it lies on, and so does one on a white
      // ruler, or close to one on a white bench.
      int more = MORE_OUTLINES + MOST_OUTLINES;
      List<StripChoice.Candidate> further =
          strips(anywhere(scales, early, MORE_OUTLINES, more, true), scales);
      strips = further.stream().anyMatch(StripSelection::isConvincing) ? further : strips;
    }
    boolean sheet = seen.stream().anyMatch(outline -> outline.score() > CLEAR_SHEET);
    return strips.isEmpty() && scales.card().isEmpty() && !sheet
        ? strips(SheetOutlines.of(SaidOutline.wholePicture(photo)), scales)
        : strips;
  }

  /** The strips among outlines. */
  private List<StripChoice.Candidate> strips(SheetOutlines outlines, ScaleSources scales) {
    watch.enters(ReadingStage.CHOOSE);
    return StripSelection.of(
        StripChoice.weigh(photo, request, outlines, scales), request, scales.rulers());
  }

  private List<StripChoice.Candidate> onCard(ScaleSources scales) {
    watch.enters(ReadingStage.FIND);
    return scales
        .card()
        .map(
            card ->
                new CardPlace(photo, card)
                    .outlines(BEST_OUTLINES, MOST_OUTLINES, request.strip().ignoredAreas()))
        .map(outlines -> strips(outlines, scales))
        .orElse(List.of());
  }

  private SheetOutlines anywhere(
      ScaleSources scales, EarlySearch early, int best, int most, boolean onRulers) {
    watch.enters(ReadingStage.FIND);
    return early
        .sheets()
        .outlines(best, most, RulerRow.marks(scales.rulers()), onRulers)
        .where(o -> scales.card().filter(card -> CardPlace.isCard(card, o)).isEmpty());
  }
}
