package wickmark.cli.calibration;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import wickmark.cli.card.CardPictures;
import wickmark.core.card.CardSheet;
import wickmark.testdata.scene.CameraPlan;
import wickmark.testdata.scene.Desk;
import wickmark.testdata.scene.LightPlan;
import wickmark.testdata.scene.PrintItem;
import wickmark.testdata.scene.SensorPlan;

/**
 * Measures drawn strips on the drawn card at several tilts and prints how far distances and scale
 * are off. Run it with the number of pictures of each tilt as its only argument.
 */
public final class CardTable {
  private static final double[] TILTS = {0, 10, 20, 30};
  private static final Desk[] DESKS = {Desk.OAK, Desk.GREY_LAMINATE, Desk.WHITE_BENCH, Desk.TILES};

  private static final List<CardSheet> SHEETS = List.of(CardSheet.values());

  private CardTable() {}

  /** Prints the table. */
  public static void main(String[] arguments) throws IOException {
    int pictures = arguments.length == 1 ? Integer.parseInt(arguments[0]) : 4;
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.println(
        "| tilt | pictures | read | distance mm, median / 95 % / max | scale %, max | warned |");
    out.println("| ---: | ---: | ---: | ---: | ---: | ---: |");
    for (double tilt : TILTS) {
      List<Double> errors = new ArrayList<>();
      double scale = 0;
      int read = 0;
      int warned = 0;
      for (int i = 0; i < pictures; i++) {
        CardSheet sheet = SHEETS.get(i % SHEETS.size());
        CardPictures.Measured measured = picture(sheet, tilt, i);
        List<Double> found = measured.errors();
        read += found.isEmpty() ? 0 : 1;
        warned += measured.record().warnings().isEmpty() ? 0 : 1;
        errors.addAll(found.stream().map(Math::abs).toList());
        scale = Math.max(scale, Math.abs(measured.scaleError()));
      }
      errors.sort(null);
      out.printf(
          Locale.ROOT,
          "| %.0f° | %d | %d | %.2f / %.2f / %.2f | %.2f | %d |%n",
          tilt,
          pictures,
          read,
          part(errors, 0.5),
          part(errors, 0.95),
          part(errors, 1),
          100 * scale,
          warned);
    }
  }

  private static double part(List<Double> sorted, double share) {
    return sorted.isEmpty()
        ? Double.NaN
        : sorted.get((int) Math.round(share * (sorted.size() - 1)));
  }

  private static CardPictures.Measured picture(CardSheet sheet, double tilt, int i)
      throws IOException {
    PrintItem card = CardPictures.print(sheet, 1);
    double pxPerMm = sheet == CardSheet.A5 ? 8 : 6;
    int width = (int) Math.round(pxPerMm * (sheet.size().width() + 60));
    int height = (int) Math.round(pxPerMm * (sheet.size().height() + 60));
    CameraPlan camera =
        CameraPlan.above(width, height, pxPerMm)
            .tilted(tilt, 37 + 73 * i, 3 * (i % 5) - 6.0)
            .withDistortion(0.008 * (i % 4) - 0.016);
    return CardPictures.measured(
        CardPictures.plan(card, camera, 100 + i)
            .onto(DESKS[i % DESKS.length])
            .lit(LightPlan.even().withSlope(1.5 * (i % 3) - 1.5, 0.8))
            .with(
                SensorPlan.good()
                    .withDefocus(0.5 + 0.2 * (i % 3))
                    .withNoise(0.006 + 0.002 * (i % 3))),
        OptionalDouble.of(100));
  }
}
