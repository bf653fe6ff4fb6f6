package wickmark.imaging;

import org.junit.jupiter.api.Test;
import wickmark.testdata.picture.DrawnPicture;
import wickmark.testdata.scene.CameraPlan;
import wickmark.testdata.scene.Desk;
import wickmark.testdata.scene.PhotoPlan;
import wickmark.testdata.scene.Photographer;
import wickmark.testdata.scene.Placement;
import wickmark.testdata.scene.StripItem;

/** Tiles are quadrilaterals, too, larger and often better seen than the strip that lies on them. */
class OnTilesTest {
  private static final double PX_PER_MM = 5.5;

  @Test
  void theStripIsFoundThoughManyTilesRankBeforeIt() {
    DrawnPicture picture =
        Photographer.take(
            PhotoPlan.of(
                    CameraPlan.above(1536, 2048, PX_PER_MM).tilted(0, 250, 20),
                    StripItem.of(DrawnStrips.sheet().build(), new Placement(-40, -20, 0)))
                .onto(Desk.TILES));

    StripReading reading = SaidPlacesTest.read(DrawnStrips.bare(picture), new RequestBuilder());

    DrawnStrips.assertCorners(reading, picture, 1 * PX_PER_MM);
  }
}
