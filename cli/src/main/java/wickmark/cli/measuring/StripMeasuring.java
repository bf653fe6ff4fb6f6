package wickmark.cli.measuring;

import java.util.List;
import wickmark.cli.photo.PhotoFile;

/** Measures the strips of one picture. */
@FunctionalInterface
public interface StripMeasuring {
  /** Returns one outcome a strip, from the left; at least one. */
  List<StripOutcome> measure(PhotoFile picture, Said said);
}
