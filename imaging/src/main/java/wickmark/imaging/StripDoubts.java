package wickmark.imaging;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.scale.PixelScale;

/** What the reader of a strip's record must see. */
final class StripDoubts {
  private StripDoubts() {}

  static List<Doubt> of(
      ReadingRequest request,
      StripChoice.Candidate chosen,
      LanePlaces places,
      ReadingAssembly.Lanes lanes,
      boolean held) {
    List<Doubt> doubts = new ArrayList<>(chosen.plane().doubts());
    if (chosen.plane().source() == PixelScale.Source.NONE) {
      doubts.add(
          new Doubt(
              "no-scale",
              "No ruler was found in the picture and it is no scan with a resolution: Rf is given,"
                  + " millimetres are not. Lay a ruler beside the strip or the strip on the printed"
                  + " card (wickmark card), or say --strip-height or --span."));
    }
    if (held && chosen.plane().isOfDesk()) {
      doubts.add(held(chosen.plane().millimetresPerUnit().orElseThrow()));
    }
    int found = lanes.tracks().size();
    if (request.lanes().isPresent() && request.lanes().getAsInt() != found) {
      doubts.add(
          new Doubt(
              "lanes-differ",
              String.format(
                  Locale.ROOT,
                  "%d lanes were said, %d were found. Check them in the report.",
                  request.lanes().getAsInt(),
                  found)));
    }
    for (String name : new TreeSet<>(places.columns().keySet())) {
      if (!lanes.names().contains(name)) {
        doubts.add(
            new Doubt(
                "origin-not-used",
                "There is no lane "
                    + name
                    + " for the origin that was said. Say all lanes' names with --lanes, or their"
                    + " number with --lane-count."));
      }
    }
    return List.copyOf(doubts);
  }

  /**
   * A doubt of the height.
   *
   * @param distanceMm of the camera from the desk, the plane's unit
   */
  private static Doubt held(double distanceMm) {
    return new Doubt(
        "strip-held",
        String.format(
            Locale.ROOT,
            "Something holds the strip at an end, a finger perhaps. Every %.0f mm that the strip is"
                + " above the desk make its lengths 1 %% too long. Lay it flat beside the ruler, or"
                + " say --strip-height. Rf does not depend on it.",
            Math.max(1, distanceMm / 100)));
  }
}
