package wickmark.imaging.straight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.pose.PlaneView;

/**
 * A sheet of 60 mm by 120 mm, 8 cells a millimetre, seen from straight above from 300 mm; raised
 * paper is seen larger by Z/(Z − h), which is geometry.
 */
class SurfaceFitTest {
  private static final double CELLS_PER_MM = 8;
  private static final double WIDTH = 60 * CELLS_PER_MM;
  private static final double HEIGHT = 120 * CELLS_PER_MM;
  private static final double DISTANCE_MM = 300;
  private static final PlaneView ABOVE = new PlaneView(1500, 2000, 3000, 0, 0, 0);

  /** One photo pixel is a tenth of a millimetre; the plane's unit is the camera's distance. */
  private static PhotoPoint seen(double xMm, double yMm) {
    return new PhotoPoint(1500 + 10 * xMm, 2000 + 10 * yMm);
  }

  private static StripFrame frame() {
    return StripFrame.around(
        ABOVE,
        List.of(seen(-25, -60), seen(35, -60), seen(35, 60), seen(-25, 60)),
        1 / DISTANCE_MM / CELLS_PER_MM);
  }

  /** Top, right, bottom and left, clockwise, of a sheet of some magnification and cut. */
  private static List<List<PhotoPoint>> sides(
      DoubleUnaryOperator magnification,
      DoubleUnaryOperator cutLeft,
      DoubleUnaryOperator cutRight) {
    List<PhotoPoint> left = new ArrayList<>();
    List<PhotoPoint> right = new ArrayList<>();
    for (int i = 0; i <= 120; i++) {
      double t = i / 120.0;
      double m = magnification.applyAsDouble(t);
      double y = 120 * t - 60;
      right.add(seen(m * (35 + cutRight.applyAsDouble(t)), m * y));
      left.add(0, seen(m * (-25 + cutLeft.applyAsDouble(t)), m * y));
    }
    List<PhotoPoint> top = List.of(seen(-25, -60), seen(5, -60), seen(35, -60));
    List<PhotoPoint> bottom = List.of(seen(35, 60), seen(5, 60), seen(-25, 60));
    return List.of(top, right, bottom, left);
  }

  private static double wave(double t) {
    return StrictMath.sin(3 * Math.PI * t);
  }

  @Test
  void readsTheHeightOfACockledSheet() {
    StripFrame bent =
        frame().bentLike(sides(t -> 1 + 0.008 * wave(t) * wave(t), t -> 0, t -> 0), CELLS_PER_MM);

    // 0.8 % of 300 mm, and the way over three humps of it.
    double arc = 0;
    for (int i = 0; i < 12_000; i++) {
      double rise =
          2.4 * (StrictMath.pow(wave((i + 1) / 12e3), 2) - StrictMath.pow(wave(i / 12e3), 2));
      arc += Math.hypot(120 / 12e3, rise);
    }
    assertThat(bent.height() / CELLS_PER_MM).isCloseTo(arc, within(0.3));
    assertThat(bent.height()).isGreaterThan((int) HEIGHT);
  }

  @Test
  void wavesOfOneCutSideAreNoHeight() {
    PaperSurface cut =
        SurfaceFit.fit(frame(), sides(t -> 1, t -> 0, t -> 0.4 * wave(t)), CELLS_PER_MM);
    PaperSurface raised =
        SurfaceFit.fit(frame(), sides(t -> 1 + 0.4 / 60 * wave(t), t -> 0, t -> 0), CELLS_PER_MM);

    double believed = cut.magnification(WIDTH / 2, HEIGHT / 6) - 1;
    double right = raised.magnification(WIDTH / 2, HEIGHT / 6) - 1;
    assertThat(right).isCloseTo(0.4 / 60, within(0.0012));
    assertThat(Math.abs(believed)).isLessThan(0.3 * right);
  }

  /** A side that was followed 1.5 mm beside the sheet, along a ruler's edge say. */
  @Test
  void aBowOfOneSideIsNoHeight() {
    DoubleUnaryOperator bow = t -> 4 * t * (1 - t);
    PaperSurface one =
        SurfaceFit.fit(
            frame(), sides(t -> 1, t -> -1.5 * bow.applyAsDouble(t), t -> 0), CELLS_PER_MM);
    PaperSurface both =
        SurfaceFit.fit(
            frame(), sides(t -> 1 + 1.5 / 60 * bow.applyAsDouble(t), t -> 0, t -> 0), CELLS_PER_MM);

    double believed = one.magnification(WIDTH / 2, HEIGHT / 2) - 1;
    double right = both.magnification(WIDTH / 2, HEIGHT / 2) - 1;
    assertThat(right).isCloseTo(1.5 / 60, within(0.003));
    assertThat(Math.abs(believed)).isLessThan(0.1 * right);
    assertThat(one.doubt()).isGreaterThan(0.004);
  }

  @Test
  void aStraightCutFlatSheetIsFlat() {
    PaperSurface flat = SurfaceFit.fit(frame(), sides(t -> 1, t -> 0, t -> 0), CELLS_PER_MM);

    for (double y = 0; y <= HEIGHT; y += HEIGHT / 12) {
      assertThat(flat.magnification(WIDTH / 2, y)).isCloseTo(1, within(1e-6));
    }
  }

  /** The sides of a flat sheet but for its ends, which lie further out by so many millimetres. */
  private static List<List<PhotoPoint>> withEnds(DoubleUnaryOperator outMm) {
    List<List<PhotoPoint>> sides = new ArrayList<>(sides(t -> 1, t -> 0, t -> 0));
    List<PhotoPoint> top = new ArrayList<>();
    List<PhotoPoint> bottom = new ArrayList<>();
    for (int i = 0; i <= 60; i++) {
      double out = outMm.applyAsDouble(i / 60.0);
      top.add(seen(i - 25, -60 - out));
      bottom.add(0, seen(i - 25, 60 + out));
    }
    sides.set(0, top);
    sides.set(2, bottom);
    return sides;
  }

  /**
   * A filter of 125 mm, cut to a strip of 60 mm, ends in arcs 7.7 mm high: geometry of the circle.
   */
  @Test
  void endsOfRoundPaperAreNoBow() {
    double radius = 62.5;
    double chord = Math.sqrt(radius * radius - 30 * 30);
    PaperSurface round =
        SurfaceFit.fit(
            frame(),
            withEnds(t -> Math.sqrt(radius * radius - Math.pow(60 * t - 30, 2)) - chord),
            CELLS_PER_MM);

    assertThat(round.magnification(WIDTH / 2, HEIGHT / 2)).isCloseTo(1, within(0.002));
    // It might be bent all the same: that makes lengths uncertain.
    assertThat(round.doubt()).isGreaterThan(0.01);
  }

  @Test
  void aBowAcrossIsUndone() {
    double heightMm = 3;
    PaperSurface bowed =
        SurfaceFit.fit(
            frame(),
            withEnds(t -> 60 * (DISTANCE_MM / (DISTANCE_MM - heightMm * 4 * t * (1 - t)) - 1)),
            CELLS_PER_MM);

    double right = DISTANCE_MM / (DISTANCE_MM - heightMm);
    assertThat(bowed.magnification(WIDTH / 2, HEIGHT / 2)).isCloseTo(right, within(0.0015));
    assertThat(bowed.doubt()).isLessThan(0.003);
  }
}
