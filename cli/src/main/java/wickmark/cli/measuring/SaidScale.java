package wickmark.cli.measuring;

import java.util.OptionalDouble;

/** What the person says about the scale. */
public sealed interface SaidScale {

  /** A scan's resolution in dots per inch, the same along and across. */
  record DotsPerInch(double dpi) implements SaidScale {
    public DotsPerInch {
      positive(dpi);
    }
  }

  /** The strip's true size in millimetres: its width, its height or both. */
  record StripSize(OptionalDouble widthMm, OptionalDouble heightMm) implements SaidScale {
    public StripSize {
      if (widthMm.isEmpty() && heightMm.isEmpty()) {
        throw new IllegalArgumentException("a strip's size needs a width or a height");
      }
      widthMm.ifPresent(SaidScale::positive);
      heightMm.ifPresent(SaidScale::positive);
    }
  }

  /** Two points of the picture and their true distance in millimetres. */
  record Span(PhotoLine between, double millimetres) implements SaidScale {
    public Span {
      positive(millimetres);
    }
  }

  private static void positive(double value) {
    if (!(value > 0 && value < 1e6)) {
      throw new IllegalArgumentException("a size must be above 0, was " + value);
    }
  }
}
