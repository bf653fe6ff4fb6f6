package wickmark.cli.card;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.cli.measuring.PictureMeasuring;
import wickmark.core.card.CardSheet;
import wickmark.core.record.RunRecord;
import wickmark.imaging.ReadingRequest;
import wickmark.imaging.ReadingRequest.SaidScale;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.Resolution;
import wickmark.testdata.picture.DrawnPicture;
import wickmark.testdata.picture.Picture;
import wickmark.testdata.scene.CameraPlan;
import wickmark.testdata.scene.Desk;
import wickmark.testdata.scene.PhotoPlan;
import wickmark.testdata.scene.Photographer;
import wickmark.testdata.scene.Placement;
import wickmark.testdata.scene.PrintItem;
import wickmark.testdata.scene.StripItem;
import wickmark.testdata.strip.DyeCupboard;
import wickmark.testdata.strip.LanePlan;
import wickmark.testdata.strip.Paper;
import wickmark.testdata.strip.SpotPlan;
import wickmark.testdata.strip.SpotShape;
import wickmark.testdata.strip.StripPlan;
import wickmark.testdata.truth.LaneTruth;
import wickmark.testdata.truth.SpotTruth;

/** Drawn photographs of a strip on the card, as the PDF renders, and what is measured in them. */
public final class CardPictures {
  /** Fine enough that a photo of 5 pixels a millimetre shows no cell of the print. */
  private static final float PRINT_DPI = 240;

  private static final double FINE_PX_PER_MM = PRINT_DPI / 25.4;

  /** Sheets as they are printed at 100 %, each rendered once. */
  private static final Map<CardSheet, Picture> PRINTED = new EnumMap<>(CardSheet.class);

  private CardPictures() {}

  /** The card as a printer would print it. */
  public static BufferedImage rendered(CardSheet sheet, float dpi) throws IOException {
    try (PDDocument document = Loader.loadPDF(CardPdf.of(sheet))) {
      return new PDFRenderer(document).renderImageWithDPI(0, dpi);
    }
  }

  /** The card on the desk, printed at so much of its size. */
  public static PrintItem print(CardSheet sheet, double scale) throws IOException {
    return new PrintItem(printed(sheet), FINE_PX_PER_MM / scale, new Placement(0, 0, 0));
  }

  private static synchronized Picture printed(CardSheet sheet) throws IOException {
    Picture picture = PRINTED.get(sheet);
    if (picture == null) {
      picture = Picture.of(rendered(sheet, PRINT_DPI));
      PRINTED.put(sheet, picture);
    }
    return picture;
  }

  /** A strip of 64 by 100 mm with three lanes and four spots. */
  public static StripPlan strip(long seed) {
    return strip(seed, Paper.FILTER);
  }

  /** The same on another paper. */
  public static StripPlan strip(long seed, Paper paper) {
    return StripPlan.sheet(64, 100)
        .paper(paper)
        .baseline(18, 0.2)
        .front(86)
        .namedLane(LanePlan.reference("A", 14, spot(DyeCupboard.EGG, 0.72)))
        .namedLane(LanePlan.reference("B", 32, spot(DyeCupboard.RASPBERRY, 0.48)))
        .namedLane(
            LanePlan.unknown("X", 50, spot(DyeCupboard.EGG, 0.72), spot(DyeCupboard.SKY, 0.25)))
        .seed(seed)
        .build();
  }

  private static SpotPlan spot(wickmark.testdata.strip.Dye dye, double rf) {
    return SpotPlan.of(dye, rf, 0.6, SpotShape.gaussian(2.4, 2.0));
  }

  /** A photograph to take of a card and a strip on it, 5 pixels a millimetre. */
  public static PhotoPlan plan(PrintItem card, CameraPlan camera, long seed) {
    return plan(card, camera, seed, StripItem.of(strip(seed), new Placement(2, 4, 2)));
  }

