package wickmark.imaging.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.imaging.photo.PhotoPoint;

class StripOutlineTest {
  private static StripOutline sheet(double left, double top, double right, double bottom) {
    List<PhotoPoint> corners =
        List.of(
            new PhotoPoint(left, top),
            new PhotoPoint(right, top),
            new PhotoPoint(right, bottom),
            new PhotoPoint(left, bottom));
    return new StripOutline(corners, List.of(List.of(), List.of(), List.of(), List.of()), 1, 0.5);
  }

  private static final StripOutline WHOLE = sheet(100, 100, 700, 1300);

  @Test
  void aSheetToItsFoldIsCutAtTheTop() {
    assertThat(sheet(102, 190, 699, 1301).cutOf(WHOLE)).hasValue(0);
  }

  @Test
  void aSheetCanBeCutAtAnyOtherSide() {
    assertThat(sheet(100, 100, 600, 1300).cutOf(WHOLE)).hasValue(1);
    assertThat(sheet(100, 100, 700, 1200).cutOf(WHOLE)).hasValue(2);
    assertThat(sheet(160, 100, 700, 1300).cutOf(WHOLE)).hasValue(3);
  }

  @Test
  void theSameSheetIsNotCut() {
    assertThat(sheet(101, 102, 699, 1299).cutOf(WHOLE)).isEmpty();
  }

  @Test
  void aSheetWithOneOtherCornerIsNotCut() {
    List<PhotoPoint> wedge =
        List.of(
            new PhotoPoint(100, 100),
            new PhotoPoint(640, 100),
            new PhotoPoint(700, 1300),
            new PhotoPoint(100, 1300));
    StripOutline one =
        new StripOutline(wedge, List.of(List.of(), List.of(), List.of(), List.of()), 1, 0.5);

    assertThat(one.cutOf(WHOLE)).isEmpty();
  }

  @Test
  void aSheetWithinIsNotCut() {
    assertThat(sheet(160, 160, 640, 1240).cutOf(WHOLE)).isEmpty();
    assertThat(WHOLE.cutOf(sheet(102, 190, 699, 1301))).isEmpty();
  }

  @Test
  void aPartLiesWithinItsSheet() {
    assertThat(sheet(98, 190, 700, 1300).isWithin(WHOLE)).isTrue();
    assertThat(WHOLE.isWithin(sheet(102, 101, 699, 1299))).isTrue();
  }

  @Test
  void aSheetThatGoesOnBeyondDoesNotLieWithin() {
    assertThat(WHOLE.isWithin(sheet(100, 190, 700, 1300))).isFalse();
    assertThat(sheet(160, 190, 760, 1300).isWithin(WHOLE)).isFalse();
  }
}
