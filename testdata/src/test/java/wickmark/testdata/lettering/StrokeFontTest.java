package wickmark.testdata.lettering;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StrokeFontTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"Yolk", "Rose", "Sky", "Leaf", "Icing", "solvent front", "0123456789", "mix", "?"})
  void writesEveryLetterThatTheStripsNeed(String text) {
    for (char letter : text.replace(" ", "").toCharArray()) {
      assertThat(StrokeFont.strokes(String.valueOf(letter)))
          .as("strokes of %s", letter)
          .isNotEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"Leaf", "300"})
  void keepsWithinTheWidthItTells(String text) {
    double right =
        StrokeFont.strokes(text).stream()
            .mapToDouble(s -> Math.max(s.x1(), s.x2()))
            .max()
            .orElseThrow();

    assertThat(right).isLessThanOrEqualTo(StrokeFont.width(text) + 1e-12);
  }
}
