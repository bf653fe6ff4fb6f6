package wickmark.cli.record;

import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import wickmark.cli.text.VisibleText;
import wickmark.core.record.RunRecord;

/**
 * Whether a record that was read is one that could have been measured: nothing is missing but what
 * may be unknown, places have two numbers, every number is one, and every text but the picture's
 * file name shows as it is. Everything that uses a record may rely on it.
 */
final class RecordShape {
  private static final Map<String, Integer> SIZES =
      Map.of(
          "lab", 3, "paperLab", 3, "whiteRgb", 3, "pictureToStrip", 9, "cornersPx", 4, "endsPx", 2);
  private static final double LARGEST = 1e9;

  private RecordShape() {}

  /**
   * Checks the record.
   *
   * @throws IllegalArgumentException naming the first field that is missing or out of range
   */
  static void check(RunRecord record) {
    checkFields("", record);
    for (RunRecord.Lane lane : record.lanes()) {
      if (lane.frontDistanceMm() != null) {
        checkMillimetres(lane);
      }
    }
  }

  /** Where the front has millimetres, everything in the lane has. */
  private static void checkMillimetres(RunRecord.Lane lane) {
    boolean known = lane.frontDistanceUncertaintyMm() != null;
    for (RunRecord.Spot spot : lane.spots()) {
      known &=
          spot.distanceMm() != null
              && spot.distanceUncertaintyMm() != null
              && spot.middleMm() != null
              && spot.topMm() != null
              && spot.bottomMm() != null;
    }
    if (!known) {
      throw new IllegalArgumentException(
          "lane \"" + lane.name() + "\" has millimetres in some places and none in others");
    }
  }

  private static void checkFields(String path, Record value) {
    for (RecordComponent component : value.getClass().getRecordComponents()) {
      String name = component.getName();
      String place = path.isEmpty() ? name : path + "." + name;
      check(place, name, component.getAnnotatedType(), valueOf(component, value));
    }
  }

  private static @Nullable Object valueOf(RecordComponent component, Record value) {
    try {
      return component.getAccessor().invoke(value);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException("a record's accessor only returns its value", e);
    }
  }

  private static void check(String place, String name, AnnotatedType type, @Nullable Object value) {
    if (value == null) {
      if (!type.isAnnotationPresent(Nullable.class)) {
        throw new IllegalArgumentException("\"" + place + "\" is missing");
      }
    } else if (value instanceof Record inner) {
      checkFields(place, inner);
    } else if (value instanceof Number number) {
      checkRange(place, name, number.doubleValue());
    } else if (value instanceof String text) {
      checkText(place, text);
    } else if (value instanceof Map<?, ?> settings) {
      settings.forEach((setting, said) -> checkSetting(place + "." + setting, said));
    } else if (value instanceof List<?> list) {
      checkSize(place, name, list, type);
      AnnotatedType element =
          ((AnnotatedParameterizedType) type).getAnnotatedActualTypeArguments()[0];
      for (int i = 0; i < list.size(); i++) {
        check(place + "[" + i + "]", name, element, list.get(i));
      }
    }
  }

  /** A file may be called anything, and is known by its name; whoever shows it has to see to it. */
  private static void checkText(String place, String text) {
    if (!place.equals("photo.file") && !VisibleText.is(text)) {
      throw new IllegalArgumentException("\"" + place + "\" " + VisibleText.REFUSAL);
    }
  }

  private static void checkSetting(String place, @Nullable Object said) {
    if (said instanceof String text) {
      checkText(place, text);
    } else if (said instanceof Map<?, ?> inner) {
      inner.forEach((name, value) -> checkSetting(place + "." + name, value));
    } else if (said instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        checkSetting(place + "[" + i + "]", list.get(i));
      }
    }
  }

  private static void checkRange(String place, String name, double number) {
    boolean share =
        name.equals("rf")
            || name.equals("confidence")
            || name.endsWith("Confidence")
            || name.equals("share")
            || name.equals("score");
    boolean positive =
        name.equals("millimetresPerPixel") || (name.endsWith("Px") && !place.endsWith("]"));
    boolean notNegative = name.endsWith("Uncertainty") || name.endsWith("UncertaintyMm");
    boolean inRange =
        Math.abs(number) <= LARGEST
            && (!share || (number >= 0 && number <= 1))
            && (!positive || number > 0)
            && (!notNegative || number >= 0);
    if (!inRange) {
      throw new IllegalArgumentException("\"" + place + "\" cannot be " + number);
    }
  }

  /** Lists of places end in "Px"; the innermost list is one place, of two numbers. */
  private static void checkSize(String place, String name, List<?> list, AnnotatedType type) {
    boolean numbers =
        ((AnnotatedParameterizedType) type)
            .getAnnotatedActualTypeArguments()[0]
            .getType()
            .equals(Double.class);
    @Nullable Integer size = numbers && name.endsWith("Px") ? Integer.valueOf(2) : SIZES.get(name);
    if (size != null && list.size() != size) {
      throw new IllegalArgumentException(
          "\"" + place + "\" needs " + size + " entries and has " + list.size());
    }
  }
}
