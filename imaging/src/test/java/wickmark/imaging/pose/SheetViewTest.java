package wickmark.imaging.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wickmark.imaging.photo.PhotoPoint;

/** A view that is known exactly, and what the fit makes of the places that it shows. */
class SheetViewTest {
  private static final double SIGMA_CORNER_PX = 0.7;
  private static final double SIGMA_MARK_PX = 0.4;

  /** 2000 px diagonal; 1500 px of focal length are 32.5 mm on a 36 x 24 mm frame. */
  private static final PlaneView TRUE = new PlaneView(800, 600, 1500, 0.01, 0.3, -0.22);

  @Test
  void exactPlacesGiveTiltAndFocalLengthWithinWhatIsSaid() {
    SheetView fit = SheetView.of(evidence(0, new Random(1)));
    for (int i = 0; i < 4; i++) {
      assertThat(Math.abs(z(fit, TRUE, i))).as("parameter %d", i).isLessThan(2);
    }
    // Cameras in general leave 0.25 and 0.35 open; how square the sheet is cut nobody knows.
    assertThat(Math.sqrt(fit.covariance()[0][0])).isLessThan(0.12);
    assertThat(Math.sqrt(fit.covariance()[2][2])).isLessThan(0.04);
    assertThat(Math.sqrt(fit.covariance()[3][3])).isLessThan(0.04);
    assertThat(Math.abs(fit.view().tilt() - TRUE.tilt())).isLessThan(0.02);
  }

  /** Cameras as they are met, all of which bend the corners about alike; no file tells of it. */
  @Test
  void errorsOfNoisyPlacesAreAsLargeAsIsSaid() {
    Random chance = new Random(7);
    double[] square = new double[4];
    int runs = 60;
    for (int run = 0; run < runs; run++) {
      double zoom = Math.exp(0.25 * chance.nextGaussian());
      double distortion = 0.015 * zoom * zoom * chance.nextGaussian();
      PlaneView camera = new PlaneView(800, 600, 32 * 2000 / 43.267 * zoom, distortion, 0.3, -0.22);
      SheetView fit = SheetView.of(evidence(camera, 1, chance));
      for (int i = 0; i < 4; i++) {
        square[i] += z(fit, camera, i) * z(fit, camera, i) / runs;
      }
    }
    // Paper that is cut exactly square leaves less error than is granted to scissors.
    for (int i = 0; i < 4; i++) {
      assertThat(Math.sqrt(square[i])).as("parameter %d", i).isBetween(0.1, 1.35);
    }
  }

  /**
   * Marks in the glare begin and end where they do not: their row seems to bow by 3 px, though each
   * stands where it should along the ruler. That is no distortion of the lens.
   */
  @Test
  void aRowWhoseMarksAreSeenBadlyAcrossItBendsNoLens() {
    PlaneEvidence straight = evidence(0, new Random(1));
    PlaneEvidence.Division row = straight.divisions().get(0);
    PhotoPoint first = row.at().get(0);
    PhotoPoint last = row.at().get(row.at().size() - 1);
    double length = Math.hypot(last.x() - first.x(), last.y() - first.y());
    List<PhotoPoint> bowed = new ArrayList<>();
    for (int k = 0; k < row.at().size(); k++) {
      double t = 2.0 * k / (row.at().size() - 1) - 1;
      double aside = 3 * (1 - t * t);
      bowed.add(
          new PhotoPoint(
              row.at().get(k).x() + aside * (last.y() - first.y()) / length,
              row.at().get(k).y() - aside * (last.x() - first.x()) / length));
    }
    PlaneEvidence seen =
        new PlaneEvidence(
            straight.widthPx(),
            straight.heightPx(),
            straight.focalLength35mm(),
            straight.corners(),
            straight.sides(),
            straight.cornerSigmaPx(),
            List.of(new PlaneEvidence.Division(row.index(), bowed, SIGMA_MARK_PX, 6, 1)));

    SheetView fit = SheetView.of(seen);

    assertThat(fit.view().distortion()).isCloseTo(TRUE.distortion(), within(0.01));
    assertThat(Math.abs(fit.view().tilt() - TRUE.tilt())).isLessThan(0.02);
  }

  private static double z(SheetView fit, PlaneView camera, int i) {
    double off = fit.view().parameters()[i] - camera.parameters()[i];
    return off / Math.sqrt(fit.covariance()[i][i]);
  }