  /** The same with a strip that lies elsewhere or is another. */
  public static PhotoPlan plan(PrintItem card, CameraPlan camera, long seed, StripItem strip) {
    return PhotoPlan.of(camera, strip).with(card).onto(Desk.OAK).seeded(seed);
  }

  /** A camera over an A5 sheet that looks from a side by so many degrees. */
  public static CameraPlan camera(double tiltDeg, double azimuthDeg) {
    return CameraPlan.above(1000, 1260, 5.2).tilted(tiltDeg, azimuthDeg, 2).withDistortion(-0.012);
  }

  static Photo photo(DrawnPicture drawn) {
    return photo(drawn, Optional.empty());
  }

  private static Photo photo(DrawnPicture drawn, Optional<Resolution> scanned) {
    return new Photo(
        drawn.picture().widthPx(),
        drawn.picture().heightPx(),
        drawn.picture().rgb(),
        scanned,
        OptionalDouble.empty(),
        scanned.isEmpty());
  }

  /** What was measured, and the truth beside it. */
  public record Measured(RunRecord record, DrawnPicture drawn) {
    /** Codes of the warnings. */
    List<String> warnings() {
      return record.warnings().stream().map(RunRecord.Warning::code).toList();
    }

    /** Scale at the strip's middle over the true one, less 1. */
    public double scaleError() {
      Double found = record.scale().millimetresPerPixel();
      double across = drawn.strip().mmPerPxAcross();
      double along = drawn.strip().mmPerPxAlong();
      return found == null ? Double.NaN : found / ((across + along) / 2) - 1;
    }

    /** Measured less true distance of each spot and front, mm; empty if lanes or spots differ. */
    public List<Double> errors() {
      List<Double> errors = new ArrayList<>();
      List<LaneTruth> lanes = drawn.strip().strip().lanes();
      for (int k = 0; k < lanes.size() && lanes.size() == record.lanes().size(); k++) {
        RunRecord.Lane lane = record.lanes().get(k);
        List<SpotTruth> spots = lanes.get(k).spots().stream().filter(s -> !s.residue()).toList();
        if (spots.size() != lane.spots().size()) {
          return List.of();
        }
        add(errors, lane.frontDistanceMm(), lanes.get(k).frontMm());
        for (int i = 0; i < spots.size(); i++) {
          // A record counts from the front, the truth from the baseline.
          SpotTruth truth = spots.get(spots.size() - 1 - i);
          add(errors, lane.spots().get(i).distanceMm(), truth.distanceMm());
        }
      }
      return errors;
    }

    private static void add(
        List<Double> errors, @org.jspecify.annotations.Nullable Double found, double truth) {
      errors.add(found == null ? Double.NaN : found - truth);
    }
  }

  /** Takes the photograph and measures it; with the bar's length, if that is said. */
  public static Measured measured(PhotoPlan plan, OptionalDouble bar) {
    return measured(Photographer.take(plan), bar);
  }

  /** Measures a photograph. */
  static Measured measured(DrawnPicture drawn, OptionalDouble bar) {
    return measured(drawn, bar, Optional.empty());
  }

  /** Measures a photograph, or a scan of a resolution. */
  static Measured measured(DrawnPicture drawn, OptionalDouble bar, Optional<Resolution> scanned) {
    ReadingRequest nothing = ReadingRequest.nothing();
    ReadingRequest said =
        new ReadingRequest(
            List.of("A", "B", "X"),
            Set.of("X"),
            OptionalInt.empty(),
            bar.isPresent()
                ? Optional.of(new SaidScale.Print(bar.getAsDouble()))
                : Optional.empty(),
            nothing.strip(),
            nothing.lines());
    List<MeasuredStrip> strips =
        new PictureMeasuring().measure(photo(drawn, scanned), MeasuringRequest.of(said));
    if (strips.size() == 1 && strips.get(0) instanceof MeasuredStrip.Done done) {
      return new Measured(done.record(), drawn);
    }
    throw new AssertionError("not one strip measured: " + strips);
  }
}
