package wickmark.testdata.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.colour.SrgbCurve;
import wickmark.testdata.picture.DrawnPicture;
import wickmark.testdata.picture.Picture;
import wickmark.testdata.strip.Cut;
import wickmark.testdata.strip.DyeCupboard;
import wickmark.testdata.strip.Figure;
import wickmark.testdata.strip.LanePlan;
import wickmark.testdata.strip.Paper;
import wickmark.testdata.strip.SpotPlan;
import wickmark.testdata.strip.SpotShape;
import wickmark.testdata.strip.StripPlan;
import wickmark.testdata.truth.PointPx;
import wickmark.testdata.truth.RulerTruth;
import wickmark.testdata.truth.SpotTruth;

class PhotographerTest {
  private static final StripPlan STRIP =
      StripPlan.sheet(40, 80)
          .front(70)
          .cut(Cut.GUILLOTINE)
          .namedLane(
              LanePlan.reference(
                  "A", 20, SpotPlan.of(DyeCupboard.LEAF, 0.5, 0.8, SpotShape.gaussian(2.5, 2.5))))
          .seed(3)
          .build();
  private static final SensorPlan CLEAN =
      new SensorPlan(0, new SensorPlan.Motion(0, 0), 0, 0.9, 0, new SensorPlan.Finish(0, 0));

  private static PhotoPlan plan() {
    CameraPlan camera = CameraPlan.above(480, 640, 6).tilted(14, 230, 8).withDistortion(-0.02);
    return PhotoPlan.of(
            camera,
            StripItem.of(STRIP, new Placement(-8, 3, 12)).bent(new Bend(Bend.Kind.BOW, 1.5, 2)))
        .with(new RulerItem(RulerPlan.school(), new Placement(42, 0, 94)))
        .onto(Desk.DARK_BENCH)
        .with(CLEAN)
        .seeded(11);
  }

  private static int brightness(Picture picture, double x, double y) {
    return picture.value((int) Math.floor(x), (int) Math.floor(y), 1);
  }

  @Test
  void theSamePlanGivesTheSamePixels() {
    byte[] first = Photographer.take(plan().with(SensorPlan.good())).picture().rgb();
    byte[] second = Photographer.take(plan().with(SensorPlan.good())).picture().rgb();

    assertThat(first).isEqualTo(second);
  }

  @Test
  void anotherSeedGivesOtherNoise() {
    byte[] first = Photographer.take(plan().with(SensorPlan.good())).picture().rgb();
    byte[] second = Photographer.take(plan().with(SensorPlan.good()).seeded(12)).picture().rgb();

    assertThat(first).isNotEqualTo(second);
  }

  @Test
  void thePaperEndsAtItsProjectedCorners() {
    DrawnPicture drawn = Photographer.take(plan());
    List<PointPx> corners = drawn.strip().corners();
    double middleX = corners.stream().mapToDouble(PointPx::x).average().orElseThrow();
    double middleY = corners.stream().mapToDouble(PointPx::y).average().orElseThrow();

    for (PointPx corner : corners) {
      double dx = (middleX - corner.x()) / corner.distanceTo(new PointPx(middleX, middleY));
      double dy = (middleY - corner.y()) / corner.distanceTo(new PointPx(middleX, middleY));
      assertThat(brightness(drawn.picture(), corner.x() + 4 * dx, corner.y() + 4 * dy))
          .isGreaterThan(170);
      assertThat(brightness(drawn.picture(), corner.x() - 4 * dx, corner.y() - 4 * dy))
          .isLessThan(110);
    }
  }

  @Test
  void theGraduationIsWhereTheTruthSaysAndNowhereElse() {
    DrawnPicture drawn = Photographer.take(plan());
    RulerTruth ruler = drawn.ruler().orElseThrow();
    List<RulerTruth.Mark> inside =
        ruler.marks().stream()
            .filter(m -> Math.abs(m.outer().x() - 240) < 180 && Math.abs(m.outer().y() - 320) < 280)
            .toList();

    assertThat(inside).hasSizeGreaterThan(4);
    for (RulerTruth.Mark mark : inside) {
      // Beyond the shorter neighbours' ends, only a numbered graduation is dark.
      double x = 0.15 * mark.outer().x() + 0.85 * mark.inner().x();
      double y = 0.15 * mark.outer().y() + 0.85 * mark.inner().y();
      double nextX = ruler.marks().get(1).inner().x() - ruler.marks().get(0).inner().x();
      double nextY = ruler.marks().get(1).inner().y() - ruler.marks().get(0).inner().y();
      assertThat(brightness(drawn.picture(), x, y))
          .isLessThan(brightness(drawn.picture(), x + 0.25 * nextX, y + 0.25 * nextY) - 25);
    }
  }

