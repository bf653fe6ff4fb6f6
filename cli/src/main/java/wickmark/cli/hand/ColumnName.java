package wickmark.cli.hand;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wickmark.cli.hand.Columns.Content;

/**
 * What a column's name says: what the column holds, and the unit of it.
 *
 * @param isAsDocumented false where the meaning was read out of other words
 */
record ColumnName(Optional<Content> content, Optional<LengthUnit> unit, boolean isAsDocumented) {

  static ColumnName of(String name) {
    List<String> words =
        Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
            .filter(word -> !word.isEmpty())
            .toList();
    Optional<LengthUnit> unit =
        words.stream().flatMap(word -> LengthUnit.named(word).stream()).findFirst();
    List<String> others = words.stream().filter(w -> LengthUnit.named(w).isEmpty()).toList();
    Optional<Content> documented = documented(String.join("", others));
    return documented.isPresent()
        ? new ColumnName(documented, unit, true)
        : glued(words).orElseGet(() -> new ColumnName(inOtherWords(others), unit, false));
  }

  private static Optional<Content> documented(String name) {
    return switch (name) {
      case "lane" -> Optional.of(Content.LANE);
      case "spot" -> Optional.of(Content.SPOT);
      case "distance" -> Optional.of(Content.DISTANCE);
      case "front" -> Optional.of(Content.FRONT);
      case "rf" -> Optional.of(Content.RF);
      case "reader" -> Optional.of(Content.READER);
      default -> Optional.empty();
    };
  }

  /** A unit without anything before it, as in {@code distancecm}. */
  private static Optional<ColumnName> glued(List<String> words) {
    String last = words.size() == 1 ? words.get(0) : "";
    Optional<LengthUnit> unit =
        last.length() > 2 ? LengthUnit.named(last.substring(last.length() - 2)) : Optional.empty();
    return unit.flatMap(u -> documented(last.substring(0, last.length() - 2)))
        .map(content -> new ColumnName(Optional.of(content), unit, true));
  }

  /** Names as schools' own tables have them. */
  private static Optional<Content> inOtherWords(List<String> words) {
    boolean isOfFront = words.contains("front") || words.contains("solvent");
    if (words.contains("rf") || words.contains("retardation") || words.contains("retention")) {
      return Optional.of(Content.RF);
    } else if (isOfFront) {
      return words.contains("spot") ? Optional.empty() : Optional.of(Content.FRONT);
    } else if (words.contains("distance") || words.contains("height")) {
      return Optional.of(Content.DISTANCE);
    } else if (words.contains("spot")) {
      return words.contains("colour") || words.contains("color")
          ? Optional.empty()
          : Optional.of(Content.SPOT);
    } else if (words.contains("lane") || words.equals(List.of("sample"))) {
      return Optional.of(Content.LANE);
    }
    boolean isOfReader =
        List.of("reader", "pupil", "student", "name", "initials", "group").stream()
            .anyMatch(words::contains);
    return isOfReader ? Optional.of(Content.READER) : Optional.empty();
  }
}
