package wickmark.cli.report;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import wickmark.cli.measuring.StraightPicture;
import wickmark.core.record.RunRecord;
import wickmark.core.uncertainty.Decimals;
import wickmark.imaging.photo.Photo;

/** Draws what was found over the photo and over the straightened strip. */
final class SketchDrawing {
  private static final double LETTERS_IN_PHOTO = 1 / 45.0;
  private static final double LETTERS_IN_STRIP = 1 / 40.0;

  /** Room for marks and three figures, in letter heights. */
  private static final double SCALE_LETTERS = 3.4;

  /** Where a place of the photo lies in the picture that is drawn on. */
  private interface Projection {
    double[] of(List<Double> photoPoint);
  }

  private final RunRecord record;
  private final Projection projection;
  private final double letter;

  private SketchDrawing(RunRecord record, Projection projection, double letter) {
    this.record = record;
    this.projection = projection;
    this.letter = letter;
  }

  static Sketch onPhoto(RunRecord record, Photo photo, byte[] jpeg) {
    double letter = LETTERS_IN_PHOTO * Math.max(photo.widthPx(), photo.heightPx());
    SketchDrawing drawing =
        new SketchDrawing(record, p -> new double[] {p.get(0), p.get(1)}, letter);
    return drawing.sketch(
        photo.widthPx(), photo.heightPx(), dataAddress("image/jpeg", jpeg), List.of(), List.of());
  }

  static Sketch onStrip(RunRecord record, StraightPicture strip, byte[] png) {
    int width = strip.picture().widthPx();
    int height = strip.picture().heightPx();
    SketchDrawing drawing =
        new SketchDrawing(
            record,
            new PlaneMapping(strip.fromPhoto())::of,
            LETTERS_IN_STRIP * Math.max(width, height));
    boolean hasScale = record.scale().millimetresPerPixel() != null;
    double scaleEnd = hasScale ? width + SCALE_LETTERS * drawing.letter : width;
    return drawing.sketch(
        width,
        height,
        dataAddress("image/png", png),
        hasScale ? drawing.ticks(width, strip.pixelsPerMm()) : List.of(),
        new ProfileDrawing(record, strip.layout(), drawing.projection::of, drawing.letter)
            .profiles(scaleEnd, width));
  }

  private Sketch sketch(
      int width, int height, String image, List<Sketch.Tick> ticks, List<DensityProfile> profiles) {
    double scaleEnd = ticks.isEmpty() ? width : width + SCALE_LETTERS * letter;
    double end = profiles.isEmpty() ? scaleEnd : profiles.get(profiles.size() - 1).end();
    return new Sketch(
        width,
        height,
        number(end),
        image,
        number(letter),
        number(letter / 9),
        points(record.strip().cornersPx()),
        points(record.baseline().endsPx()),
        endLabel(record.baseline().endsPx(), "baseline"),
        points(
            record.front().pathPx().isEmpty() ? record.front().endsPx() : record.front().pathPx()),
        endLabel(record.front().endsPx(), "front"),
        record.lanes().stream().map(this::laneLine).toList(),
        record.lanes().stream().flatMap(lane -> lane.spots().stream()).map(this::mark).toList(),
        matches(),
        ticks,
        profiles);
  }

  /** A line from each spot of an unknown to its counterpart in the best explanation. */
  private List<String> matches() {
    List<String> lines = new ArrayList<>();
    for (RunRecord.Unknown unknown : record.unknowns()) {
      for (RunRecord.Explanation best : unknown.explanations().stream().limit(1).toList()) {
        for (RunRecord.SpotMatch match : best.matches()) {
          lines.add(
              points(
                  List.of(
                      centre(match.reference(), match.referenceSpot()),
                      centre(unknown.lane(), match.unknownSpot()))));
        }
      }
    }
    return lines;
  }

  private List<Double> centre(String lane, int number) {
    return record.lanes().stream()
        .filter(l -> l.name().equals(lane))
        .flatMap(l -> l.spots().stream())
        .filter(spot -> spot.number() == number)
        .map(RunRecord.Spot::centrePx)
        .findFirst()
        .orElseThrow();
  }

  private Sketch.LaneLine laneLine(RunRecord.Lane lane) {
    List<List<Double>> path = new ArrayList<>();
    path.add(lane.originPx());
    for (int i = lane.spots().size() - 1; i >= 0; i--) {
      path.add(lane.spots().get(i).centrePx());
    }
    double[] origin = projection.of(lane.originPx());
    double[] down = down();
    return new Sketch.LaneLine(
        points(path),
        label(origin[0] + 1.6 * letter * down[0], origin[1] + 1.6 * letter * down[1], lane.name()));
  }

  /** The direction from the front to the baseline, as a unit vector in the picture. */
  private double[] down() {
    double[] baseline = middle(record.baseline().endsPx());
    double[] front = middle(record.front().endsPx());
    double dx = baseline[0] - front[0];
    double dy = baseline[1] - front[1];
    double length = Math.sqrt(dx * dx + dy * dy);
    return length > 0 ? new double[] {dx / length, dy / length} : new double[] {0, 1};
  }

  private double[] middle(List<List<Double>> ends) {
    double[] from = projection.of(ends.get(0));
    double[] to = projection.of(ends.get(ends.size() - 1));
    return new double[] {(from[0] + to[0]) / 2, (from[1] + to[1]) / 2};
  }

  private Sketch.SpotMark mark(RunRecord.Spot spot) {
    double[] centre = projection.of(spot.centrePx());
    double right =
        spot.outlinePx().stream().mapToDouble(p -> projection.of(p)[0]).max().orElse(centre[0]);
    return new Sketch.SpotMark(
        SmoothOutline.through(spot.outlinePx().stream().map(projection::of).toList()),
        number(centre[0]),
        number(centre[1]),
        label(right + 0.6 * letter, centre[1], String.valueOf(spot.number())));
  }

  private Sketch.Label endLabel(List<List<Double>> ends, String text) {
    double[] from = projection.of(ends.get(0));
    return label(from[0], from[1] - 0.8 * letter, text);
  }

  private static Sketch.Label label(double x, double y, String text) {
    return new Sketch.Label(number(x), number(y), text);
  }

  /** Every millimetre from the baseline up, longer at five and longest, with its number, at ten. */
  private List<Sketch.Tick> ticks(int width, double pixelsPerMm) {
    List<List<Double>> baseline = record.baseline().endsPx();
    double zero = projection.of(baseline.get(baseline.size() - 1))[1];
    List<Sketch.Tick> ticks = new ArrayList<>();
    for (int mm = 0; zero - mm * pixelsPerMm >= 0; mm++) {
      double length = letter * (mm % 10 == 0 ? 1.2 : mm % 5 == 0 ? 0.8 : 0.4);
      ticks.add(
          new Sketch.Tick(
              number(width),
              number(width + length),
              number(zero - mm * pixelsPerMm),
              mm % 10 == 0 && zero - mm * pixelsPerMm > letter / 2 ? String.valueOf(mm) : ""));
    }
    return ticks;
  }

  private String points(List<List<Double>> photoPoints) {
    return photoPoints.stream()
        .map(projection::of)
        .map(at -> number(at[0]) + "," + number(at[1]))
        .collect(Collectors.joining(" "));
  }

  private static String number(double value) {
    return Decimals.text(value, 1);
  }

  private static String dataAddress(String type, byte @Nullable [] file) {
    return "data:" + type + ";base64," + Base64.getEncoder().encodeToString(file);
  }
}
