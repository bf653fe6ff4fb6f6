package wickmark.testdata.set;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Writes maps, lists, numbers, words and truth values as JSON (RFC 8259). */
final class JsonText {
  private static final int DECIMALS = 5;

  private final StringBuilder text = new StringBuilder();

  private JsonText() {}

  static String of(Map<String, ?> object) {
    JsonText json = new JsonText();
    json.value(object);
    return json.text.append('\n').toString();
  }

  private void value(@Nullable Object value) {
    if (value == null || (value instanceof Double number && !Double.isFinite(number))) {
      text.append("null");
    } else if (value instanceof Map<?, ?> map) {
      object(map);
    } else if (value instanceof List<?> list) {
      text.append('[');
      for (int i = 0; i < list.size(); i++) {
        text.append(i == 0 ? "" : ",");
        value(list.get(i));
      }
      text.append(']');
    } else if (value instanceof Double number) {
      text.append(
          BigDecimal.valueOf(number)
              .setScale(DECIMALS, RoundingMode.HALF_UP)
              .stripTrailingZeros()
              .toPlainString());
    } else if (value instanceof Integer || value instanceof Long || value instanceof Boolean) {
      text.append(value);
    } else {
      word(value.toString());
    }
  }

  private void object(Map<?, ?> map) {
    text.append('{');
    for (Iterator<? extends Map.Entry<?, ?>> entries = map.entrySet().iterator();
        entries.hasNext(); ) {
      Map.Entry<?, ?> entry = entries.next();
      word(String.valueOf(entry.getKey()));
      text.append(':');
      value(entry.getValue());
      text.append(entries.hasNext() ? "," : "");
    }
    text.append('}');
  }

  private void word(String word) {
    text.append('"');
    for (int i = 0; i < word.length(); i++) {
      char c = word.charAt(i);
      if (c == '"' || c == '\\') {
        text.append('\\').append(c);
      } else if (c < ' ') {
        text.append(' ');
      } else {
        text.append(c);
      }
    }
    text.append('"');
  }
}
