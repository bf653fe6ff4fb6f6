package wickmark.cli.measuring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickmark.imaging.ReadingRequest.Segment;
import wickmark.imaging.photo.PhotoPoint;

class OptionTextTest {
  @Test
  void readsALine() {
    assertThat(OptionText.segment("1, 2.5,3,4"))
        .isEqualTo(new Segment(new PhotoPoint(1, 2.5), new PhotoPoint(3, 4)));
  }

  @Test
  void readsASpan() {
    assertThat(OptionText.span("10,20,110,20=50").mm()).isEqualTo(50);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "1,2,3", "1,2,3,4,5", "1,2,3,x", "1,2,3,NaN", "1,2,3,1e300"})
  void aWrongLineIsAnsweredWithWhatIsNeeded(String text) {
    assertThatThrownBy(() -> OptionText.segment(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("X1,Y1,X2,Y2");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1,2,3,4", "1,2,3,4=0", "1,2,3,4=-5", "1,2,1,2=5", "1,2,3,4="})
  void aWrongSpanIsRefused(String text) {
    assertThatThrownBy(() -> OptionText.span(text)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aWrongEndIsAnsweredWithTheChoices() {
    assertThatThrownBy(() -> OptionText.bottom("south"))
        .hasMessageContaining("up, down, left, right");
  }
}
