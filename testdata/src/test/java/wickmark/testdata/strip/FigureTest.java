package wickmark.testdata.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.testdata.truth.PointMm;

class FigureTest {
  private static final Cut CLEAN = new Cut(0, 0, 0, 0);

  private static SheetEdges cutTo(Figure figure) {
    return new SheetEdges(new Sheet(40, 100, Paper.FILTER, CLEAN.to(figure)), List.of(), 1);
  }

  @Test
  void aTrapezoidIsNarrowerAtTheTop() {
    SheetEdges edges = cutTo(Figure.trapezoid(2, 1));

    assertThat(edges.corners())
        .containsExactly(
            new PointMm(2, 100), new PointMm(39, 100), new PointMm(40, 0), new PointMm(0, 0));
    assertThat(edges.hasPaperAt(1.1, 50)).isTrue();
    assertThat(edges.hasPaperAt(0.9, 50)).isFalse();
    assertThat(edges.hasPaperAt(39.4, 50)).isTrue();
    assertThat(edges.hasPaperAt(39.6, 50)).isFalse();
  }

  @Test
  void aPointedEndIsLowestInItsMiddle() {
    SheetEdges edges = cutTo(Figure.pointed(10));

    assertThat(edges.hasPaperAt(20, 0.2)).isTrue();
    assertThat(edges.hasPaperAt(10, 5.2)).isTrue();
    assertThat(edges.hasPaperAt(10, 4.8)).isFalse();
    assertThat(edges.hasPaperAt(0.5, 9.5)).isFalse();
  }

  @Test
  void aRoundEndIsHalfAnEllipse() {
    SheetEdges edges = cutTo(Figure.rounded(10));

    // At half the way to the side the ellipse has risen by 10 (1 - sqrt(1 - 1/4)) mm.
    double risen = 10 * (1 - Math.sqrt(0.75));
    assertThat(edges.hasPaperAt(10, risen + 0.1)).isTrue();
    assertThat(edges.hasPaperAt(10, risen - 0.1)).isFalse();
  }

  @Test
  void theOutlineFollowsTheEdges() {
    for (Figure figure :
        List.of(Figure.trapezoid(3, 1), Figure.pointed(8), Figure.rounded(9), Figure.RECTANGLE)) {
      SheetEdges edges = cutTo(figure);
      for (PointMm corner : figure.outline(40, 100)) {
        // A step of 0.3 mm towards the sheet's middle is on paper, one away from it is not.
        double off = StrictMath.hypot(20 - corner.x(), 50 - corner.y());
        double dx = 0.3 * (20 - corner.x()) / off;
        double dy = 0.3 * (50 - corner.y()) / off;
        assertThat(edges.hasPaperAt(corner.x() + dx, corner.y() + dy)).isTrue();
        assertThat(edges.hasPaperAt(corner.x() - dx, corner.y() - dy)).isFalse();
      }
    }
  }

  @Test
  void theFrontOfATrapezoidEndsAtItsSides() {
    StripPlan plan =
        StripPlan.sheet(40, 100).cut(CLEAN.to(Figure.trapezoid(2, 1))).front(80).build();

    List<PointMm> front = StripPainter.paint(plan, 4).truth().front().points();

    assertThat(front.get(0).x()).isCloseTo(1.6, within(1e-9));
    assertThat(front.get(front.size() - 1).x()).isCloseTo(39.2, within(1e-9));
  }
}
