package wickmark.cli.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import wickmark.cli.measuring.AlteredRecord;
import wickmark.cli.measuring.SampleStrip;
import wickmark.core.record.RunRecord;

class RecordJsonTest {
  private static RunRecord sample() {
    return RecordJson.rounded(
        AlteredRecord.of(SampleStrip.record())
            .tool(new RunRecord.Tool("wickmark", "1.2.3"))
            .photo(new RunRecord.Photo("strip.jpg", "0".repeat(64), 120, 200))
            .record());
  }

  @Nested
  class Text {
    @Test
    void comesBackAsTheSameRecord() throws Exception {
      assertThat(RecordJson.read(RecordJson.text(sample()), "record.json")).isEqualTo(sample());
    }

    @Test
    void isTheSameEachTime() {
      assertThat(RecordJson.text(sample())).isEqualTo(RecordJson.text(sample())).endsWith("}\n");
    }

    @Test
    void roundsToWhatTheNumbersCarry() throws Exception {
      JsonNode tree = new ObjectMapper().readTree(RecordJson.text(sample()));

      assertThat(tree.at("/front/pathPx/1/1").asText()).isEqualTo("10.12");
      assertThat(tree.at("/lanes/0/spots/0/rf").asText()).isEqualTo("0.72");
      assertThat(tree.at("/lanes/2/spots/0/rf").asText()).isEqualTo("0.7204");
    }

    @Test
    void writesWhatIsNotKnownAsNull() {
      RunRecord.Scale unknown = new RunRecord.Scale("none", Double.NaN, null, null);

      String text =
          RecordJson.text(RecordJson.rounded(AlteredRecord.of(sample()).scale(unknown).record()));

      assertThat(text).contains("\"millimetresPerPixel\" : null").doesNotContain("NaN");
    }

    @Test
    void aNumberThatMustBeKnownIsADefectWhenItIsNot() {
      RunRecord record = sample();
      RunRecord.Baseline bad =
          new RunRecord.Baseline(record.baseline().endsPx(), false, Double.POSITIVE_INFINITY);
      RunRecord broken = AlteredRecord.of(record).baseline(bad).record();

      assertThatThrownBy(() -> RecordJson.rounded(broken))
          .isInstanceOf(IllegalStateException.class)
          .hasMessageContaining("confidence");
    }
  }

  @Nested
  class Schema {
    private final ObjectMapper mapper = new ObjectMapper();

    @Test
    void aRecordFitsIt() {
      assertThat(
              JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                  .getSchema(RecordSchema.text())
                  .validate(RecordJson.text(sample()), InputFormat.JSON))
          .isEmpty();
    }

    @Test
    void aRecordWithoutItsFrontDoesNot() {
      String text = RecordJson.text(sample()).replace("\"front\"", "\"back\"");

      assertThat(
              JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                  .getSchema(RecordSchema.text())
                  .validate(text, InputFormat.JSON))
          .isNotEmpty();
    }

    @Test
    void everyFieldOfARecordStandsInIt() throws Exception {
      JsonNode schema = mapper.readTree(RecordSchema.text());
      List<String> missing = new ArrayList<>();

      collectMissing(schema, schema, RecordJson.tree(sample()), "", missing);

      assertThat(missing).isEmpty();
    }

    private void collectMissing(
        JsonNode root, JsonNode schema, JsonNode value, String path, List<String> missing) {
      JsonNode here =
          schema.has("$ref") ? root.at(schema.get("$ref").asText().substring(1)) : schema;
      if (value.isArray()) {
        value.forEach(e -> collectMissing(root, here.path("items"), e, path + "[]", missing));
      } else if (value.isObject() && !path.equals("/settings")) {
        value
            .properties()
            .forEach(
                field -> {
                  String name = path + "/" + field.getKey();
                  JsonNode described = here.path("properties").path(field.getKey());
                  if (described.isMissingNode()) {
                    missing.add(name);
                  }
                  collectMissing(root, described, field.getValue(), name, missing);
                });
      }
    }
  }

