package wickmark.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FolderNameTest {
  @ParameterizedTest
  @CsvSource({
    "strip.jpg, strip",
    "strip.old.jpg, strip.old",
    "strip, strip",
    "Probe Ä 日本.png, Probe Ä 日本",
    "-dash.jpg, -dash",
    ".hidden, _.hidden",
    "....jpg, _",
    "CON.jpg, _CON",
    "com1.x.png, _com1.x",
    "a:b|c?.jpg, a_b_c_",
    "dot..jpg, dot"
  })
  void isThePicturesNameMadeSafe(String picture, String folder) {
    assertThat(FolderName.of(picture)).isEqualTo(folder);
  }

  @Test
  void controlAndDirectionMarksAreReplaced() {
    assertThat(FolderName.of("a\nb\u202Ec.jpg")).isEqualTo("a_b_c");
  }

  @Test
  void severalStripsAreNumbered() {
    assertThat(FolderName.of("scan.tif", 3)).isEqualTo("scan-3");
  }
}
