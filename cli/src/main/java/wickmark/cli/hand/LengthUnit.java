package wickmark.cli.hand;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;

/** Units that people write after a length. */
enum LengthUnit {
  MILLIMETRE(BigDecimal.ONE),
  CENTIMETRE(BigDecimal.TEN),
  INCH(new BigDecimal("25.4"));

  private final BigDecimal millimetres;

  LengthUnit(BigDecimal millimetres) {
    this.millimetres = millimetres;
  }

  static Optional<LengthUnit> named(String name) {
    return switch (name.toLowerCase(Locale.ROOT)) {
      case "mm", "millimetre", "millimetres", "millimeter", "millimeters" ->
          Optional.of(MILLIMETRE);
      case "cm", "centimetre", "centimetres", "centimeter", "centimeters" ->
          Optional.of(CENTIMETRE);
      case "in", "inch", "inches", "\"", "″" -> Optional.of(INCH);
      default -> Optional.empty();
    };
  }

  /** Returns a length of this unit in millimetres, with the decimals that were written. */
  BigDecimal inMillimetres(BigDecimal length) {
    return this == CENTIMETRE ? length.movePointRight(1) : length.multiply(millimetres);
  }
}
