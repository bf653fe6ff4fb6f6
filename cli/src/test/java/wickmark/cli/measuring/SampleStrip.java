package wickmark.cli.measuring;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import wickmark.core.chromatogram.LaneEvidence;
import wickmark.core.chromatogram.LaneRole;
import wickmark.core.chromatogram.Place;
import wickmark.core.chromatogram.StripEvidence;
import wickmark.core.record.RunRecord;
import wickmark.imaging.StraightLayout;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;

/**
 * A made-up strip of 60 mm by 100 mm in a picture of 120 by 200 px: half a millimetre a pixel, the
 * baseline 20 mm above the lower edge, the front 75 mm above the baseline. Lanes A, B and X.
 */
public final class SampleStrip {
  private SampleStrip() {}

  public static RunRecord record() {
    return record("A", "B", "X");
  }

  /** The same with other lane names. */
  public static RunRecord record(String first, String second, String unknown) {
    return new RunRecord(
        RunRecord.FORMAT,
        new RunRecord.Tool("", ""),
        new RunRecord.Photo("", "", 1, 1),
        Map.of("smoothing", 1.5),
        new RunRecord.Scale("ruler", 0.5, 0.004, 0.95),
        new RunRecord.Card("a5", List.of(0.81, 0.8, 0.62), 1.2, List.of(96.1, 0.3, 9.9), "cream"),
        new RunRecord.Strip(
            List.of(
                List.of(0.0, 0.0), List.of(120.0, 0.0), List.of(120.0, 200.0), List.of(0.0, 200.0)),
            List.of(0.5, 0.0, 0.0, 0.0, -0.5, 80.0, 0.0, 0.0, 1.0),
            false,
            0.98,
            0.94),
        new RunRecord.Baseline(List.of(List.of(2.0, 160.0), List.of(118.0, 160.0)), false, 0.97),
        new RunRecord.Front(
            List.of(List.of(2.0, 10.0), List.of(118.0, 10.0)),
            "pencil",
            List.of(List.of(2.0, 10.0), List.of(60.0, 10.123456), List.of(118.0, 10.0)),
            0.96),
        List.of(
            lane(first, "reference", 30, "one spot in this solvent", spot(1, 30, 54, "yellow")),
            lane(second, "reference", 60, "one spot in this solvent", spot(1, 60, 30, "blue")),
            lane(
                unknown,
                "unknown",
                90,
                "a mixture of at least 2",
                spot(1, 90, 54.03, "yellow"),
                spot(2, 90, 30.05, "blue"))),
        List.of(
            new RunRecord.Unknown(
                unknown,
                List.of(
                    new RunRecord.Explanation(
                        List.of(first, second),
                        0.91,
                        List.of(
                            new RunRecord.SpotMatch(1, first, 1, 0.0004, 1.2),
                            new RunRecord.SpotMatch(2, second, 1, 0.0007, 2.1)))),
                List.of(),
                List.of(new RunRecord.RuledOut("C", "its spot 1 has no counterpart")),
                List.of(
                    unknown + " is consistent with " + first + " and " + second + ".",
                    "It is no proof."))),
        List.of(new RunRecord.Warning("front-faint", "The front is faint.")));
  }

  private static RunRecord.Lane lane(
      String name, String role, double x, String reading, RunRecord.Spot... spots) {
    return new RunRecord.Lane(
        name, role, List.of(x, 160.0), false, 0.92, 75.0, 0.15, reading, List.of(spots));
  }

  public static RunRecord.Spot spot(int number, double x, double distanceMm, String colour) {
    double y = 160 - 2 * distanceMm;
    return new RunRecord.Spot(
        number,
        distanceMm,
        0.12,
        distanceMm - 0.1,
        distanceMm + 0.1,
        distanceMm + 4,
        distanceMm - 4,
        7.0,
        44.0,
        distanceMm / 75,
        0.0021,
        (distanceMm - 0.1) / 75,
        (distanceMm + 0.1) / 75,
        0.61,
        List.of(x, y),
        colour.equals("yellow") ? List.of(90.0, -5.0, 60.0) : List.of(50.0, 0.0, -40.0),
        colour,
        List.of("tailing"),
        0.93,
        List.of(
            new RunRecord.BudgetLine("place of the front", 0.0015, 0.51),
            new RunRecord.BudgetLine("place of the spot", 0.0014, 0.49)),
        List.of(List.of(x - 7, y), List.of(x, y - 8), List.of(x + 7, y), List.of(x, y + 8)));
  }

  /** A plain grey picture of the strip, two pixels a millimetre, which the photo was too. */
  public static StraightPicture straightened() {
    byte[] rgb = new byte[3 * 120 * 200];
    Arrays.fill(rgb, (byte) 0xe0);
    return new StraightPicture(
        new Photo(120, 200, rgb, Optional.empty(), OptionalDouble.empty(), false),
        List.of(1.0, 0.0, 0.0, 0.0, 1.0, 0.0, 0.0, 0.0, 1.0),
        2,
        layout(),
        evidence());
  }

  /** Lanes A, B and X without spots, for what does not look at them. */
  private static StraightLayout layout() {
    return new StraightLayout(
        0.5,
        new StraightLayout.Course(60, 60, List.of(160.0)),
        new StraightLayout.Course(60, 60, List.of(10.0)),
        Stream.of(30.0, 60.0, 90.0)
            .map(
                x ->
                    new StraightLayout.Lane(
                        x,
                        List.of(),
                        new StraightLayout.Density(0.5, 1, List.of(0.0, 0.2, 0.9, 0.1))))
            .toList(),
        new StraightLayout.Grid(
            2,
            2,
            List.of(
                new PhotoPoint(0, 0),
                new PhotoPoint(120, 0),
                new PhotoPoint(0, 200),
                new PhotoPoint(120, 200))),
        new StraightLayout.Hand(0.5, 0.1, 0.7));
  }

  private static StripEvidence evidence() {
    return new StripEvidence(
        true,
        new StripEvidence.SharedUncertainties(0.004, 0.002, 0.1),
        Stream.of("A", "B", "X")
            .map(
                name ->
                    new LaneEvidence(
                        name,
                        LaneRole.REFERENCE,
                        new Place(0, 0.05),
                        new Place(75, 0.1),
                        List.of()))
            .toList());
  }

  /** A measurement that finds this strip in every picture. */
  public static StripMeasuring measuring() {
    return (picture, said) -> List.of(new MeasuredStrip.Done(record(), straightened()));
  }
}
