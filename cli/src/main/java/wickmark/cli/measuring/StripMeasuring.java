package wickmark.cli.measuring;

import java.util.List;
import wickmark.imaging.photo.Photo;

/** Measures the strips of one picture. */
@FunctionalInterface
public interface StripMeasuring {
  /** Returns one outcome a strip, from the left; at least one. */
  List<MeasuredStrip> measure(Photo photo, MeasuringRequest said);
}
