package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.photo.Resolution;
import wickmark.imaging.scale.Graduation;
import wickmark.imaging.scale.GraduationUnit;
import wickmark.imaging.scale.PixelScale;
import wickmark.imaging.scale.RulerEdge;
import wickmark.imaging.straight.PaperShape;
import wickmark.imaging.strip.StripOutline;

/**
 * Sheets that are not square and rulers beside them, put into the picture by the camera matrix of
 * the textbook (Hartley, Zisserman: Multiple View Geometry in Computer Vision, 2nd edition 2004,
 * section 6.1: x = K R [I | −C] X), and the millimetres that come back.
 */
class PlaneScaleFinderTest {
  private static final int WIDTH = 1600;
  private static final int HEIGHT = 1200;

  /** 2000 px diagonal; 1400 px of focal length are 30.3 mm on a 36 mm × 24 mm frame. */
  private static final double FOCAL_PX = 1400;

  private static final double FOCAL_35MM = FOCAL_PX * 43.267 / 2000;

  /** The strip is 70 mm by 110 mm; millimetres from its lower left corner, y upwards. */
  private static final double[][] STRIP = {{0, 110}, {70, 110}, {70, 0}, {0, 0}};

  /** The ruler's near edge, mm to the right of the strip's left side, and its farther one. */
  private static final double NEAR = 76;

  private static final double FAR = 106;

  /** The middle of the printed faces for which the scale is corrected. */
  private static final double FACE_MM = 0.8;

  /** A lane of the strip, from its origin to the front. */
  private static final double LANE = 22;

  private static final double ORIGIN = 18;
  private static final double FRONT = 96;

  /** A camera over the bench, which is the plane Z = 0: R by rows, and the camera's centre. */
  private record Camera(double[][] r, double[] centre) {
    /** Tilted by turns about its own x and y axes (degrees), its axis through (45, 55) mm. */
    static Camera tilted(double aboutX, double aboutY, double awayMm) {
      double a = Math.toRadians(aboutX);
      double b = Math.toRadians(aboutY);
      // From the bench's x, y (up in the picture), Z (towards the camera) to x, y down, z forward.
      double[][] down = {{1, 0, 0}, {0, -1, 0}, {0, 0, -1}};
      double[][] x = {{1, 0, 0}, {0, Math.cos(a), -Math.sin(a)}, {0, Math.sin(a), Math.cos(a)}};
      double[][] y = {{Math.cos(b), 0, Math.sin(b)}, {0, 1, 0}, {-Math.sin(b), 0, Math.cos(b)}};
      double[][] r = times(y, times(x, down));
      double[] centre = {45 - awayMm * r[2][0], 55 - awayMm * r[2][1], -awayMm * r[2][2]};
      return new Camera(r, centre);
    }

    /** The same, turned about its axis (degrees). */
    Camera turned(double degrees) {
      double c = Math.cos(Math.toRadians(degrees));
      double s = Math.sin(Math.toRadians(degrees));
      return new Camera(times(new double[][] {{c, -s, 0}, {s, c, 0}, {0, 0, 1}}, r), centre);
    }

