package wickmark.cli.measuring;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import wickmark.imaging.ReadingRequest.SaidScale;
import wickmark.imaging.ReadingRequest.Segment;

/** Where the scale was said to come from, as settings, and back. */
final class ScaleSettings {
  private ScaleSettings() {}

  static void put(Map<String, Object> settings, SaidScale scale) {
    if (scale instanceof SaidScale.Dpi said) {
      settings.put("dpi", said.dpi());
    } else if (scale instanceof SaidScale.StripWidth said) {
      settings.put("stripWidth", said.mm());
    } else if (scale instanceof SaidScale.StripHeight said) {
      settings.put("stripHeight", said.mm());
    } else if (scale instanceof SaidScale.StripSize said) {
      settings.put("stripWidth", said.widthMm());
      settings.put("stripHeight", said.heightMm());
    } else if (scale instanceof SaidScale.Print said) {
      settings.put("printedLength", said.barMm());
    } else if (scale instanceof SaidScale.Span said) {
      settings.put("span", RequestSettings.numbers(said.from(), said.to()));
      settings.put("spanMillimetres", said.mm());
    }
  }

  static Optional<SaidScale> from(CheckedSettings s) {
    OptionalDouble dpi = s.number("dpi");
    if (dpi.isPresent()) {
      return Optional.of(new SaidScale.Dpi(dpi.getAsDouble()));
    }
    OptionalDouble width = s.number("stripWidth");
    OptionalDouble height = s.number("stripHeight");
    if (width.isPresent() && height.isPresent()) {
      return Optional.of(new SaidScale.StripSize(width.getAsDouble(), height.getAsDouble()));
    }
    if (width.isPresent()) {
      return Optional.of(new SaidScale.StripWidth(width.getAsDouble()));
    }
    if (height.isPresent()) {
      return Optional.of(new SaidScale.StripHeight(height.getAsDouble()));
    }
    OptionalDouble printed = s.number("printedLength");
    if (printed.isPresent()) {
      return Optional.of(new SaidScale.Print(printed.getAsDouble()));
    }
    Optional<Segment> span = s.segment("span");
    OptionalDouble millimetres = s.number("spanMillimetres");
    if (span.isPresent() != millimetres.isPresent()) {
      throw new IllegalArgumentException(
          "the settings \"span\" and \"spanMillimetres\" are not both there");
    }
    return span.map(ends -> new SaidScale.Span(ends.from(), ends.to(), millimetres.getAsDouble()));
  }
}
