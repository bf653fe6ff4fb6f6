package wickmark.cli.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;

/**
 * Rounds the numbers of a record to about a hundredth of their usual uncertainty, so that nothing
 * is lost and nothing is claimed. What is not a finite number becomes null.
 */
final class RecordRounding {
  private static final int OTHER_DECIMALS = 4;
  private static final int HOMOGRAPHY_DIGITS = 12;
  private static final int SCALE_DIGITS = 6;

  /** Decimals by the ending of the field's name; the first that fits counts. */
  private static final Map<String, Integer> DECIMALS =
      Map.ofEntries(
          Map.entry("Px", 2),
          Map.entry("Mm", 3),
          Map.entry("Mm2", 2),
          Map.entry("lab", 2),
          Map.entry("paperLab", 2),
          Map.entry("greyChroma", 2),
          Map.entry("rf", 4),
          Map.entry("rfMiddle", 4),
          Map.entry("rfDensest", 4),
          Map.entry("rfUncertainty", 5),
          Map.entry("relativeUncertainty", 6),
          Map.entry("share", 3),
          Map.entry("confidence", 3),
          Map.entry("orientationConfidence", 3),
          Map.entry("colourDifference", 2),
          Map.entry("peakAbsorbance", 3));

  private RecordRounding() {}

  static JsonNode of(JsonNode record) {
    return rounded("", record);
  }

  private static JsonNode rounded(String field, JsonNode node) {
    if (node.isObject()) {
      ObjectNode object = JsonNodeFactory.instance.objectNode();
      boolean settings = field.equals("settings");
      node.properties()
          .forEach(
              entry ->
                  object.set(
                      entry.getKey(),
                      settings
                          ? plain(entry.getValue())
                          : rounded(entry.getKey(), entry.getValue())));
      return object;
    }
    if (node.isArray()) {
      ArrayNode array = JsonNodeFactory.instance.arrayNode();
      node.forEach(element -> array.add(rounded(field, element)));
      return array;
    }
    if (node.isFloatingPointNumber() || node.isBigDecimal()) {
      return number(field, node);
    }
    return node;
  }

  /** Settings are given, not measured: they keep their digits. */
  private static JsonNode plain(JsonNode node) {
    if (node.isArray()) {
      ArrayNode array = JsonNodeFactory.instance.arrayNode();
      node.forEach(element -> array.add(plain(element)));
      return array;
    }
    if (node.isFloatingPointNumber()) {
      return Double.isFinite(node.doubleValue())
          ? trimmed(BigDecimal.valueOf(node.doubleValue()))
          : NullNode.instance;
    }
    return node;
  }

  private static JsonNode number(String field, JsonNode node) {
    if (!Double.isFinite(node.doubleValue())) {
      return NullNode.instance;
    }
    BigDecimal value = BigDecimal.valueOf(node.doubleValue());
    if (field.equals("pictureToStrip")) {
      return trimmed(value.round(new MathContext(HOMOGRAPHY_DIGITS, RoundingMode.HALF_UP)));
    }
    if (field.equals("millimetresPerPixel")) {
      return trimmed(value.round(new MathContext(SCALE_DIGITS, RoundingMode.HALF_UP)));
    }
    return trimmed(value.setScale(decimals(field), RoundingMode.HALF_UP));
  }

  private static int decimals(String field) {
    if (DECIMALS.containsKey(field)) {
      return DECIMALS.getOrDefault(field, OTHER_DECIMALS);
    }
    for (String ending : new String[] {"Px", "Mm2", "Mm"}) {
      if (field.endsWith(ending)) {
        return DECIMALS.getOrDefault(ending, OTHER_DECIMALS);
      }
    }
    return OTHER_DECIMALS;
  }

  /** One way to write each number: no trailing zeros, but 12 and not 1.2E+1. */
  private static JsonNode trimmed(BigDecimal value) {
    BigDecimal bare = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
    return DecimalNode.valueOf(bare.scale() < 0 ? bare.setScale(0) : bare);
  }
}
