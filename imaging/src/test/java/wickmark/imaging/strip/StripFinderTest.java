package wickmark.imaging.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;

/** Painted pictures with one sheet, against the geometry they were painted with. */
class StripFinderTest {
  private static final int WIDTH = 1000;
  private static final int HEIGHT = 800;

  /**
   * A white ribbon on wood that hangs over the picture's lower border: its side there is no edge,
   * and the grain has straight edges everywhere.
   */
  @Test
  void aRibbonOnWoodThatThePictureCutsOffIsAmongTheFirst() {
    byte[] rgb = new byte[3 * WIDTH * HEIGHT];
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        int at = 3 * (y * WIDTH + x);
        boolean paper = x > 420 && x < 480 && y > 160;
        double slant = x + 0.06 * y;
        double grain = 26 * Math.sin(0.35 * slant) * Math.sin(0.083 * slant);
        rgb[at] = (byte) (paper ? 238 : 165 + grain);
        rgb[at + 1] = (byte) (paper ? 236 : 118 + grain);
        rgb[at + 2] = (byte) (paper ? 228 : 74 + grain);
      }
    }
    Photo photo = new Photo(WIDTH, HEIGHT, rgb, Optional.empty(), OptionalDouble.empty(), false);

    SheetOutlines found = StripFinder.in(photo, List.of()).outlines(5, 20, List.of(), false);

    double[][] corners = {{420, 160}, {480, 160}, {480, HEIGHT}, {420, HEIGHT}};
    assertThat(found.first()).anyMatch(outline -> farthest(outline, corners) < 8);
  }

  /**
   * White paper on squared paper that is hardly darker: the squares' lines are longer and clearer
   * than its sides, and end at them.
   */
  @Test
  void whitePaperOnSquaredPaperIsTheFirst() {
    byte[] rgb = new byte[3 * WIDTH * HEIGHT];
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        int at = 3 * (y * WIDTH + x);
        boolean paper = x > 300 && x < 660 && y > 150 && y < 610;
        double across = Math.floorMod(Math.round(x + 0.1 * y), 24L);
        double down = Math.floorMod(Math.round(y - 0.1 * x), 24L);
        boolean line = !paper && (across < 3 || down < 3);
        rgb[at] = (byte) (paper ? 238 : line ? 165 : 231);
        rgb[at + 1] = (byte) (paper ? 238 : line ? 180 : 231);
        rgb[at + 2] = (byte) (paper ? 236 : line ? 205 : 229);
      }
    }
    Photo photo = new Photo(WIDTH, HEIGHT, rgb, Optional.empty(), OptionalDouble.empty(), false);

    SheetOutlines found = StripFinder.in(photo, List.of()).outlines(5, 20, List.of(), false);

    double[][] corners = {{300, 150}, {660, 150}, {660, 610}, {300, 610}};
    assertThat(farthest(found.first().get(0), corners)).isLessThan(3);
  }

  /**
   * A white ruler lies over the lower side of white paper: together they are one light figure on
   * the desk, and the clearest steps between them are the marks.
   */
  @Test
  void paperThatAWhiteRulerLiesOverEndsAtTheRulersEdge() {
    byte[] rgb = new byte[3 * WIDTH * HEIGHT];
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        int at = 3 * (y * WIDTH + x);
        boolean paper = x > 250 && x < 700 && y > 120 && y < 560;
        boolean ruler = x > 100 && x < 850 && y > 520 && y < 650;
        boolean mark = ruler && y < 540 && (x - 100) % 5 == 0;
        int level = mark ? 90 : ruler ? 226 : paper ? 240 : 0;
        rgb[at] = (byte) (level > 0 ? level : 165);
        rgb[at + 1] = (byte) (level > 0 ? level : 118);
        rgb[at + 2] = (byte) (level > 0 ? level - 4 : 74);
      }
    }
    Photo photo = new Photo(WIDTH, HEIGHT, rgb, Optional.empty(), OptionalDouble.empty(), false);
    MarkRow marks = new MarkRow(new PhotoPoint(105, 530), new PhotoPoint(845, 530), 5);

    SheetOutlines found = StripFinder.in(photo, List.of()).outlines(20, 40, List.of(marks), true);

    double[][] corners = {{250, 120}, {700, 120}, {700, 520}, {250, 520}};
    assertThat(found.first()).anyMatch(outline -> farthest(outline, corners) < 4);
  }

  /**
   * White paper on a cream cloth with a blue stripe that comes close to one side and meets it at a
   * corner: the stripe's border is a far better step than the paper's.
   */
  @Test
  void aSideIsNotDrawnOffByAStripeThatEndsAtIt() {
    byte[] rgb = new byte[3 * WIDTH * HEIGHT];
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        int at = 3 * (y * WIDTH + x);
        boolean paper = x > 200 && x < 800 && y > 200 && y < 600;
        double below = y - 200 + 0.06 * (800 - x);
        boolean stripe = below > -40 && below < 0;
        rgb[at] = (byte) (paper ? 232 : stripe ? 90 : 226);
        rgb[at + 1] = (byte) (paper ? 232 : stripe ? 100 : 216);
        rgb[at + 2] = (byte) (paper ? 228 : stripe ? 140 : 192);
      }
    }
    Photo photo = new Photo(WIDTH, HEIGHT, rgb, Optional.empty(), OptionalDouble.empty(), false);

    SheetOutlines found = StripFinder.in(photo, List.of()).outlines(5, 20, List.of(), false);

    double[][] corners = {{200, 200}, {800, 200}, {800, 600}, {200, 600}};
    assertThat(found.first()).anyMatch(outline -> farthest(outline, corners) < 3);
  }

  /** Distance of the farthest of some places from the outline's nearest corner. */
  private static double farthest(StripOutline outline, double[][] places) {
    double most = 0;
    for (double[] place : places) {
      double least = Double.POSITIVE_INFINITY;
      for (PhotoPoint corner : outline.corners()) {
        least = Math.min(least, Math.hypot(corner.x() - place[0], corner.y() - place[1]));
      }
      most = Math.max(most, least);
    }
    return most;
  }
}
