package wickmark.cli.measuring;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import wickmark.imaging.ReadingRequest.Segment;
import wickmark.imaging.photo.PhotoPoint;

/**
 * Settings by name, each checked for its kind.
 *
 * <p>Every method throws {@link IllegalArgumentException}, which names the setting, where it holds
 * something else.
 */
record CheckedSettings(Map<String, Object> values) {
  List<?> list(String name) {
    @Nullable Object value = values.get(name);
    return value == null ? List.of() : asList(name, value, -1);
  }

  List<String> texts(String name) {
    return list(name).stream().map(value -> asText(name, value)).toList();
  }

  OptionalDouble number(String name) {
    @Nullable Object value = values.get(name);
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(asNumber(name, value));
  }

  Optional<String> text(String name) {
    return Optional.ofNullable(values.get(name)).map(String::valueOf);
  }

  Optional<Segment> segment(String name) {
    return Optional.ofNullable(values.get(name)).map(value -> asSegment(name, value));
  }

  static List<?> asList(String name, Object value, int size) {
    if (value instanceof List<?> list && (size < 0 || list.size() == size)) {
      return list;
    }
    throw new IllegalArgumentException("the setting \"" + name + "\" is not a list as expected");
  }

  static String asText(String name, @Nullable Object value) {
    if (value instanceof String text) {
      return text;
    }
    throw new IllegalArgumentException("the setting \"" + name + "\" has a name that is no text");
  }

  static double asNumber(String name, @Nullable Object value) {
    if (value instanceof Number number) {
      return number.doubleValue();
    }
    throw new IllegalArgumentException("the setting \"" + name + "\" is not a number");
  }

  static PhotoPoint asPoint(Object value) {
    List<?> two = asList("corners", value, 2);
    return new PhotoPoint(asNumber("corners", two.get(0)), asNumber("corners", two.get(1)));
  }

  static Segment asSegment(String name, Object value) {
    List<?> four = asList(name, value, 4);
    return new Segment(
        new PhotoPoint(asNumber(name, four.get(0)), asNumber(name, four.get(1))),
        new PhotoPoint(asNumber(name, four.get(2)), asNumber(name, four.get(3))));
  }
}
