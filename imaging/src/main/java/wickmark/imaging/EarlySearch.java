package wickmark.imaging;

import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import wickmark.imaging.card.CardFinder;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.strip.StripFinder;

/**
 * The searches of the whole picture that need nothing of the rulers: for the card and, where there
 * is none, for sheets. Another thread does them while the rulers are read, where there is a
 * processor for it; what is found is the same.
 */
final class EarlySearch {
  private final boolean areCornersSaid;
  private final ForkJoinTask<CardFinder.Finding> card;
  private final ForkJoinTask<StripFinder> sheets;

  private EarlySearch(Photo photo, ReadingRequest request) {
    this.areCornersSaid = !request.strip().corners().isEmpty();
    this.sheets = ForkJoinTask.adapt(() -> StripFinder.in(photo, request.strip().ignoredAreas()));
    this.card =
        ForkJoinPool.commonPool()
            .submit(
                () -> {
                  CardFinder.Finding finding = CardFinder.find(photo);
                  if (finding.card().isEmpty() && !areCornersSaid) {
                    // On a card the strip is looked for there first, and mostly found.
                    sheets.fork();
                  }
                  return finding;
                });
  }

  static EarlySearch begin(Photo photo, ReadingRequest request) {
    return new EarlySearch(photo, request);
  }

  CardFinder.Finding card() {
    return card.join();
  }

  /** What may be sheets, anywhere; looked for now if that has not begun. */
  StripFinder sheets() {
    boolean hasBegun = card().card().isEmpty() && !areCornersSaid;
    return hasBegun || sheets.isDone() ? sheets.join() : sheets.invoke();
  }
}
