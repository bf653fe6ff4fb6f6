package wickmark.cli.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wickmark.cli.card.CardPictures.Measured;
import wickmark.core.card.Box;
import wickmark.core.card.CardLayout;
import wickmark.core.card.CardSheet;
import wickmark.imaging.card.CardFinder;
import wickmark.imaging.photo.Resolution;
import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.picture.DrawnPicture;
import wickmark.testdata.picture.Picture;
import wickmark.testdata.scene.Bend;
import wickmark.testdata.scene.CameraPlan;
import wickmark.testdata.scene.Clutter;
import wickmark.testdata.scene.Desk;
import wickmark.testdata.scene.PhotoPlan;
import wickmark.testdata.scene.Photographer;
import wickmark.testdata.scene.Placement;
import wickmark.testdata.scene.PrintItem;
import wickmark.testdata.scene.RulerItem;
import wickmark.testdata.scene.RulerPlan;
import wickmark.testdata.scene.SensorPlan;
import wickmark.testdata.scene.StripItem;

/** Drawn strips on the card as the PDF renders it, photographed by the drawings' own camera. */
class CardPhotoTest {
  private static final OptionalDouble TRUE_PRINT = OptionalDouble.of(100);
  private static final OptionalDouble UNSAID = OptionalDouble.empty();

  /** The middle of a square in the world: x right and y up from the card's middle. */
  private static Placement square(int corner) {
    CardLayout layout = CardLayout.of(CardSheet.A5);
    Box box = layout.fiducials().get(corner).box();
    return new Placement(
        (box.left() + box.right()) / 2 - layout.paper().width() / 2,
        layout.paper().height() / 2 - (box.top() + box.bottom()) / 2,
        0);
  }

  private static Clutter coinOn(int corner) {
    return new Clutter(Clutter.Kind.DISC, square(corner), LinearRgb.ofSrgb(150, 120, 70));
  }

  private static double largest(List<Double> errors) {
    return errors.stream().mapToDouble(Math::abs).max().orElse(Double.NaN);
  }

  /** 95 of 100 distances within 0.25 mm, and the scale within 0.2 %, up to 30 degrees of tilt. */
  @Test
  void distancesHoldUnderTilt() throws IOException {
    PrintItem card = CardPictures.print(CardSheet.A5, 1);
    double[][] tilts = {{18, 200}, {30, 300}};
    List<Double> errors = new ArrayList<>();
    for (int i = 0; i < tilts.length; i++) {
      CameraPlan camera = CardPictures.camera(tilts[i][0], tilts[i][1]);
      Measured measured = CardPictures.measured(CardPictures.plan(card, camera, 3 + i), TRUE_PRINT);
      assertThat(measured.record().scale().source()).isEqualTo("card");
      assertThat(measured.scaleError()).isCloseTo(0, within(0.002));
      assertThat(measured.errors()).hasSize(7);
      errors.addAll(measured.errors());
    }
    double[] sorted = errors.stream().mapToDouble(Math::abs).sorted().toArray();
    assertThat(sorted[(int) Math.floor(0.95 * (sorted.length - 1))]).isLessThan(0.25);
  }

  @Test
  void twoOfFourSquaresAreEnoughAndOneCoveredInPartDoesNoHarm() throws IOException {
    PhotoPlan plan =
        CardPictures.plan(CardPictures.print(CardSheet.A5, 1), CardPictures.camera(12, 240), 8)
            .with(coinOn(0))
            .with(
                new Clutter(
                    Clutter.Kind.DISC,
                    new Placement(square(2).xMm() - 15, square(2).yMm() + 5, 0),
                    LinearRgb.ofSrgb(90, 90, 96)));

    Measured measured = CardPictures.measured(plan, TRUE_PRINT);

    assertThat(CardFinder.find(CardPictures.photo(measured.drawn())).card().orElseThrow().corners())
        .isEqualTo(8);
    assertThat(measured.record().scale().source()).isEqualTo("card");
    assertThat(measured.scaleError()).isCloseTo(0, within(0.004));
    assertThat(largest(measured.errors())).isLessThan(0.5);
  }

