package wickmark.imaging;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wickmark.testdata.picture.DrawnPicture;
import wickmark.testdata.scene.CameraPlan;
import wickmark.testdata.scene.Desk;
import wickmark.testdata.scene.PhotoPlan;
import wickmark.testdata.scene.Photographer;
import wickmark.testdata.scene.Placement;
import wickmark.testdata.scene.RulerItem;
import wickmark.testdata.scene.RulerPlan;
import wickmark.testdata.scene.StripItem;

/**
 * White paper close beside a ruler, or on one: the ruler's edge is much the clearer step, and it is
 * not the sheet's side.
 */
class BesideRulerTest {
  /** Pixels a millimetre of the drawn photo, about. */
  private static final double PX_PER_MM = 9;

  @ParameterizedTest
  @EnumSource(names = {"YELLOW_PLASTIC", "STEEL"})
  void theSheetEndsWhereItEndsAndNotAtTheRuler(RulerPlan.Material material) {
    RulerPlan ruler =
        new RulerPlan(
            material, 300, 32, 1.2, RulerPlan.Graduation.CENTIMETRES, RulerPlan.Graduation.BARE);
    double gapMm = 2;
    double x = DrawnStrips.WIDTH_MM / 2 + gapMm + ruler.widthMm() / 2;
    DrawnPicture picture =
        Photographer.take(
            PhotoPlan.of(
                    CameraPlan.above(1400, 1500, PX_PER_MM).tilted(10, 250, 0),
                    StripItem.of(DrawnStrips.sheet().build(), new Placement(-10, 0, 0.5)))
                .onto(Desk.WHITE_BENCH)
                .with(new RulerItem(ruler, new Placement(x - 10, 0, 88.5))));
    StripReading reading = SaidPlacesTest.read(DrawnStrips.bare(picture), new RequestBuilder());
    DrawnStrips.assertCorners(reading, picture, 0.5 * PX_PER_MM);
  }

  /** On grained wood, whose straight edges outnumber the sheet's. */
  @Test
  void aSheetOnAWhiteRulerEndsWhereItEnds() {
    RulerPlan ruler =
        new RulerPlan(
            RulerPlan.Material.PAPER,
            300,
            30,
            0.2,
            RulerPlan.Graduation.CENTIMETRES,
            RulerPlan.Graduation.MILLIMETRES);
    StripItem strip = StripItem.of(DrawnStrips.sheet().build(), new Placement(-14, 0, -1));
    RulerItem below = new RulerItem(ruler, new Placement(16.5, 0, 86.6));
    DrawnPicture picture =
        Photographer.take(
            PhotoPlan.of(CameraPlan.above(1400, 1500, PX_PER_MM).tilted(10, 250, 0), strip)
                .onto(Desk.OAK)
                .seeded(10)
                .with(
                    new PhotoPlan.Things(
                        List.of(strip), List.of(below), List.of(), true, List.of())));
    StripReading reading = SaidPlacesTest.read(DrawnStrips.bare(picture), new RequestBuilder());
    DrawnStrips.assertCorners(reading, picture, 0.5 * PX_PER_MM);
  }
}
