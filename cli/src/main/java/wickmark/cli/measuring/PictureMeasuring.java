package wickmark.cli.measuring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import wickmark.core.chromatogram.Chromatogram;
import wickmark.core.colour.PaperTint;
import wickmark.core.match.Identification;
import wickmark.core.match.UnknownReading;
import wickmark.core.record.ChromatogramRecord;
import wickmark.core.record.RunRecord;
import wickmark.imaging.StageWatch;
import wickmark.imaging.StripReader;
import wickmark.imaging.StripReading;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;

/** The way from a picture to records: imaging reads the strips, core makes Rf and answers of it. */
public final class PictureMeasuring implements StripMeasuring {
  @Override
  public List<MeasuredStrip> measure(Photo photo, MeasuringRequest said) {
    return measure(photo, said, StageWatch.nobody());
  }

  @Override
  public List<MeasuredStrip> measure(Photo photo, MeasuringRequest said, StageWatch watch) {
    return StripReader.readAll(photo, said.reading(), watch).stream()
        .map(
            outcome ->
                outcome.<MeasuredStrip>fold(
                    reading -> measured(reading, said),
                    refusal -> new MeasuredStrip.Refused(refusal.message())))
        .toList();
  }

  private static MeasuredStrip measured(StripReading reading, MeasuringRequest said) {
    Chromatogram strip = Chromatogram.of(reading.evidence(), said.centre());
    List<RunRecord.Warning> warnings = new ArrayList<>();
    reading.doubts().forEach(d -> warnings.add(new RunRecord.Warning(d.code(), d.message())));
    List<UnknownReading> unknowns = Identification.of(strip, said.matching());
    warnings.addAll(ChromatogramRecord.warnings(strip, unknowns));
    StripReading.Placed placed = reading.placed();
    List<List<Double>> front = points(placed.front());
    RunRecord record =
        new RunRecord(
            RunRecord.FORMAT,
            new RunRecord.Tool("", ""),
            new RunRecord.Photo("", "", 0, 0),
            Map.of(),
            scale(reading),
            card(reading),
            new RunRecord.Strip(
                points(placed.corners()),
                placed.pictureToStrip(),
                placed.said().corners(),
                placed.confidence().strip(),
                placed.confidence().orientation()),
            new RunRecord.Baseline(
                points(placed.baseline()),
                placed.said().baseline(),
                placed.confidence().baseline()),
            new RunRecord.Front(
                List.of(front.get(0), front.get(front.size() - 1)),
                placed.frontKind().word(),
                front,
                placed.confidence().front()),
            ChromatogramRecord.lanes(strip, reading.pictures(), placed.said().origins()),
            ChromatogramRecord.unknowns(unknowns),
            warnings);
    StripReading.Straightened upright = reading.straightened();
    return new MeasuredStrip.Done(
        record,
        new StraightPicture(
            upright.picture(),
            upright.fromPhoto(),
            upright.pixelsPerMm(),
            upright.layout(),
            reading.evidence()));
  }

  private static RunRecord.Scale scale(StripReading reading) {
    @Nullable Double millimetres =
        reading.scale().millimetresPerPixel().isPresent()
            ? reading.scale().millimetresPerPixel().getAsDouble()
            : null;
    @Nullable Double uncertainty =
        reading.scale().relativeUncertainty().isPresent()
            ? reading.scale().relativeUncertainty().getAsDouble()
            : null;
    @Nullable Double confidence =
        millimetres == null ? null : Double.valueOf(reading.placed().confidence().scale());
    return new RunRecord.Scale(
        reading.scale().source().word(), millimetres, uncertainty, confidence);
  }

  private static RunRecord.@Nullable Card card(StripReading reading) {
    return reading
        .light()
        .map(
            light ->
                new RunRecord.Card(
                    light.sheet(),
                    List.of(light.white().red(), light.white().green(), light.white().blue()),
                    light.greyChroma(),
                    List.of(light.paper().lightness(), light.paper().a(), light.paper().b()),
                    PaperTint.of(light.paper())))
        .orElse(null);
  }

  private static List<List<Double>> points(List<PhotoPoint> points) {
    return points.stream().map(p -> List.of(p.x(), p.y())).toList();
  }
}
