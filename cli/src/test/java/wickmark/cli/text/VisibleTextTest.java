package wickmark.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VisibleTextTest {
  /** The last ones are all of Unicode's Bidi_Control (PropList.txt). */
  @ParameterizedTest
  @ValueSource(
      ints = {
        0, 7, 9, 10, 13, 0x1B, 0x7F, 0x85, 0x2028, 0x2029, 0xD800, 0x061C, 0x200E, 0x200F, 0x202A,
        0x202B, 0x202C, 0x202D, 0x202E, 0x2066, 0x2067, 0x2068, 0x2069
      })
  void whatIsNotSeenIsFound(int character) {
    String text = "a" + Character.toString(character) + "b";

    assertThat(VisibleText.is(text)).isFalse();
    assertThat(VisibleText.is(VisibleText.ofPage(text).replaceAll("[\t\n\r\u2028\u2029]", "")))
        .isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Süße Probe", "\u05D0\u05D1", "\u0628", "日本語", "\uD83D\uDE00", "a b"})
  void lettersAreLeftAlone(String text) {
    assertThat(VisibleText.is(text)).isTrue();
    assertThat(VisibleText.ofPage(text)).isEqualTo(text);
  }

  @Test
  void aPageKeepsItsLines() {
    assertThat(VisibleText.ofPage("<p>a\r\n\tb\u202Ec</p>\n")).isEqualTo("<p>a\r\n\tb?c</p>\n");
  }

  @Test
  void jsonMeansTheSame() throws Exception {
    String text = "x\u202Egnp\u2028\uD83D\uDE00";
    String json = VisibleText.ofJson(new ObjectMapper().writeValueAsString(text));

    assertThat(VisibleText.is(json)).isTrue();
    assertThat(new ObjectMapper().readValue(json, String.class)).isEqualTo(text);
  }
}