  /** A lens that bends the corners by 2.5 %, three times the usual, is no shorter for that. */
  @Test
  void aLensThatDistortsIsNotTakenForOneOfShorterFocalLength() {
    PlaneView barrel = new PlaneView(800, 600, 1500, 0.055, 0.3, -0.22);
    SheetView fit = SheetView.of(evidence(barrel, 0, new Random(1)));
    assertThat(fit.view().distortion()).isCloseTo(0.055, within(0.008));
    assertThat(Math.log(fit.view().focalPx() / 1500)).isCloseTo(0, within(0.08));
    assertThat(Math.abs(fit.view().tilt() - barrel.tilt())).isLessThan(0.03);
  }

  /** A curled sheet's corners are not on the plane, and how far off nobody knows. */
  @Test
  void aSheetWhoseSidesAreBowedTellsLessOfThePlane() {
    PlaneEvidence flat = evidence(0, new Random(1));
    PlaneEvidence curled =
        new PlaneEvidence(
            flat.widthPx(),
            flat.heightPx(),
            flat.focalLength35mm(),
            flat.corners(),
            bowed(TRUE, 1.5),
            flat.cornerSigmaPx(),
            flat.divisions());

    SheetView ofFlat = SheetView.of(flat);
    SheetView ofCurled = SheetView.of(curled);

    for (int i = 0; i < 4; i++) {
      assertThat(Math.abs(z(ofCurled, TRUE, i))).as("parameter %d", i).isLessThan(2);
    }
    for (int tilt : new int[] {2, 3}) {
      assertThat(Math.sqrt(ofCurled.covariance()[tilt][tilt] / ofFlat.covariance()[tilt][tilt]))
          .isGreaterThan(1.3);
    }
  }

  /** Places along the sheet's sides, each bowed outwards in its middle by so many millimetres. */
  private static List<List<PhotoPoint>> bowed(PlaneView view, double by) {
    double unit = 0.0055 * TRUE.focalPx() / view.focalPx();
    List<List<PhotoPoint>> sides = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      double[] a = CORNERS[i];
      double[] b = CORNERS[(i + 1) % 4];
      double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
      List<PhotoPoint> side = new ArrayList<>();
      for (double t = 0; t <= 1; t += 0.05) {
        double out = 4 * t * (1 - t) * by / length;
        double x = a[0] + t * (b[0] - a[0]) + out * (b[1] - a[1]);
        double y = a[1] + t * (b[1] - a[1]) - out * (b[0] - a[0]);
        side.add(seen(view, unit * x, unit * y, 0, new Random(1)));
      }
      sides.add(side);
    }
    return sides;
  }

  private static PlaneEvidence evidence(double noise, Random chance) {
    return evidence(TRUE, noise, chance);
  }

  private static final double[][] CORNERS = {{-50, -40}, {10, -40}, {10, 60}, {-50, 60}};

  /** A sheet of 60 x 100 with a ruler of 110 marks beside it, seen with so much of its noise. */
  private static PlaneEvidence evidence(PlaneView view, double noise, Random chance) {
    // The sheet fills the picture alike whatever the lens.
    double unit = 0.0055 * TRUE.focalPx() / view.focalPx();
    List<PhotoPoint> corners = new ArrayList<>();
    for (double[] c : CORNERS) {
      corners.add(seen(view, unit * c[0], unit * c[1], noise * SIGMA_CORNER_PX, chance));
    }
    double[] index = new double[110];
    List<PhotoPoint> marks = new ArrayList<>();
    for (int k = 0; k < index.length; k++) {
      index[k] = k;
      marks.add(
          seen(view, unit * (22 + 0.05 * k), unit * (k - 47.0), noise * SIGMA_MARK_PX, chance));
    }
    return new PlaneEvidence(
        1600,
        1200,
        OptionalDouble.empty(),
        corners,
        bowed(view, 0),
        SIGMA_CORNER_PX,
        List.of(new PlaneEvidence.Division(index, marks, SIGMA_MARK_PX, SIGMA_MARK_PX, 1)));
  }

  private static PhotoPoint seen(PlaneView view, double x, double y, double sigma, Random chance) {
    PlanePoint foot = view.toPlane(new PhotoPoint(800, 600));
    PhotoPoint p = view.toPhoto(new PlanePoint(foot.x() + x, foot.y() + y));
    return new PhotoPoint(
        p.x() + sigma * chance.nextGaussian(), p.y() + sigma * chance.nextGaussian());
  }
}
