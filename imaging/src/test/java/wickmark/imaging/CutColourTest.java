package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.strip.StripOutline;

/** A sheet of 100 by 160 pixels and what lies up to 20 pixels above it. */
class CutColourTest {
  private static final int[] PAPER = {225, 222, 214};
  private static final int[] WOOD = {190, 140, 85};
  private static final StripOutline WHOLE = outline(20);
  private static final StripOutline PART = outline(40);

  private static StripOutline outline(int top) {
    return new StripOutline(
        List.of(
            new PhotoPoint(50, top),
            new PhotoPoint(150, top),
            new PhotoPoint(150, 200),
            new PhotoPoint(50, 200)),
        List.of(List.of(), List.of(), List.of(), List.of()),
        1,
        0.8);
  }

  /** The picture with a colour above the sheet, that much of its light. */
  private static boolean isOther(int[] above, double light) {
    byte[] rgb = new byte[3 * 200 * 220];
    for (int i = 0; i < 200 * 220; i++) {
      boolean isAbove = i / 200 < 40;
      for (int c = 0; c < 3; c++) {
        rgb[3 * i + c] = (byte) (isAbove ? Math.round(light * above[c]) : PAPER[c]);
      }
    }
    Photo photo = new Photo(200, 220, rgb, Optional.empty(), OptionalDouble.empty(), false);
    int side = PART.cutOf(WHOLE).orElseThrow();
    return CutColour.isOther(photo, PART, side, WHOLE);
  }

  @Test
  void woodBeyondTheSheetIsNoPaper() {
    assertThat(isOther(WOOD, 1)).isTrue();
  }

  @Test
  void beyondAFoldThePaperGoesOn() {
    assertThat(isOther(PAPER, 1)).isFalse();
  }

  /** A fold stands up, and less light falls on it. */
  @Test
  void inTheShadeItIsStillPaper() {
    assertThat(isOther(PAPER, 0.7)).isFalse();
  }
}
