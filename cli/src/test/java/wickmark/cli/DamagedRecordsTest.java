package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickmark.cli.measuring.SampleStrip;

/**
 * A record may come from anywhere: what uses it never fails as a program, it says what is wrong.
 */
class DamagedRecordsTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String[] VALUES = {
    "null",
    "-1",
    "0",
    "1",
    "2147483648",
    "1e308",
    "1e999",
    "-1e999",
    "\"\"",
    "\"x\"",
    "[]",
    "{}",
    "[null]",
    "[[]]",
    "true",
    "[1,2,3,4,5,6,7,8,9,10]",
    "0.5",
    "1e-320"
  };

  @TempDir Path folder;
  private Path record = Path.of("");
  private Path hand = Path.of("");

  @BeforeEach
  void measureOnce() throws IOException {
    Path picture = folder.resolve("strip.png");
    ImageIO.write(new BufferedImage(120, 200, BufferedImage.TYPE_INT_RGB), "png", picture.toFile());
    CommandLineRun.of(
        SampleStrip.measuring(), "measure", picture, "--out", folder, "--lanes=A,B,X");
    record = folder.resolve("strip/record.json");
    hand =
        Files.writeString(
            folder.resolve("hand.csv"),
            "lane,spot,distance_mm,front_mm,rf\nA,1,54,75,0.72\nX,2,30,75,0.4\n");
  }

  /** Returns what the commands that read records say; none of them may call it their own fault. */
  private List<String> said(String text) throws IOException {
    Files.writeString(record, text);
    List<String> said = new ArrayList<>();
    for (List<Object> command :
        List.<List<Object>>of(
            List.of("check", record, hand, "--out", folder.resolve("checked"), "--replace"),
            List.of("pool", record, "--out", folder.resolve("pooled"), "--replace"),
            List.of("reproduce", record))) {
      CommandLineRun run = CommandLineRun.of(SampleStrip.measuring(), command.toArray());
      assertThat(run.exitCode())
          .as("%s of %s%n%s", command, text, run.err())
          .isNotEqualTo(ExitCode.DEFECT);
      assertThat(run.err()).doesNotContain("Exception").doesNotContain("\tat ");
      said.add(run.err());
    }
    return said;
  }

  private static List<JsonNode> insides(JsonNode node) {
    List<JsonNode> all = new ArrayList<>();
    if (node.isContainerNode() && !node.isEmpty()) {
      all.add(node);
    }
    node.forEach(child -> all.addAll(insides(child)));
    return all;
  }

  private static void change(JsonNode tree, Random random) throws IOException {
    List<JsonNode> places = insides(tree);
    JsonNode place = places.get(random.nextInt(places.size()));
    JsonNode value = JSON.readTree(VALUES[random.nextInt(VALUES.length)]);
    if (place instanceof ObjectNode object) {
      List<String> names = new ArrayList<>();
      object.fieldNames().forEachRemaining(names::add);
      String name = names.get(random.nextInt(names.size()));
      if (random.nextInt(4) == 0) {
        object.remove(name);
      } else {
        object.set(name, value);
      }
    } else if (place instanceof ArrayNode array) {
      int i = random.nextInt(array.size());
      switch (random.nextInt(3)) {
        case 0 -> array.remove(i);
        case 1 -> array.set(i, value);
        default -> array.add(array.get(i).deepCopy());
      }
    }
  }

  @Test
  void aNameThatTurnsTheWritingIsRefusedByAllThatReadRecords() throws IOException {
    String text = Files.readString(record).replace("\"B\"", "\"B\\u202E\"");

    assertThat(said(text))
        .allSatisfy(
            said ->
                assertThat(said)
                    .contains("record.json cannot be read: ")
                    .contains("has a character in it that is not seen"));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void aValueChangedAnywhere(long seed) throws IOException {
    String whole = Files.readString(record);
    Random random = new Random(seed);
    int refused = 0;
    for (int i = 0; i < 40; i++) {
      JsonNode tree = JSON.readTree(whole);
      for (int k = random.nextInt(3); k >= 0; k--) {
        change(tree, random);
      }
      refused += said(JSON.writeValueAsString(tree)).get(0).contains("cannot be read") ? 1 : 0;
    }

    assertThat(refused).isPositive();
  }

  @Test
  void aLetterChangedAnywhere() throws IOException {
    String whole = Files.readString(record);
    Random random = new Random(4);
    for (int i = 0; i < 30; i++) {
      StringBuilder text = new StringBuilder(whole);
      text.setCharAt(
          random.nextInt(text.length()), "{}[],:\"0-.e\0\u202E".charAt(random.nextInt(13)));
      said(text.toString());
    }
  }

  @Test
  void namesWhatIsMissing() throws IOException {
    String text = Files.readString(record).replaceFirst("(?s)\"lab\" : \\[[^]]*\\],", "");

    assertThat(said(text).get(0)).contains("\"lanes[0].spots[0].lab\" is missing.");
  }

  @Test
  void namesANumberOutOfRange() throws IOException {
    String text = Files.readString(record).replaceFirst("\"rf\" : 0.72", "\"rf\" : 1.72");

    assertThat(said(text).get(0)).contains("\"lanes[0].spots[0].rf\" cannot be 1.72.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e999999999", "-1e400", "NaN"})
  void noNumberIsInfinite(String number) throws IOException {
    String text = Files.readString(record).replaceFirst("\"rf\" : 0.72", "\"rf\" : " + number);

    assertThat(said(text).get(0)).contains("cannot be read");
  }

  @Test
  void aNumberOfThousandsOfDigitsIsRefused() throws IOException {
    String text =
        Files.readString(record).replaceFirst("\"rf\" : 0.72", "\"rf\" : 0." + "7".repeat(5000));

    assertThat(said(text).get(0)).contains("it is damaged");
  }

  @Test
  void aFieldThatIsThereTwiceIsRefused() throws IOException {
    String text =
        Files.readString(record).replaceFirst("\"rf\" : 0.72", "\"rf\" : 0.72, \"rf\" : 0.1");

    assertThat(said(text).get(0)).contains("it is damaged");
  }

  @Test
  void aRecordLargerThanAnyIsNotReadIntoMemory() throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(record.toFile(), "rw")) {
      file.setLength(3L << 30); // a hole, which takes no room on the disk
    }

    CommandLineRun run = CommandLineRun.of(SampleStrip.measuring(), "pool", record);

    assertThat(run.exitCode()).isEqualTo(ExitCode.UNREADABLE);
    assertThat(run.err()).contains("too large");
  }
}