  /** A corner that stands up by 15 mm, and a sheet whose ends do by 12 mm, under a flat strip. */
  @Test
  void aCardThatCurlsIsSaid() throws IOException {
    PrintItem card = CardPictures.print(CardSheet.A5, 1);
    Measured corner =
        CardPictures.measured(
            CardPictures.plan(
                card.bent(new Bend(Bend.Kind.CORNER, 15, 1)), CardPictures.camera(8, 240), 8),
            TRUE_PRINT);
    Measured cup =
        CardPictures.measured(
            CardPictures.plan(
                card.bent(new Bend(Bend.Kind.CUP, 12, 1)), CardPictures.camera(8, 240), 8),
            TRUE_PRINT);

    assertThat(corner.warnings()).contains("card-square-left-out");
    assertThat(corner.scaleError()).isCloseTo(0, within(0.002));
    assertThat(largest(corner.errors())).isLessThan(0.25);
    assertThat(cup.warnings()).contains("card-not-flat");
  }

  /** The strip covers the right edge of the grey place, and the bar beside it. */
  @Test
  void ofAStripAcrossTheEdgeOfItsPlaceTheRefusalSaysSo() throws IOException {
    PhotoPlan plan =
        CardPictures.plan(
            CardPictures.print(CardSheet.A5, 1),
            CardPictures.camera(8, 240),
            8,
            StripItem.of(CardPictures.strip(8), new Placement(38, 4, 2)));

    assertThatThrownBy(() -> CardPictures.measured(plan, TRUE_PRINT))
        .hasMessageContaining("lay it on the grey");
  }

  @Test
  void oneSquareAloneIsSaidNotUsed() throws IOException {
    PhotoPlan plan =
        CardPictures.plan(CardPictures.print(CardSheet.A5, 1), CardPictures.camera(5, 240), 8);
    for (int corner : new int[] {0, 1, 3}) {
      plan = plan.with(coinOn(corner));
    }
    DrawnPicture drawn = Photographer.take(plan);

    CardFinder.Finding finding = CardFinder.find(CardPictures.photo(drawn));

    assertThat(finding.card()).isEmpty();
    assertThat(finding.doubts()).extracting(d -> d.code()).containsExactly("card-not-used");
  }

  /** A page that was fitted when it was printed is told by the sheet's own edges, or the bar. */
  @Test
  void aFittedPageIsMadeTrueByTheEdgesOfItsSheetAndByTheMeasuredBar() throws IOException {
    PhotoPlan plan =
        CardPictures.plan(fitted(), CardPictures.camera(10, 250), 9).onto(Desk.DARK_BENCH);
    DrawnPicture drawn = Photographer.take(plan);

    Measured unsaid = CardPictures.measured(drawn, UNSAID);
    Measured said = CardPictures.measured(drawn, OptionalDouble.of(97));

    assertThat(unsaid.warnings()).contains("print-scaled");
    assertThat(unsaid.scaleError()).isCloseTo(0, within(0.006));
    assertThat(said.warnings()).isEmpty();
    assertThat(said.scaleError()).isCloseTo(0, within(0.002));
    assertThat(largest(said.errors())).isLessThan(0.3);
  }

  /** Of a scan the resolution counts, and the card in it is compared. */
  @Test
  void aScansResolutionIsComparedWithTheCard() throws IOException {
    double pxPerMm = 5.2;
    CameraPlan scanner = CameraPlan.above(820, 1150, pxPerMm);
    PhotoPlan plan = CardPictures.plan(fitted(), scanner, 9).onto(Desk.DARK_BENCH);

    Measured measured =
        CardPictures.measured(
            Photographer.take(plan),
            UNSAID,
            Optional.of(new Resolution(25.4 * pxPerMm, 25.4 * pxPerMm)));

    assertThat(measured.record().scale().source()).isEqualTo("resolution");
    assertThat(measured.scaleError()).isCloseTo(0, within(0.001));
    assertThat(measured.warnings()).contains("scales-disagree");
    assertThat(measured.record().warnings().toString()).contains("97.");
  }

