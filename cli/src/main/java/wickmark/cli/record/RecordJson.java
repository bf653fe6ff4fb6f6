package wickmark.cli.record;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import wickmark.core.record.RunRecord;

/** Records as JSON text and back. The same record gives the same text, whatever the machine. */
public final class RecordJson {
  private static final int DEEPEST = 40;
  private static final int LONGEST_TEXT = 1 << 20;
  private static final long LONGEST_DOCUMENT = 64L << 20;

  private static final ObjectMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxNestingDepth(DEEPEST)
                          .maxStringLength(LONGEST_TEXT)
                          .maxNumberLength(100)
                          .maxDocumentLength(LONGEST_DOCUMENT)
                          .build())
                  .build())
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN)
          .build();

  private RecordJson() {}

  /** Sets up what reads and writes records, which is then ready when the first one is wanted. */
  public static void prepare() {
    MAPPER.readerFor(RunRecord.class);
    MAPPER.writerFor(RunRecord.class);
  }

  /**
   * Returns the record with every number rounded to what it carries; every file and table is made
   * from this one.
   *
   * @throws IllegalStateException if a number that must be known is not
   */
  public static RunRecord rounded(RunRecord measured) {
    // By way of the text, so that it equals the record that is read from the file.
    String text = text(tree(measured));
    try {
      return MAPPER.readValue(text, RunRecord.class);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a number of the record is missing: " + e.getMessage(), e);
    }
  }

  /** Returns the record as a tree, for comparing. */
  public static JsonNode tree(RunRecord record) {
    return RecordRounding.of(MAPPER.valueToTree(record));
  }

  /** Returns the text of a record that is rounded, with a line end at the end. */
  public static String text(RunRecord rounded) {
    return text(tree(rounded));
  }

  /** Returns the text of any tree in the same layout. */
  public static String text(JsonNode tree) {
    DefaultPrettyPrinter layout =
        new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));
    try {
      return MAPPER.writer(layout).writeValueAsString(tree) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree in memory can always be written", e);
    }
  }

  /**
   * Reads a record.
   *
   * @throws UnreadableRecordException if it is none, or of a format this version does not know
   */
  public static RunRecord read(String text, String shown) throws UnreadableRecordException {
    try {
      JsonNode tree = MAPPER.readTree(text);
      String format = tree == null ? "" : tree.path("format").asText("");
      if (format.isEmpty()) {
        throw new UnreadableRecordException(shown, "it is not a record of this program.");
      }
      if (!format.equals(RunRecord.FORMAT)) {
        throw new UnreadableRecordException(
            shown,
            "its format is \""
                + format
                + "\", and this version reads \""
                + RunRecord.FORMAT
                + "\".");
      }
      addLaterFields(tree);
      RunRecord record = MAPPER.treeToValue(tree, RunRecord.class);
      RecordShape.check(record);
      return record;
    } catch (UnrecognizedPropertyException e) {
      throw new UnreadableRecordException(
          shown, "it has a field \"" + e.getPropertyName() + "\" that no record has.");
    } catch (JsonProcessingException e) {
      throw new UnreadableRecordException(shown, "it is damaged" + place(e) + ".");
    } catch (IllegalArgumentException e) {
      throw new UnreadableRecordException(shown, e.getMessage() + ".");
    }
  }

  /** Fields that were added to the format after the first records were written. */
  private static void addLaterFields(JsonNode record) {
    addFalse(record.path("strip"), "byHand");
    addFalse(record.path("baseline"), "byHand");
    record.path("lanes").forEach(lane -> addFalse(lane, "originByHand"));
  }

  private static void addFalse(JsonNode node, String field) {
    if (node instanceof ObjectNode object && !object.has(field)) {
      object.put(field, false);
    }
  }

  private static String place(JsonProcessingException e) {
    return e.getLocation() == null ? "" : " near line " + e.getLocation().getLineNr();
  }
}
