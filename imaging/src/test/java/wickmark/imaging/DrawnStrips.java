package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.photo.Resolution;
import wickmark.testdata.picture.DrawnPicture;
import wickmark.testdata.scene.CameraPlan;
import wickmark.testdata.scene.Desk;
import wickmark.testdata.scene.PhotoPlan;
import wickmark.testdata.scene.Photographer;
import wickmark.testdata.scene.Placement;
import wickmark.testdata.scene.ScanPlan;
import wickmark.testdata.scene.Scanner;
import wickmark.testdata.scene.StripItem;
import wickmark.testdata.strip.DyeCupboard;
import wickmark.testdata.strip.LanePlan;
import wickmark.testdata.strip.SolventFront;
import wickmark.testdata.strip.SpotPlan;
import wickmark.testdata.strip.SpotShape;
import wickmark.testdata.strip.StripPlan;
import wickmark.testdata.strip.StripPlanBuilder;
import wickmark.testdata.truth.PointMm;
import wickmark.testdata.truth.PointPx;

/** Drawn pictures of a small strip with three lanes, and ways from their truth to the photo. */
final class DrawnStrips {
  static final double WIDTH_MM = 64;
  static final double HEIGHT_MM = 100;
  static final double DPI = 150;

  private DrawnStrips() {}

  /** The plain strip scanned, drawn once for all tests of a process. */
  static final class Plain {
    static final DrawnPicture SCAN = scan(sheet().build());

    private Plain() {}
  }

  /** The plain strip photographed from a side, drawn once for all tests of a process. */
  static final class Tilted {
    static final DrawnPicture PHOTO = tilted(sheet().build());

    private Tilted() {}
  }

  /** Baseline at 18 mm, pencilled front at 84 mm. */
  static StripPlanBuilder sheet() {
    return StripPlan.sheet(WIDTH_MM, HEIGHT_MM)
        .baseline(18, 0.3)
        .front(84)
        .namedLane(LanePlan.reference("A", 14, spot(DyeCupboard.EGG, 0.72)))
        .namedLane(LanePlan.reference("B", 32, spot(DyeCupboard.RASPBERRY, 0.48)))
        .namedLane(
            LanePlan.unknown("X", 50, spot(DyeCupboard.EGG, 0.72), spot(DyeCupboard.SKY, 0.25)))
        .seed(11);
  }

  /** The same with a front that left nothing to be seen. */
  static StripPlanBuilder unseenFront() {
    return sheet().front(new SolventFront(84, 0, 0, SolventFront.Mark.NONE, 0, 0));
  }

  static SpotPlan spot(wickmark.testdata.strip.Dye dye, double rf) {
    return SpotPlan.of(dye, rf, 0.6, SpotShape.gaussian(2.2, 1.8));
  }

  static DrawnPicture scan(StripPlan plan) {
    return Scanner.scan(ScanPlan.of(plan, DPI, 8).under(ScanPlan.Lid.BLACK));
  }

  static DrawnPicture tilted(StripPlan plan) {
    return Photographer.take(
        PhotoPlan.of(
                CameraPlan.above(1000, 1300, 9).tilted(14, 250, 0),
                StripItem.of(plan, new Placement(0, 0, 3)))
            .onto(Desk.OAK));
  }

  /** The photo with a scan's resolution. */
  static Photo scanned(DrawnPicture picture, double dpi) {
    return photo(picture, Optional.of(new Resolution(dpi, dpi)));
  }

  /** The photo of which the file says nothing. */
  static Photo bare(DrawnPicture picture) {
    return photo(picture, Optional.empty());
  }

  private static Photo photo(DrawnPicture picture, Optional<Resolution> resolution) {
    return new Photo(
        picture.picture().widthPx(),
        picture.picture().heightPx(),
        picture.picture().rgb(),
        resolution,
        OptionalDouble.empty(),
        false);
  }

  /** Where a place on the first strip is seen. */
  static PhotoPoint seen(DrawnPicture picture, double xMm, double yMm) {
    PointPx p = picture.strip().at(new PointMm(xMm, yMm));
    return new PhotoPoint(p.x(), p.y());
  }

  static List<PhotoPoint> corners(DrawnPicture picture) {
    return picture.strip().corners().stream().map(p -> new PhotoPoint(p.x(), p.y())).toList();
  }

  /** Fails if a corner was found more than so many pixels off. */
  static void assertCorners(StripReading reading, DrawnPicture picture, double withinPx) {
    List<PhotoPoint> found = reading.placed().corners();
    List<PhotoPoint> truth = corners(picture);
    for (int i = 0; i < 4; i++) {
      double off =
          Math.hypot(found.get(i).x() - truth.get(i).x(), found.get(i).y() - truth.get(i).y());
      assertThat(off).as("corner %d, px", i).isLessThan(withinPx);
    }
  }
}