    private static double[][] times(double[][] a, double[][] b) {
      double[][] c = new double[3][3];
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          for (int k = 0; k < 3; k++) {
            c[i][j] += a[i][k] * b[k][j];
          }
        }
      }
      return c;
    }

    PhotoPoint sees(double x, double y, double z) {
      double[] d = {x - centre[0], y - centre[1], z - centre[2]};
      double[] at = new double[3];
      for (int i = 0; i < 3; i++) {
        at[i] = r[i][0] * d[0] + r[i][1] * d[1] + r[i][2] * d[2];
      }
      return new PhotoPoint(
          WIDTH / 2.0 + FOCAL_PX * at[0] / at[2], HEIGHT / 2.0 + FOCAL_PX * at[1] / at[2]);
    }

    /** Where on the bench a place of the picture is: along the ray to Z = 0. */
    double[] onBench(PhotoPoint seen) {
      double u = (seen.x() - WIDTH / 2.0) / FOCAL_PX;
      double v = (seen.y() - HEIGHT / 2.0) / FOCAL_PX;
      double[] ray = new double[3];
      for (int j = 0; j < 3; j++) {
        ray[j] = r[0][j] * u + r[1][j] * v + r[2][j];
      }
      double t = -centre[2] / ray[2];
      return new double[] {centre[0] + t * ray[0], centre[1] + t * ray[1]};
    }

    RulerEdge edge(double x, GraduationUnit unit, double mmPerMark, Random chance) {
      List<Graduation> marks = new ArrayList<>();
      for (int k = 0; -15 + k * mmPerMark <= 125; k++) {
        PhotoPoint at = sees(x, -15 + k * mmPerMark, FACE_MM);
        marks.add(
            new Graduation(
                k,
                new PhotoPoint(
                    at.x() + 0.1 * chance.nextGaussian(), at.y() + 0.1 * chance.nextGaussian()),
                1));
      }
      return new RulerEdge(marks, unit, 1, 0.1, 0.1, 1);
    }

    RulerEdge edge(double x, GraduationUnit unit, Random chance) {
      return edge(x, unit, unit.millimetres(), chance);
    }

    /** The outline of the strip with its corners moved by so many millimetres. */
    StripOutline outline(double[][] moved) {
      List<PhotoPoint> corners = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        corners.add(sees(STRIP[i][0] + moved[i][0], STRIP[i][1] + moved[i][1], 0));
      }
      List<List<PhotoPoint>> sides = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        sides.add(List.of(corners.get(i), corners.get((i + 1) % 4)));
      }
      return new StripOutline(corners, sides, 0.3, 1);
    }
  }

  /** The places alone count. */
  private static final Photo PHOTO =
      new Photo(
          WIDTH,
          HEIGHT,
          new byte[3 * WIDTH * HEIGHT],
          Optional.empty(),
          OptionalDouble.of(FOCAL_35MM),
          true);

  private static final Camera CAMERA = Camera.tilted(5, -4, 190);
  private static final double[][] SQUARE = new double[4][2];

  /** The upper side runs 2.5 mm down to the right, as scissors without a line cut it. */
  private static final double[][] HAND_CUT = {{0.5, 1.2}, {-0.3, -1.3}, {0.4, 0.6}, {-0.2, -0.4}};

  private record Found(double errorOfFront, double uncertainty, PlaneScale scale) {
    double z() {
      return errorOfFront / uncertainty;
    }
  }

  private static Found found(Camera camera, double[][] moved, List<RulerEdge> edges) {
    PlaneScale scale = PlaneScaleFinder.of(PHOTO, camera.outline(moved), edges);
    PhotoPoint low = camera.sees(LANE, ORIGIN, 0);
    PhotoPoint middle = camera.sees(LANE, (ORIGIN + FRONT) / 2, 0);
    PhotoPoint high = camera.sees(LANE, FRONT, 0);
    double mm =
        scale.view().toPlane(low).distanceTo(scale.view().toPlane(high))
            * scale.millimetresPerUnit().orElseThrow();
    double byView = ViewPropagation.of(scale, low, middle, high).relativeScale();
    return new Found(
        mm / (FRONT - ORIGIN) - 1, Math.hypot(scale.relativeUncertainty(), byView), scale);
  }

  @Test
  void twoEdgesOfARulerOutvoteASheetThatIsNotSquare() {
    Random chance = new Random(3);
    RulerEdge near = CAMERA.edge(NEAR, GraduationUnit.MILLIMETRE, chance);
    RulerEdge inches = CAMERA.edge(FAR, GraduationUnit.SIXTEENTH_INCH, chance);
    Found found = found(CAMERA, HAND_CUT, List.of(near, inches));
    assertThat(Math.abs(found.errorOfFront())).isLessThan(0.005);
    assertThat(found.uncertainty()).isLessThan(0.008);
    assertThat(found.scale().doubts()).isEmpty();
  }

  @Test
  void withOneEdgeASheetThatIsSquareTellsTheRest() {
    RulerEdge near = CAMERA.edge(NEAR, GraduationUnit.MILLIMETRE, new Random(4));
    Found found = found(CAMERA, SQUARE, List.of(near));
    assertThat(Math.abs(found.errorOfFront())).isLessThan(0.003);
    assertThat(found.uncertainty()).isLessThan(0.01);
  }

  @Test
  void withOneEdgeASheetThatIsPlainlyNotSquareLeavesTheScaleUncertain() {
    RulerEdge near = CAMERA.edge(NEAR, GraduationUnit.MILLIMETRE, new Random(5));
    double square = found(CAMERA, SQUARE, List.of(near)).uncertainty();
    Found found = found(CAMERA, HAND_CUT, List.of(near));
    assertThat(found.uncertainty()).isGreaterThan(1.5 * square);
    assertThat(Math.abs(found.z())).isLessThan(2);
    // From such an uncertainty on, the confidence is so low that the record says it.
    assertThat(StripConfidence.within(0.01, found.uncertainty())).isLessThan(0.7);
  }

  @Test
  void aCornerThatIsLiftedIsToldByTheRulersTwoEdges() {
    Random chance = new Random(6);
    RulerEdge near = CAMERA.edge(NEAR, GraduationUnit.MILLIMETRE, chance);
    RulerEdge far = CAMERA.edge(FAR, GraduationUnit.MILLIMETRE, chance);
    for (int i = 0; i < 4; i++) {
      // 8 mm above the bench a corner is seen some millimetres further out.
      double[] seen = CAMERA.onBench(CAMERA.sees(STRIP[i][0], STRIP[i][1], 8));
      double[][] moved = new double[4][2];
      moved[i] = new double[] {seen[0] - STRIP[i][0], seen[1] - STRIP[i][1]};
      assertThat(Math.hypot(moved[i][0], moved[i][1])).isGreaterThan(2);
      Found found = found(CAMERA, moved, List.of(near, far));
      assertThat(Math.abs(found.errorOfFront())).as("corner %d", i).isLessThan(0.006);
    }
  }

  /** The hand that holds it and the picture's border hide its lower end. */
  @Test
  void whereThePictureEndsIsNoSideOfTheSheet() {
    Camera camera = Camera.tilted(1, -1, 150).turned(2);
    RulerEdge near = camera.edge(NEAR, GraduationUnit.MILLIMETRE, new Random(9));
    double[] right = camera.onBench(new PhotoPoint(1180, HEIGHT - 8));
    double[] left = camera.onBench(new PhotoPoint(420, HEIGHT - 8));
    double[][] moved = {{0, 0}, {0, 0}, {0, right[1]}, {0, left[1]}};
    Found found = found(camera, moved, List.of(near));
    assertThat(Math.abs(found.errorOfFront())).isLessThan(0.003);
    assertThat(StripConfidence.within(0.01, found.uncertainty())).isLessThan(0.7);
  }

  @Test
  void edgesThatNoTiltBringsTogetherAreSaidAndTheFirstIsUsed() {
    Random chance = new Random(7);
    RulerEdge near = CAMERA.edge(NEAR, GraduationUnit.MILLIMETRE, chance);
    RulerEdge wrong = CAMERA.edge(FAR, GraduationUnit.MILLIMETRE, 1.12, chance);
    Found found = found(CAMERA, SQUARE, List.of(near, wrong));
    assertThat(found.scale().doubts()).extracting("code").containsExactly("scales-disagree");
    assertThat(Math.abs(found.errorOfFront())).isLessThan(0.005);
  }

  /** Either the ruler is printed wrong by some per cent or the sheet is cut badly: who knows. */
  @Test
  void edgesThatDisagreeALittleLeaveTheScaleUncertain() {
    Random chance = new Random(8);
    RulerEdge near = CAMERA.edge(NEAR, GraduationUnit.MILLIMETRE, chance);
    for (double mmPerMark : new double[] {1.02, 1.03, 1.04}) {
      RulerEdge wrong = CAMERA.edge(FAR, GraduationUnit.MILLIMETRE, mmPerMark, chance);
      Found found = found(CAMERA, SQUARE, List.of(near, wrong));
      assertThat(Math.abs(found.z())).as("%.2f mm a mark", mmPerMark).isLessThan(2);
      assertThat(StripConfidence.within(0.01, found.uncertainty())).isLessThan(0.7);
    }
  }

  /** Varnished beech beside white paper: its marks lie higher than those of steel or plastic. */
  @Test
  void aRulerOfTheColourOfWoodIsTakenForThicker() {
    double usual = millimetresPerUnitBeside(235, 235, 235);
    assertThat(millimetresPerUnitBeside(214, 180, 130) - usual).isBetween(0.5, 0.8);
    assertThat(millimetresPerUnitBeside(250, 215, 20) - usual).isBetween(-0.1, 0.2);
    assertThat(millimetresPerUnitBeside(150, 152, 155) - usual).isBetween(-0.1, 0.2);
  }

  private static double millimetresPerUnitBeside(int red, int green, int blue) {
    PaperShape strip = new PaperShape(CAMERA.outline(SQUARE).corners(), List.of());
    byte[] rgb = new byte[3 * WIDTH * HEIGHT];
    for (int i = 0; i < WIDTH * HEIGHT; i++) {
      int row = i / WIDTH;
      boolean paper = strip.contains(new PhotoPoint(i % WIDTH + 0.5, row + 0.5));
      rgb[3 * i] = (byte) (paper ? 235 : red);
      rgb[3 * i + 1] = (byte) (paper ? 235 : green);
      rgb[3 * i + 2] = (byte) (paper ? 235 : blue);
    }
    Photo photo =
        new Photo(WIDTH, HEIGHT, rgb, Optional.empty(), OptionalDouble.of(FOCAL_35MM), true);
    RulerEdge near = CAMERA.edge(NEAR, GraduationUnit.MILLIMETRE, new Random(4));
    return PlaneScaleFinder.of(photo, CAMERA.outline(SQUARE), List.of(near))
        .millimetresPerUnit()
        .orElseThrow();
  }

  /** Scissors turn the end of a ribbon by degrees, but not that of a wide sheet. */
  @Test
  void aScanMayShowTheSlantedEndOfARibbonButNoWideSheetAskew() {
    assertThat(sourceOnScan(22, 0.8)).isEqualTo(PixelScale.Source.RESOLUTION);
    assertThat(sourceOnScan(22, 1.6)).isEqualTo(PixelScale.Source.NONE);
    assertThat(sourceOnScan(80, 3.2)).isEqualTo(PixelScale.Source.NONE);
  }

  /** Of a sheet so wide whose upper end runs down by so much, in a picture of 150 dpi. */
  private static PixelScale.Source sourceOnScan(double widthMm, double slantMm) {
    double px = 150 / 25.4;
    List<PhotoPoint> corners =
        List.of(
            new PhotoPoint(100, 100),
            new PhotoPoint(100 + widthMm * px, 100 + slantMm * px),
            new PhotoPoint(100 + widthMm * px, 1100),
            new PhotoPoint(100, 1100));
    List<List<PhotoPoint>> sides = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      sides.add(List.of(corners.get(i), corners.get((i + 1) % 4)));
    }
    Photo scan =
        new Photo(
            WIDTH,
            HEIGHT,
            new byte[3 * WIDTH * HEIGHT],
            Optional.of(new Resolution(150, 150)),
            OptionalDouble.empty(),
            false);
    return PlaneScaleFinder.of(scan, new StripOutline(corners, sides, 0.3, 1), List.of()).source();
  }

  /**
   * Of errors that are normal, 4.55 % lie beyond twice their standard uncertainty: JCGM 100:2008
   * (GUM), table G.1. Sheets as they are cut: two in three with scissors and care, one in three by
   * hand.
   */
  @Test
  void errorsLieWithinTwiceWhatIsSaidAboutAsOftenAsTheyShould() {
    Random chance = new Random(11);
    int runs = 150;
    int beyond = 0;
    double squares = 0;
    for (int run = 0; run < runs; run++) {
      Camera camera =
          Camera.tilted(
              6 * chance.nextGaussian(), 6 * chance.nextGaussian(), 170 + 40 * chance.nextDouble());
      double cut = run % 3 == 0 ? 1.0 : 0.3;
      double[][] moved = new double[4][2];
      for (double[] corner : moved) {
        corner[0] = cut * chance.nextGaussian();
        corner[1] = cut * chance.nextGaussian();
      }
      RulerEdge near = camera.edge(NEAR, GraduationUnit.MILLIMETRE, chance);
      Found found = found(camera, moved, List.of(near));
      // The ruler's own error and its height are none here: what is left is the view's.
      double view =
          Math.sqrt(
              found.uncertainty() * found.uncertainty()
                  - found.scale().relativeUncertainty() * found.scale().relativeUncertainty());
      double z = found.errorOfFront() / view;
      beyond += Math.abs(z) > 2 ? 1 : 0;
      squares += z * z / runs;
    }
    assertThat(beyond).isLessThanOrEqualTo(runs / 10);
    assertThat(Math.sqrt(squares)).isBetween(0.5, 1.3);
  }
}
