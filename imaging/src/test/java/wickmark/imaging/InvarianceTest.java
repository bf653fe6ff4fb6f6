package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import wickmark.core.chromatogram.LaneEvidence;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.Resolution;
import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.picture.DrawnPicture;
import wickmark.testdata.picture.Picture;
import wickmark.testdata.picture.PictureChange;
import wickmark.testdata.scene.CameraPlan;
import wickmark.testdata.scene.Desk;
import wickmark.testdata.scene.LightPlan;
import wickmark.testdata.scene.PhotoPlan;
import wickmark.testdata.scene.Photographer;
import wickmark.testdata.scene.Placement;
import wickmark.testdata.scene.RulerItem;
import wickmark.testdata.scene.RulerPlan;
import wickmark.testdata.scene.ScanPlan;
import wickmark.testdata.scene.Scanner;
import wickmark.testdata.scene.SensorPlan;
import wickmark.testdata.scene.StripItem;
import wickmark.testdata.strip.DyeCupboard;
import wickmark.testdata.strip.LanePlan;
import wickmark.testdata.strip.SpotPlan;
import wickmark.testdata.strip.SpotShape;
import wickmark.testdata.strip.StripPlan;
import wickmark.testdata.truth.LaneTruth;
import wickmark.testdata.truth.SpotTruth;

/**
 * What must not matter does not: however a picture was turned, resized, lit or saved, the strip in
 * it has the lanes, spots and Rf that it had, and they are the drawn ones. Every change is made to
 * four pictures. Whichever way a file stores its picture, turned or mirrored, the reader of files
 * gives the same pixels, upright: that is tested where files are read.
 */
class InvarianceTest {
  /**
   * A third of 0.012, the least standard deviation of one dye's Rf over three benches of a school
   * class (student write-up, experiment "Separation of a mixture by paper chromatography").
   */
  private static final double SAME = 0.004;

  private static final double TRUE = 0.01;

  private static final Map<Shot, DrawnPicture> DRAWN = new EnumMap<>(Shot.class);
  private static final Map<Shot, List<List<Double>>> UNTOUCHED = new EnumMap<>(Shot.class);

  /** The pictures; in all of them white leaves room for half a stop more of light. */
  enum Shot {
    SCAN,
    TILTED,
    BESIDE_A_RULER,
    HALF_IN_SHADOW,
    FROM_FARTHER;

    /** Dots per inch that the file says; 0 where it says none. */
    double dpi() {
      return this == SCAN ? 200 : 0;
    }

    DrawnPicture drawn() {
      return DRAWN.computeIfAbsent(this, Shot::draw);
    }

    private DrawnPicture draw() {
      return switch (this) {
        case SCAN -> dimScan(ScanPlan.of(DrawnStrips.sheet().build(), dpi(), 8));
        case TILTED -> tilted();
        case BESIDE_A_RULER -> besideRuler();
        case HALF_IN_SHADOW -> halfInShadow();
        case FROM_FARTHER -> fromFarther();
      };
    }
  }

  /** Small spots, as a fine capillary leaves them. */
  private static StripPlan small(long seed) {
    return StripPlan.sheet(60, 95)
        .baseline(17, 0.4)
        .front(81)
        .namedLane(LanePlan.reference("A", 12, spot(DyeCupboard.SKY, 0.3, 0)))
        .namedLane(LanePlan.reference("B", 30, spot(DyeCupboard.CORAL, 0.55, 0)))
        .namedLane(
            LanePlan.unknown(
                "X", 48, spot(DyeCupboard.SKY, 0.3, 0), spot(DyeCupboard.CORAL, 0.55, 0)))
        .seed(seed)
        .build();
  }

  private static DrawnPicture dimScan(ScanPlan plan) {
    return Scanner.scan(
        new ScanPlan(
            plan.dpi(),
            plan.glass(),
            plan.strips(),
            plan.rulers(),
            SensorPlan.scanner().withExposure(0.62),
            plan.seed()));
  }

  private static DrawnPicture tilted() {
    return Photographer.take(
        PhotoPlan.of(
                CameraPlan.above(1000, 1300, 9).tilted(14, 250, 0),
                StripItem.of(small(41), new Placement(0, 0, 3)))
            .with(SensorPlan.good().withExposure(0.62))
            .onto(Desk.OAK));
  }

  private static DrawnPicture besideRuler() {
    StripPlan plan =
        StripPlan.sheet(70, 105)
            .baseline(20, -0.6)
            .front(90)
            .namedLane(LanePlan.reference("A", 12, spot(DyeCupboard.LEAF, 0.35, 0)))
            .namedLane(LanePlan.reference("B", 27, spot(DyeCupboard.FUCHSIA, 0.62, 4)))
            .namedLane(LanePlan.reference("C", 42, spot(DyeCupboard.ORANGE, 0.81, 0)))
            .namedLane(
                LanePlan.unknown(
                    "X", 57, spot(DyeCupboard.LEAF, 0.35, 0), spot(DyeCupboard.ORANGE, 0.81, 0)))
            .seed(23)
            .build();
    return Photographer.take(
        PhotoPlan.of(
                CameraPlan.above(1250, 1150, 8).tilted(9, 30, 2),
                StripItem.of(plan, new Placement(-18, 0, -4)))
            .with(new RulerItem(RulerPlan.school(), new Placement(42, 0, 87)))
            .lit(LightPlan.even().withSlope(-0.9, 0.6))
            .with(SensorPlan.good().withExposure(0.55))
            .onto(Desk.DARK_BENCH)
            .seeded(5));
  }

