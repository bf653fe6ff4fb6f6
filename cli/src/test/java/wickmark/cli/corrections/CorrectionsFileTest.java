package wickmark.cli.corrections;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickmark.cli.measuring.RequestSettings;
import wickmark.imaging.ReadingRequest;
import wickmark.imaging.ReadingRequest.SaidSpot;
import wickmark.imaging.photo.PhotoPoint;

class CorrectionsFileTest {
  private static final String SOUND =
      """
      {"format": "wickmark-corrections/1",
       "photo": {"file": "a.jpg", "sha256": "%s"},
       "strip": {"number": 2, "of": 3, "cornersPx": [[0, 0], [9, 0], [9, 9], [0, 9]]},
       "settings": {"lanes": ["A", "X"], "unknown": ["X"], "baseline": [1, 8, 8, 8],
         "origin": [["A", 2, 8]], "stripWidth": 60,
         "spots": [["add", "A", 3, 4], ["move", "X", 5, 6, 5, 6.5], ["remove", 7, 7]]}}
      """
          .formatted("0".repeat(64));

  @TempDir Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("corrections.json"), text);
  }

  @Test
  void saysWhatThePersonSaid() throws Exception {
    Corrections corrections = CorrectionsFile.read(file(SOUND));
    ReadingRequest said = corrections.request().reading();

    assertThat(said.laneNames()).containsExactly("A", "X");
    assertThat(said.lines().baseline())
        .contains(new ReadingRequest.Segment(new PhotoPoint(1, 8), new PhotoPoint(8, 8)));
    assertThat(said.spots())
        .containsExactly(
            new SaidSpot.Added("A", new PhotoPoint(3, 4)),
            new SaidSpot.Moved("X", new PhotoPoint(5, 6), new PhotoPoint(5, 6.5)),
            new SaidSpot.Removed(new PhotoPoint(7, 7)));
    assertThat(corrections.strip().number()).isEqualTo(2);
  }

  /** What was said goes into the record's settings and comes back from there. */
  @Test
  void settingsOfARecordHoldAllOfIt() throws Exception {
    Corrections corrections = CorrectionsFile.read(file(SOUND));

    assertThat(RequestSettings.from(RequestSettings.of(corrections.request())))
        .isEqualTo(corrections.request());
  }

  @Test
  void theSchemaAcceptsWhatIsSound() {
    assertThat(
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(CorrectionsFile.schema())
                .validate(SOUND, InputFormat.JSON))
        .isEmpty();
  }

  /** A setting that was added in one place only would be lost on its way. */
  @Test
  void theSchemaNamesEverySetting() throws IOException {
    Set<String> names = new TreeSet<>(RequestSettings.names());
    names.add("title");
    Set<String> described = new TreeSet<>();
    new ObjectMapper()
        .readTree(CorrectionsFile.schema())
        .at("/properties/settings/properties")
        .fieldNames()
        .forEachRemaining(described::add);

    assertThat(described).isEqualTo(names);
  }

  /** Each fault is made by one exchange in a sound file; the message says what is wrong. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "wickmark-corrections/1 | wickmark-corrections/9 | 'its format is \"wickmark-corrections/9\"'",
        "\"format\" | \"kind\" | it is no file of corrections",
        "\"unknown\" | \"unknwon\" | 'a setting \"unknwon\" that this version does not know'",
        "\"photo\" | \"phot\" | 'it has a field \"phot\"'",
        "\"file\" | \"name\" | 'it has a field \"photo.name\"'",
        "\"number\": 2 | \"number\": 4 | does not say which strip",
        "\"number\": 2 | \"number\": 0 | does not say which strip",
        "[9, 9], [0, 9] | [9, 9] | is not four places",
        "[9, 9], [0, 9] | [9, 9], [0] | is not four places",
        "000 | xyz | does not say which picture",
        "[\"A\", \"X\"] | [\"A\", \"A\"] | two lanes have the same name",
        "[\"A\", \"X\"] | [\"A\", \" \"] | a lane has no name",
        "[\"A\", \"X\"] | [\"A\\u202E\", \"X\"] | 'its field \"settings.lanes[0]\" has a character in it that is not seen'",
        "[\"A\", \"X\"] | [\"A\\u0007\", \"X\"] | 'its field \"settings.lanes[0]\" has a character'",
        "[[\"A\", 2 | [[\"A\\u200F\", 2 | 'its field \"settings.origin[0][0]\" has a character'",
        "\"stripWidth\": 60 | \"title\": \"a\\nb\" | 'its field \"settings.title\" has a character'",
        "\"stripWidth\": 60 | \"title\": [1] | 'its field \"settings.title\" is no text'",
        "\"stripWidth\": 60 | \"laneCount\": 2.5 | 'its field \"settings.laneCount\" is no whole number'",
        "\"stripWidth\": 60 | \"laneCount\": 3 | it names 2 lanes and counts 3",
        "\"stripWidth\": 60 | \"stripWidth\": 60, \"dpi\": 300 | says the scale in more than one way",
        "\"stripWidth\": 60 | \"span\": [1, 2, 3, 4] | are not both there",
        "\"stripWidth\": 60 | \"spanMillimetres\": 4 | are not both there",
        "\"stripWidth\": 60 | \"printedLength\": 10 | 'its field \"settings.printedLength\"'",
        "[1, 8, 8, 8] | [1, 8, 1, 8] | is twice the same place",
        "[\"A\", \"X\"] | [\"A \", \"X\"] | begins or ends with a space",
        "[\"A\", \"X\"] | [\"A\", [\"X\"]] | has a name that is no text",
        "[\"add\", \"A\", 3, 4] | [\"add\", 7, 3, 4] | has a name that is no text",
        "[\"X\"] | [\"Y\"] | 'a lane \"Y\" that is not among its lanes'",
        "[\"add\", \"A\", 3, 4] | [\"add\", \"B\", 3, 4] | 'a lane \"B\" that is not among'",
        "[\"add\", \"A\", 3, 4] | [\"put\", \"A\", 3, 4] | 'an entry that is none of'",
        "[\"add\", \"A\", 3, 4] | [\"add\", \"A\", 3, \"4\"] | is not a number",
        "[\"add\", \"A\", 3, 4] | [\"add\", \"A\", 3, 4e9] | a number beyond ±1000000",
        "[\"add\", \"A\", 3, 4] | null | one of its settings is null",
        "[1, 8, 8, 8] | [1, 8, 8] | is not a list as expected",
        "\"stripWidth\": 60 | \"stripWidth\": -1 | its scale is not above 0",
        "\"stripWidth\": 60 | \"toleranceRf\": 3 | its tolerances",
        "\"stripWidth\": 60 | \"stripWidth\": 60, \"stripWidth\": 61 | it is damaged",
        "}} | } | it is damaged",
        "}} | }} 1 | it is damaged",
      })
  void whatIsUnsoundIsRefusedInWords(String sound, String unsound, String words)
      throws IOException {
    Path file = file(SOUND.replace(sound, unsound));

    assertThatThrownBy(() -> CorrectionsFile.read(file))
        .isInstanceOf(UnreadableCorrectionsException.class)
        .hasMessageStartingWith(file + ": ")
        .hasMessageContaining(words);
  }

  @Test
  void aCardsPrintedLengthIsASettingLikeOthers() throws Exception {
    Corrections corrections =
        CorrectionsFile.read(file(SOUND.replace("\"stripWidth\": 60", "\"printedLength\": 97.5")));

    assertThat(corrections.request().reading().scale())
        .contains(new ReadingRequest.SaidScale.Print(97.5));
  }

  @Test
  void deepAndLargeFilesAreRefused() throws IOException {
    Path deep = file("[".repeat(100_000));
    assertThatThrownBy(() -> CorrectionsFile.read(deep)).hasMessageContaining("it is damaged");
    Path large = file(" ".repeat(2 << 20));
    assertThatThrownBy(() -> CorrectionsFile.read(large)).hasMessageContaining("too large");
    assertThatThrownBy(() -> CorrectionsFile.read(folder.resolve("none")))
        .hasMessageContaining("there is no such file");
    assertThatThrownBy(() -> CorrectionsFile.read(folder)).hasMessageContaining("no ordinary file");
  }
}
