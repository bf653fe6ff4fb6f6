package wickmark.testdata.picture;

import java.util.List;
import java.util.Optional;
import wickmark.testdata.truth.RulerTruth;
import wickmark.testdata.truth.SeenStrip;

/**
 * A picture and what is known of it.
 *
 * @param strips the developed strips in it, from the left as they were planned
 * @param ruler the ruler in it
 */
public record DrawnPicture(Picture picture, List<SeenStrip> strips, Optional<RulerTruth> ruler) {
  public DrawnPicture {
    strips = List.copyOf(strips);
  }

  /** Returns the only or first strip. */
  public SeenStrip strip() {
    return strips.get(0);
  }
}
