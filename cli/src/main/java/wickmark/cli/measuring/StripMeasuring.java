package wickmark.cli.measuring;

import java.util.List;
import wickmark.imaging.StageWatch;
import wickmark.imaging.photo.Photo;

/** Measures the strips of one picture. */
@FunctionalInterface
public interface StripMeasuring {
  /** Returns one outcome a strip, from the left; at least one. */
  List<MeasuredStrip> measure(Photo photo, MeasuringRequest said);

  /** The same; tells of each stage when it begins, as far as there are any. */
  default List<MeasuredStrip> measure(Photo photo, MeasuringRequest said, StageWatch watch) {
    return measure(photo, said);
  }
}
