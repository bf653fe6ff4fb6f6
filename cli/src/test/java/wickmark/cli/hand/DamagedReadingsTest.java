package wickmark.cli.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A file may be damaged in any way: it is read as far as it goes or refused in words. */
class DamagedReadingsTest {
  private static final byte[] WHOLE =
      """
      sep=;
      Class 9b;;;
      reader;lane;spot;distance_mm;front_mm;rf
      "p;1";Yolk;1;52,5 mm;93;0,56
      p2;Rose;1;3.15cm;93.5;0.34
      p2;Leaf;2;=1+1;05. Apr;#DIV/0!
      """
          .getBytes(StandardCharsets.UTF_8);
  private static final byte[] TELLING =
      ";,\t\"'\n\r\0=-+.%\u00FF".getBytes(StandardCharsets.ISO_8859_1);
  private static final int FILES = 500;

  @TempDir Path folder;

  private int readAll(byte[][] files) throws IOException {
    int read = 0;
    for (byte[] bytes : files) {
      Path file = Files.write(folder.resolve("hand.csv"), bytes);
      try {
        HandReadings readings = HandReadingsFile.read(file, "");
        assertThat(readings.rows()).allMatch(row -> !row.lane().isEmpty());
        read++;
      } catch (UnreadableReadingsException e) {
        assertThat(e).hasMessageStartingWith("hand.csv cannot be read: ").message().endsWith(".");
      }
    }
    return read;
  }

  @Test
  void cutAnywhere() throws IOException {
    byte[][] cut = new byte[WHOLE.length][];
    for (int length = 0; length < WHOLE.length; length++) {
      cut[length] = Arrays.copyOf(WHOLE, length);
    }

    assertThat(readAll(cut)).isBetween(WHOLE.length / 3, WHOLE.length - 40);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void changedAnywhere(long seed) throws IOException {
    Random random = new Random(seed);
    byte[][] changed = new byte[FILES][];
    for (int i = 0; i < FILES; i++) {
      changed[i] = WHOLE.clone();
      for (int k = random.nextInt(12); k >= 0; k--) {
        changed[i][random.nextInt(WHOLE.length)] =
            random.nextBoolean()
                ? TELLING[random.nextInt(TELLING.length)]
                : (byte) random.nextInt(256);
      }
    }

    assertThat(readAll(changed)).isPositive();
  }
}
