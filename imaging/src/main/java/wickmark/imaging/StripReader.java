package wickmark.imaging;

import java.util.List;
import java.util.Optional;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoArea;
import wickmark.imaging.scale.RulerEdge;
import wickmark.imaging.scale.RulerReader;
import wickmark.imaging.strip.StripFinder;
import wickmark.imaging.strip.StripOutline;

/** Reads strips from a photo or a scan: finds them, then takes each through its stages. */
public final class StripReader {
  /** Outlines looked at, those that lie beside the best with them. */
  private static final int MOST_OUTLINES = 20;

  private StripReader() {}

  /** Reads all strips in a photo, from the left. */
  public static List<StripOutcome> readAll(Photo photo, ReadingRequest request) {
    List<RulerEdge> edges =
        RulerReader.read(
            photo, request.strip().ignoredAreas().stream().map(PhotoArea::corners).toList());
    List<StripOutline> outlines = outlines(photo, request, edges);
    List<StripChoice.Candidate> strips = strips(photo, request, outlines, edges);
    if (strips.isEmpty() && request.strip().corners().isEmpty()) {
      strips = strips(photo, request, List.of(SaidOutline.wholePicture(photo)), edges);
    }
    if (strips.isEmpty()) {
      return List.of(StripRefusals.noStrip());
    }
    Optional<String> beside = StripSelection.saidBeside(strips, request);
    if (beside.isPresent()) {
      return List.of(StripRefusals.besideStrip(beside.get()));
    }
    return strips.stream().map(strip -> StripStages.read(photo, request, strip)).toList();
  }

  private static List<StripChoice.Candidate> strips(
      Photo photo, ReadingRequest request, List<StripOutline> outlines, List<RulerEdge> edges) {
    return StripSelection.of(StripChoice.weigh(photo, request, outlines, edges), request, edges);
  }

  private static List<StripOutline> outlines(
      Photo photo, ReadingRequest request, List<RulerEdge> edges) {
    List<PhotoArea> ignored = request.strip().ignoredAreas();
    return request.strip().corners().isEmpty()
        ? StripFinder.find(
            photo, StripChoice.BEST_OUTLINES, MOST_OUTLINES, ignored, RulerRow.marks(edges))
        : List.of(SaidOutline.of(request.strip().corners()));
  }
}