  private static DrawnPicture halfInShadow() {
    LightPlan.ShadowEdge edge =
        new LightPlan.ShadowEdge(-6, 8, 200, 9, new LinearRgb(0.66, 0.69, 0.73));
    return Photographer.take(
        PhotoPlan.of(
                CameraPlan.above(1000, 1200, 9).tilted(6, 120, -3),
                StripItem.of(small(31), new Placement(0, 0, 5)))
            .lit(LightPlan.even().withEdges(List.of(edge)))
            .with(SensorPlan.good().withExposure(0.6))
            .onto(Desk.SAND_LAMINATE)
            .seeded(7));
  }

  private static DrawnPicture fromFarther() {
    return Photographer.take(
        PhotoPlan.of(
                CameraPlan.above(1100, 1200, 7.5).tilted(10, 140, 5),
                StripItem.of(small(57), new Placement(3, -2, -6)))
            .with(SensorPlan.good().withExposure(0.6))
            .onto(Desk.DARK_BENCH)
            .seeded(11));
  }

  private static SpotPlan spot(wickmark.testdata.strip.Dye dye, double rf, double tailMm) {
    return SpotPlan.of(dye, rf, 0.5, SpotShape.gaussian(1.6, 1.4).withTail(tailMm));
  }

  /**
   * Every change on four pictures. Saving as a JPEG makes the pale foot of a long tail denser or
   * paler, and with it moves the centre of mass: so that picture is saved again in another's place.
   */
  static Stream<Arguments> changed() {
    return Arrays.stream(PictureChange.values())
        .flatMap(
            change ->
                Arrays.stream(Shot.values())
                    .filter(
                        shot ->
                            shot
                                != (change == PictureChange.SAVED_AGAIN
                                    ? Shot.BESIDE_A_RULER
                                    : Shot.FROM_FARTHER))
                    .map(shot -> Arguments.of(shot, change)));
  }

  @ParameterizedTest
  @EnumSource(Shot.class)
  void thePictureAsItIsHasTheDrawnRf(Shot shot) {
    isNear(untouched(shot), truth(shot), TRUE);
  }

  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("changed")
  void theChangedPictureHasTheSame(Shot shot, PictureChange change) {
    List<List<Double>> read = read(change.of(shot.drawn().picture()), shot.dpi() * change.size());
    isNear(read, untouched(shot), SAME);
    isNear(read, truth(shot), TRUE);
  }

  private static List<List<Double>> untouched(Shot shot) {
    return UNTOUCHED.computeIfAbsent(shot, s -> read(s.drawn().picture(), s.dpi()));
  }

  private static void isNear(
      List<List<Double>> found, List<List<Double>> expected, double difference) {
    assertThat(found.stream().map(List::size))
        .isEqualTo(expected.stream().map(List::size).toList());
    for (int lane = 0; lane < found.size(); lane++) {
      for (int spot = 0; spot < found.get(lane).size(); spot++) {
        assertThat(found.get(lane).get(spot))
            .as("Rf of spot %d in lane %d, from the left and from below", spot + 1, lane + 1)
            .isCloseTo(expected.get(lane).get(spot), within(difference));
      }
    }
  }

  /** Rf from the baseline up, lane by lane from the left. */
  private static List<List<Double>> read(Picture picture, double dpi) {
    Optional<Resolution> resolution =
        dpi > 0 ? Optional.of(new Resolution(dpi, dpi)) : Optional.empty();
    Photo photo =
        new Photo(
            picture.widthPx(),
            picture.heightPx(),
            picture.rgb(),
            resolution,
            OptionalDouble.empty(),
            false);
    List<List<Double>> rf = new ArrayList<>();
    List<StripOutcome> outcomes = StripReader.readAll(photo, ReadingRequest.nothing());
    assertThat(outcomes.size()).as("strips").isEqualTo(1);
    for (LaneEvidence lane : lanes(outcomes.get(0))) {
      rf.add(
          lane.spots().stream()
              .map(spot -> spot.centroid().along() / lane.front().along())
              .sorted()
              .toList());
    }
    return rf;
  }

  private static List<LaneEvidence> lanes(StripOutcome outcome) {
    return outcome.fold(
        reading -> reading.evidence().lanes(),
        refusal -> {
          throw new AssertionError(refusal.message());
        });
  }

  private static List<List<Double>> truth(Shot shot) {
    List<List<Double>> rf = new ArrayList<>();
    for (LaneTruth lane : shot.drawn().strip().strip().lanes()) {
      rf.add(
          lane.spots().stream()
              .filter(spot -> !spot.residue())
              .map(SpotTruth::rf)
              .sorted(Comparator.naturalOrder())
              .toList());
    }
    return rf;
  }
}