  /** The print at 97 % about the middle of a true A5 sheet. */
  private static PrintItem fitted() throws IOException {
    Picture whole = Picture.of(CardPictures.rendered(CardSheet.A5, 240));
    int w = (int) Math.round(whole.widthPx() / 0.97);
    int h = (int) Math.round(whole.heightPx() / 0.97);
    byte[] rgb = new byte[3 * w * h];
    Arrays.fill(rgb, (byte) 255);
    byte[] inner = whole.rgb();
    int left = (w - whole.widthPx()) / 2;
    int top = (h - whole.heightPx()) / 2;
    for (int y = 0; y < whole.heightPx(); y++) {
      System.arraycopy(
          inner, 3 * y * whole.widthPx(), rgb, 3 * ((y + top) * w + left), 3 * whole.widthPx());
    }
    return new PrintItem(new Picture(w, h, rgb), 240 / 25.4 / 0.97, new Placement(0, 0, 0));
  }

  /** The ruler lies beside the card; both must tell the same. */
  @Test
  void aRulerInThePictureChecksThePrint() throws IOException {
    RulerItem ruler = new RulerItem(RulerPlan.school(), new Placement(92, 0, 90));
    CameraPlan camera = CameraPlan.above(1180, 1150, 5.2).tilted(8, 260, 0);
    PhotoPlan plan = CardPictures.plan(CardPictures.print(CardSheet.A5, 1), camera, 5).with(ruler);
    PhotoPlan small = CardPictures.plan(fitted(), camera, 5).with(ruler);

    Measured agreeing = CardPictures.measured(plan, UNSAID);
    Measured apart = CardPictures.measured(small, UNSAID);

    assertThat(agreeing.warnings()).isEmpty();
    assertThat(agreeing.record().scale().source()).isEqualTo("card");
    assertThat(agreeing.scaleError()).isCloseTo(0, within(0.002));
    assertThat(apart.warnings()).contains("scales-disagree");
    assertThat(apart.record().scale().source()).isEqualTo("ruler");
    assertThat(apart.scaleError()).isCloseTo(0, within(0.006));
  }

  /** The sheet's edges are out of the picture: nothing tells how large the print is. */
  @Test
  void anUncheckedPrintAndTooMuchLightAreSaid() throws IOException {
    CameraPlan near = CameraPlan.above(1000, 1437, 7.04);

    Measured measured =
        CardPictures.measured(
            CardPictures.plan(CardPictures.print(CardSheet.A5, 1), near, 6)
                .with(SensorPlan.good().withExposure(1.3)),
            UNSAID);

    assertThat(measured.warnings()).contains("print-not-checked", "over-exposed");
    assertThat(measured.record().scale().source()).isEqualTo("card");
  }

  @Test
  void aStripBesideTheCardIsMeasuredByIt() throws IOException {
    PhotoPlan plan =
        CardPictures.plan(
            CardPictures.print(CardSheet.A5, 1),
            CameraPlan.above(1450, 1250, 5.6).tilted(6, 240, 0),
            5);
    PhotoPlan.Things things = plan.things();
    PhotoPlan beside =
        plan.with(
            new PhotoPlan.Things(
                List.of(StripItem.of(CardPictures.strip(5), new Placement(56, 0, -3))),
                List.of(),
                List.of(),
                false,
                List.of(
                    new PrintItem(
                        things.prints().get(0).print(),
                        things.prints().get(0).pxPerMm(),
                        new Placement(-52, 0, 1)))));

    Measured measured = CardPictures.measured(beside, UNSAID);

    assertThat(measured.record().scale().source()).isEqualTo("card");
    assertThat(measured.scaleError()).isCloseTo(0, within(0.003));
    assertThat(largest(measured.errors())).isLessThan(0.4);
  }

  @Test
  void aPictureWithoutACardHasNone() {
    DrawnPicture drawn =
        Photographer.take(
            PhotoPlan.of(
                    CardPictures.camera(10, 250),
                    IntStream.range(0, 2)
                        .mapToObj(
                            i ->
                                StripItem.of(
                                    CardPictures.strip(i), new Placement(90 * i - 45.0, 0, 0)))
                        .toArray(StripItem[]::new))
                .onto(Desk.TILES)
                .with(coinOn(1)));

    CardFinder.Finding finding = CardFinder.find(CardPictures.photo(drawn));

    assertThat(finding.card()).isEmpty();
    assertThat(finding.doubts()).isEmpty();
  }
}