  @Test
  void aTapesLongMarksEndWhereTheTruthSaysAndItsDigitsStandBetweenThem() {
    RulerPlan tape =
        new RulerPlan(
            RulerPlan.Material.TAPE,
            150,
            18,
            0.4,
            RulerPlan.Graduation.TAPE,
            RulerPlan.Graduation.BARE);
    PhotoPlan plan =
        PhotoPlan.of(CameraPlan.above(900, 400, 8))
            .with(new RulerItem(tape, new Placement(0, 0, 0)))
            .with(CLEAN);

    DrawnPicture drawn = Photographer.take(plan);
    List<RulerTruth.Mark> marks = drawn.ruler().orElseThrow().marks().subList(4, 11);

    for (RulerTruth.Mark mark : marks) {
      double x = mark.inner().x();
      double length = mark.inner().y() - mark.outer().y();
      int cloth = brightness(drawn.picture(), x, mark.inner().y() + 0.1 * length);
      assertThat(brightness(drawn.picture(), x, mark.inner().y() - 0.04 * length))
          .isLessThan(cloth - 60);
      // Digits are 4 mm high around 8 mm from the edge, half a centimetre before their mark.
      int darkest = 255;
      for (double off = -3; off <= 3; off += 0.1) {
        double at = x + 8 * (off - 5);
        darkest = Math.min(darkest, brightness(drawn.picture(), at, mark.outer().y() + 8 * 8));
      }
      assertThat(darkest).isLessThan(cloth - 60);
    }
  }

  @Test
  void aSpotIsSeenWhereItsCentroidIsProjected() {
    DrawnPicture drawn = Photographer.take(plan());
    SpotTruth spot = drawn.strip().strip().lane("A").spots().get(0);
    PointPx centre = drawn.strip().at(spot.centroid());
    double sum = 0;
    double sumX = 0;
    double sumY = 0;
    for (int y = (int) centre.y() - 40; y < centre.y() + 40; y++) {
      for (int x = (int) centre.x() - 40; x < centre.x() + 40; x++) {
        double weight = Math.max(0, 205 - drawn.picture().value(x, y, 0));
        sum += weight;
        sumX += weight * (x + 0.5);
        sumY += weight * (y + 0.5);
      }
    }

    assertThat(sumX / sum).isCloseTo(centre.x(), within(0.6));
    assertThat(sumY / sum).isCloseTo(centre.y(), within(0.6));
  }

  @Test
  void aRulerOnTheStripShadesItOnlyWhereThatIsAskedFor() {
    // Its long side lies on the strip's left part and faces away from the light, which comes from
    // the upper left.
    PhotoPlan bare =
        PhotoPlan.of(CameraPlan.above(320, 480, 6), StripItem.of(STRIP, new Placement(0, 0, 0)))
            .with(CLEAN);
    PhotoPlan plain = bare.with(new RulerItem(RulerPlan.school(), new Placement(-26, 0, 90)));
    PhotoPlan shading = plain.with(plain.things().shadingThings());

    // The side is at -10 mm, so 0.6 mm beside it is at 160 - 9.4 * 6 px.
    double beside = 160 - 9.4 * 6;
    int open = brightness(Photographer.take(bare).picture(), beside, 200);
    assertThat(brightness(Photographer.take(plain).picture(), beside, 200))
        .isCloseTo(open, within(4));
    Picture shaded = Photographer.take(shading).picture();
    assertThat(brightness(shaded, beside, 200)).isLessThan(open - 20);
    assertThat(brightness(shaded, 160 + 6 * 10, 200)).isGreaterThan(open - 6);
  }

  @Test
  void aPointedSheetCastsNoShadowWhereItIsCutOff() {
    StripPlan pointed =
        StripPlan.sheet(40, 80).front(100).cut(Cut.GUILLOTINE.to(Figure.pointed(20))).build();
    PhotoPlan plain =
        PhotoPlan.of(CameraPlan.above(320, 560, 6), StripItem.of(pointed, new Placement(0, 0, 0)))
            .onto(Desk.WHITE_BENCH)
            .with(CLEAN);

    Picture picture = Photographer.take(plain).picture();

    // 1.5 mm from what would be the sheet's lower left corner, and as far from all paper.
    int corner = brightness(picture, 160 - 18.5 * 6, 280 + 38.5 * 6);
    assertThat(corner).isCloseTo(brightness(picture, 20, 540), within(8));
  }

  @Test
  void paperUnderEvenLightShowsItsOwnColour() {
    StripPlan blank =
        StripPlan.sheet(40, 80)
            .front(100)
            .paper(new Paper(LinearRgb.ofSrgb(230, 220, 200), 0, 0, 0.2))
            .build();
    PhotoPlan plain =
        PhotoPlan.of(CameraPlan.above(320, 480, 5), StripItem.of(blank, new Placement(0, 0, 0)))
            .with(CLEAN);

    Picture picture = Photographer.take(plain).picture();

    int expected = (int) Math.round(255 * SrgbCurve.encode(0.9 * SrgbCurve.decode(220 / 255.0)));
    assertThat(brightness(picture, 160, 200)).isCloseTo(expected, within(2));
  }
}