  @Nested
  class Reading {
    private String refusalOf(String text) {
      try {
        RecordJson.read(text, "record.json");
        return "";
      } catch (UnreadableRecordException e) {
        return e.getMessage();
      }
    }

    @Test
    void namesAnUnknownField() {
      String text =
          RecordJson.text(sample()).replaceFirst("\"tool\" :", "\"extra\" : 1, \"tool\" :");

      assertThat(refusalOf(text)).contains("\"extra\"");
    }

    @Test
    void refusesAnotherFormat() {
      String text = RecordJson.text(sample()).replace("wickmark-record/1", "wickmark-record/7");

      assertThat(refusalOf(text)).contains("wickmark-record/7").contains("wickmark-record/1");
    }

    @Test
    void refusesWhatIsNoRecord() {
      assertThat(refusalOf("{}")).contains("not a record");
      assertThat(refusalOf("")).contains("not a record");
      assertThat(refusalOf("[1, 2")).contains("damaged near line 1");
    }

    /** The escape is JSON's: the reader sees the mark itself. */
    @Test
    void refusesTextThatTurnsTheWriting() {
      String text = RecordJson.text(sample());
      String lane = sample().lanes().get(0).name();

      assertThat(refusalOf(text.replace('"' + lane + '"', '"' + lane + "\\u202E\"")))
          .startsWith("record.json cannot be read: ")
          .contains("\"lanes[0].name\" has a character in it that is not seen")
          .endsWith(".");
      assertThat(
              refusalOf(
                  text.replace("\"settings\" : {", "\"settings\" : {\"title\": \"\\u0007\",")))
          .contains("\"settings.title\" has a character");
      assertThat(
              refusalOf(
                  text.replace(
                      "\"settings\" : {", "\"settings\" : {\"x\": [{\"y\": \"\\u2066\"}],")))
          .contains("\"settings.x[0].y\" has a character");
    }

    @Test
    void aPictureMayBeCalledAnything() {
      String text = RecordJson.text(sample()).replace("strip.jpg", "a\\u202Egpj.exe");

      assertThat(refusalOf(text)).isEmpty();
    }

    @Test
    void refusesEndlessNesting() {
      assertThat(refusalOf("{\"format\":" + "[".repeat(100_000))).contains("damaged");
    }
  }

  /**
   * Fields may be added to a format; records written before them are read as if nothing was set.
   */
  @Test
  void aRecordFromBeforeAFieldWasAddedIsRead() throws Exception {
    RunRecord record = RecordJson.rounded(SampleStrip.record());
    String before =
        RecordJson.text(record).replaceAll("\\s*\"(byHand|originByHand)\" : false,", "");

    assertThat(before).doesNotContain("yHand");
    assertThat(RecordJson.read(before, "old")).isEqualTo(record);
  }

  @Test
  void aRecordFromBeforeTheseConfidencesIsRead() throws Exception {
    RunRecord record = RecordJson.rounded(SampleStrip.record());
    String before =
        RecordJson.text(record)
            .replaceAll(",\\s*\"orientationConfidence\" : [0-9.]+", "")
            .replaceAll("(\"relativeUncertainty\" : [0-9.]+),\\s*\"confidence\" : [0-9.]+", "$1")
            .replaceAll("(\"originByHand\" : false),\\s*\"confidence\" : [0-9.]+", "$1");

    RunRecord read = RecordJson.read(before, "old");

    assertThat(read.scale().confidence()).isNull();
    assertThat(read.strip().orientationConfidence()).isNull();
    assertThat(read.lanes()).extracting(RunRecord.Lane::confidence).containsOnlyNulls();
  }

  @Test
  void aRecordFromBeforeThereWasACardInItIsRead() throws Exception {
    String text = RecordJson.text(RecordJson.rounded(SampleStrip.record()));
    String before = text.replaceAll("\\s*\"card\" : \\{[^}]*},", "");

    assertThat(before).doesNotContain("\"card\"");
    assertThat(RecordJson.read(before, "old").card()).isNull();
  }
}
