package wickmark.cli.corrections;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import wickmark.cli.text.VisibleText;

/** Reads corrections. The file may come from anywhere: all of it is checked. */
public final class CorrectionsFile {
  private static final long LARGEST_BYTES = 1 << 20;
  private static final int DEEPEST = 6;
  private static final int LONGEST_TEXT = 1000;
  private static final int LONGEST_NUMBER = 40;
  private static final double LARGEST = 1e6;
  private static final int MOST_STRIPS = 1000;

  private static final ObjectMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxNestingDepth(DEEPEST)
                          .maxStringLength(LONGEST_TEXT)
                          .maxNumberLength(LONGEST_NUMBER)
                          .maxDocumentLength(LARGEST_BYTES)
                          .build())
                  .build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private final String shown;

  private CorrectionsFile(String shown) {
    this.shown = shown;
  }

  /** Returns the JSON Schema (draft 2020-12) of the file. */
  public static String schema() {
    String name = "corrections.schema.json";
    try (InputStream in = CorrectionsFile.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads a file. */
  public static Corrections read(Path file) throws UnreadableCorrectionsException {
    CorrectionsFile reading = new CorrectionsFile(file.toString());
    return reading.corrections(reading.text(file));
  }

  private String text(Path file) throws UnreadableCorrectionsException {
    try {
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        throw fault("it is no ordinary file.");
      }
      if (Files.exists(file) && Files.size(file) > LARGEST_BYTES) {
        throw fault("it is too large for corrections.");
      }
      return Files.readString(file);
    } catch (NoSuchFileException e) {
      throw fault("there is no such file.");
    } catch (IOException e) {
      throw fault("it is no text in UTF-8, or not to be read.");
    }
  }

  private Corrections corrections(String text) throws UnreadableCorrectionsException {
    JsonNode tree;
    try {
      tree = MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      String place = e.getLocation() == null ? "" : " near line " + e.getLocation().getLineNr();
      throw fault("it is damaged" + place + ". Save the corrections again in the report.");
    }
    String format = tree.path("format").asText("");
    if (format.isEmpty()) {
      throw fault("it is no file of corrections. Save one in the report of a strip.");
    }
    if (!format.equals(Corrections.FORMAT)) {
      throw fault(
          "its format is \""
              + format
              + "\", and this version reads \""
              + Corrections.FORMAT
              + "\". Save the corrections again in a report of this version.");
    }
    only(tree, "", Set.of("format", "photo", "strip", "settings"));
    Corrections corrections =
        new Corrections(photo(object(tree, "photo")), strip(object(tree, "strip")), settings(tree));
    try {
      corrections.request();
    } catch (IllegalArgumentException e) {
      throw fault(e.getMessage() + ".");
    }
    return corrections;
  }

  private Corrections.Photo photo(JsonNode node) throws UnreadableCorrectionsException {
    only(node, "photo.", Set.of("file", "sha256"));
    String sha256 = node.path("sha256").asText("");
    if (!sha256.matches("[0-9a-f]{64}") || !node.path("file").isTextual()) {
      throw fault("it does not say which picture it is for.");
    }
    return new Corrections.Photo(node.path("file").asText(), sha256);
  }

  private Corrections.Strip strip(JsonNode node) throws UnreadableCorrectionsException {
    only(node, "strip.", Set.of("number", "of", "cornersPx"));
    int number = node.path("number").isInt() ? node.path("number").intValue() : 0;
    int of = node.path("of").isInt() ? node.path("of").intValue() : 0;
    if (number < 1 || number > of || of > MOST_STRIPS) {
      throw fault("it does not say which strip of the picture it is for.");
    }
    List<List<Double>> corners = new ArrayList<>();
    for (JsonNode corner : node.path("cornersPx")) {
      if (corner.size() != 2 || !corner.path(0).isNumber() || !corner.path(1).isNumber()) {
        throw fault("its field \"strip.cornersPx\" is not four places.");
      }
      corners.add(List.of(corner.path(0).doubleValue(), corner.path(1).doubleValue()));
    }
    if (corners.size() != 4) {
      throw fault("its field \"strip.cornersPx\" is not four places.");
    }
    return new Corrections.Strip(number, of, corners);
  }

  private Map<String, Object> settings(JsonNode tree) throws UnreadableCorrectionsException {
    JsonNode settings = object(tree, "settings");
    checkValues("settings", settings);
    return MAPPER.convertValue(settings, new TypeReference<Map<String, Object>>() {});
  }

  private void checkValues(String place, JsonNode node) throws UnreadableCorrectionsException {
    if (node.isNull()) {
      throw fault("one of its settings is null; leave out what is not said.");
    }
    if (node.isNumber() && !(Math.abs(node.doubleValue()) <= LARGEST)) {
      throw fault("it has a number beyond ±" + Math.round(LARGEST) + ".");
    }
    if (node.isTextual() && !VisibleText.is(node.textValue())) {
      throw fault("its field \"" + place + "\" " + VisibleText.REFUSAL + ".");
    }
    for (Map.Entry<String, JsonNode> part : node.properties()) {
      checkValues(place + "." + part.getKey(), part.getValue());
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      checkValues(place + "[" + i + "]", node.get(i));
    }
  }

  private JsonNode object(JsonNode tree, String name) throws UnreadableCorrectionsException {
    JsonNode node = tree.path(name);
    if (!node.isObject()) {
      throw fault("its field \"" + name + "\" is missing or is not what it should be.");
    }
    return node;
  }

  private void only(JsonNode node, String prefix, Set<String> known)
      throws UnreadableCorrectionsException {
    Set<String> strange = new TreeSet<>();
    node.fieldNames().forEachRemaining(strange::add);
    strange.removeAll(known);
    if (!strange.isEmpty()) {
      throw fault(
          "it has a field \""
              + prefix
              + strange.iterator().next()
              + "\" that no corrections have.");
    }
  }

  private UnreadableCorrectionsException fault(String reason) {
    return new UnreadableCorrectionsException(shown, reason);
  }
}
