package wickmark.imaging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickmark.core.card.Box;
import wickmark.core.card.CardLayout;
import wickmark.imaging.ReadingRequest.SaidScale;
import wickmark.imaging.card.CardFinder;
import wickmark.imaging.card.CardView;
import wickmark.imaging.card.SheetEdges;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoArea;
import wickmark.imaging.scale.RulerEdge;
import wickmark.imaging.scale.RulerReader;
import wickmark.imaging.strip.StripOutline;

/**
 * What in the picture tells a scale.
 *
 * @param rulers graduated edges, but not those printed on the card
 * @param card the printed card
 * @param sheet how large the card was printed, by the edges of its sheet
 * @param doubts about the card
 */
record ScaleSources(
    List<RulerEdge> rulers,
    Optional<CardView> card,
    Optional<SheetEdges.PrintScale> sheet,
    List<Doubt> doubts) {
  /** Marks of the card's own rules are seen within this of where they are printed, mm. */
  private static final double BESIDE_RULE_MM = 1.5;

  static ScaleSources in(Photo photo, ReadingRequest request, EarlySearch early, StageWatch watch) {
    watch.enters(ReadingStage.RULER);
    List<RulerEdge> edges =
        RulerReader.read(
            photo, request.strip().ignoredAreas().stream().map(PhotoArea::corners).toList());
    watch.enters(ReadingStage.CARD);
    CardFinder.Finding finding = early.card();
    List<Doubt> doubts = new ArrayList<>(finding.doubts());
    finding.card().ifPresent(card -> doubts.addAll(card.doubts()));
    finding.card().ifPresent(card -> doubts.addAll(CardExposure.doubts(photo, card)));
    if (finding.card().isEmpty() && request.scale().orElse(null) instanceof SaidScale.Print) {
      doubts.add(
          new Doubt(
              "card-not-found",
              "A printed length was said with --printed-length, but no card was found in the"
                  + " picture, so that it had no say. At least two of the card's four squares must"
                  + " be seen whole and sharp."));
    }
    return new ScaleSources(
        finding.card().map(card -> notPrintedOn(card, edges)).orElse(edges),
        finding.card(),
        finding.card().flatMap(card -> SheetEdges.of(photo, card)),
        List.copyOf(doubts));
  }

  private static List<RulerEdge> notPrintedOn(CardView card, List<RulerEdge> edges) {
    CardLayout.Rules rules = card.layout().rules();
    Box beside = rules.beside().grown(BESIDE_RULE_MM);
    Box below = rules.below().grown(BESIDE_RULE_MM);
    return edges.stream()
        .filter(
            edge ->
                edge.marks().stream()
                        .map(mark -> card.fromPhoto(mark.at()))
                        .filter(p -> beside.contains(p[0], p[1]) || below.contains(p[0], p[1]))
                        .count()
                    <= 0.5 * edge.marks().size())
        .toList();
  }

  /** The plane of an outlined sheet and its scale, by whatever tells most of it. */
  PlaneScale plane(
      Photo photo, ReadingRequest request, StripOutline outline, List<RulerEdge> beside) {
    PlaneScale plane = withoutDoubts(photo, request, outline, beside);
    for (Doubt doubt : doubts) {
      plane = plane.with(doubt);
    }
    return plane;
  }

  private PlaneScale withoutDoubts(
      Photo photo, ReadingRequest request, StripOutline outline, List<RulerEdge> beside) {
    if (request.scale().orElse(null) instanceof SaidScale.Dpi said) {
      return PlaneScaleFinder.ofDpi(photo, outline, beside, said.dpi());
    }
    PlaneScale bare = PlaneScaleFinder.of(photo, outline, beside);
    if (card.isEmpty()) {
      return bare;
    }
    CardScale byCard = new CardScale(card.get(), sheet, request.scale());
    return bare.flat() ? byCard.compared(bare) : byCard.plane(beside);
  }
}
