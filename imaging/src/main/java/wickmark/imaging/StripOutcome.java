package wickmark.imaging;

import java.util.function.Function;
import wickmark.imaging.finding.Refusal;

/** What became of one strip. */
public sealed interface StripOutcome {
  /** It was read. */
  record Read(StripReading reading) implements StripOutcome {}

  /** It was not. */
  record Refused(Refusal refusal) implements StripOutcome {}

  /** Handles both cases in one place. */
  default <R> R fold(
      Function<? super StripReading, ? extends R> read,
      Function<? super Refusal, ? extends R> refused) {
    if (this instanceof Read r) {
      return read.apply(r.reading());
    }
    return refused.apply(((Refused) this).refusal());
  }
}
