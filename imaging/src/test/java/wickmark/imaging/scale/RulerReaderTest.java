package wickmark.imaging.scale;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import wickmark.imaging.photo.PhotoPoint;

class RulerReaderTest {

  private static RulerEdge best(PaintedRuler painted) {
    List<RulerEdge> edges = RulerReader.read(painted.paint());
    assertThat(edges).isNotEmpty();
    return edges.get(0);
  }

  @Nested
  class Millimetres {
    @Test
    void areReadOnATiltedRuler() {
      PaintedRuler painted = new PaintedRuler();

      RulerEdge edge = best(painted);

      assertThat(edge.unit()).isEqualTo(GraduationUnit.MILLIMETRE);
      assertThat(edge.confidence()).isGreaterThan(0.9);
      assertThat(edge.marks()).hasSizeGreaterThan(100);
      ReadAgainstTruth.of(edge, painted).isRight();
    }

    @Test
    void areReadUpsideDownAndUpright() {
      PaintedRuler painted = new PaintedRuler();
      painted.turnTo(262);
      painted.width = 640;
      painted.height = 1200;

      ReadAgainstTruth.of(best(painted), painted).isRight();
    }

    @Test
    void areReadInPerspectiveThroughABentLens() {
      PaintedRuler painted = new PaintedRuler();
      painted.perspectiveX = 0.2;
      painted.perspectiveY = -0.1;
      painted.distortion = 0.025;

      ReadAgainstTruth.of(best(painted), painted).isRight();
    }

    @Test
    void areReadWhereBlurAndNoiseLeaveLittle() {
      PaintedRuler painted = new PaintedRuler();
      painted.pixelsPerMm = 7;
      painted.blurPx = 1.5;
      painted.noise = 6;
      painted.ink = 100;

      ReadAgainstTruth.of(best(painted), painted).isRight();
    }

    @Test
    void areReadFourPixelsApart() {
      PaintedRuler painted = new PaintedRuler();
      painted.pixelsPerMm = 4;
      painted.blurPx = 0.6;

      ReadAgainstTruth.of(best(painted), painted).isRight();
    }

    @Test
    void areReadLightOnDark() {
      PaintedRuler painted = new PaintedRuler();
      painted.ruler = 100;
      painted.ink = 210;
      painted.desk = 180;

      ReadAgainstTruth.of(best(painted), painted).isRight();
    }

    @Test
    void areReadAmongTheScratchesOfSteel() {
      PaintedRuler painted = new PaintedRuler();
      painted.ruler = 185;
      painted.grain = 8;

      ReadAgainstTruth.of(best(painted), painted).isRight();
    }

    @Test
    void keepTheirNumbersBeyondAnObstacle() {
      PaintedRuler painted = new PaintedRuler();
      painted.covered.add(new double[] {48.3, 65.1});

      RulerEdge edge = best(painted);

      ReadAgainstTruth.of(edge, painted).isRight();
      List<Graduation> marks = edge.marks();
      int span = marks.get(marks.size() - 1).index() - marks.get(0).index();
      assertThat(span).as("marks from first to last").isGreaterThan(100);
      assertThat(edge.shownShare()).isBetween(0.7, 0.95);
    }
  }

  @Nested
  class TwoUnitsOnOneRuler {
    @Test
    void areToldApart() {
      PaintedRuler painted = new PaintedRuler();
      painted.far = Optional.of(GraduationUnit.SIXTEENTH_INCH);
      painted.perspectiveX = 0.1;

      List<RulerEdge> edges = RulerReader.read(painted.paint());

      assertThat(edges)
          .extracting(RulerEdge::unit)
          .containsExactly(GraduationUnit.MILLIMETRE, GraduationUnit.SIXTEENTH_INCH);
      assertThat(ReadAgainstTruth.of(edges.get(0), painted).isRight().lineMm()).isLessThan(5);
      assertThat(ReadAgainstTruth.of(edges.get(1), painted).isRight().lineMm()).isGreaterThan(25);
    }

    @Test
    void halfMillimetresAreNotTakenForMillimetres() {
      PaintedRuler painted = new PaintedRuler();
      painted.pixelsPerMm = 16;
      painted.tickWidthMm = 0.15;
      painted.far = Optional.of(GraduationUnit.HALF_MILLIMETRE);

      for (RulerEdge edge : RulerReader.read(painted.paint())) {
        ReadAgainstTruth.of(edge, painted).isRight();
      }
    }
  }

  @Nested
  class NoRuler {
    @Test
    void nothingIsReadOnAnEmptyDesk() {
      PaintedRuler painted = new PaintedRuler();
      painted.ruled = false;
      painted.grain = 10;

      assertThat(RulerReader.read(painted.paint())).isEmpty();
    }

    @Test
    void nothingIsReadWithinAnOutlineThatHoldsNoRuler() {
      PaintedRuler painted = new PaintedRuler();
      List<PhotoPoint> everything =
          List.of(
              new PhotoPoint(0, 0),
              new PhotoPoint(painted.width, 0),
              new PhotoPoint(painted.width, painted.height),
              new PhotoPoint(0, painted.height));

      assertThat(RulerReader.read(painted.paint(), List.of(everything))).isEmpty();
    }

    @Test
    void evenStrokesOfOneLengthHaveNoUnit() {
      PaintedRuler painted = new PaintedRuler();
      painted.near = GraduationUnit.TWENTIETH_INCH;
      painted.plainTicks = true;

      assertThat(RulerReader.read(painted.paint())).isEmpty();
    }
  }

  @Test
  void tenthsOfAnInchAreNotPassedOffAsMillimetres() {
    PaintedRuler painted = new PaintedRuler();
    painted.near = GraduationUnit.TENTH_INCH;

    assertThat(RulerReader.read(painted.paint()))
        .allSatisfy(edge -> assertThat(edge.confidence()).isLessThan(0.5));
  }
}
