package wickmark.cli.report;

import java.util.List;
import java.util.Locale;
import wickmark.core.colour.LabColour;
import wickmark.core.colour.LinearRgb;
import wickmark.core.colour.SrgbTransfer;

/** A spot's colour as a web colour. */
final class Swatch {
  private Swatch() {}

  /** Returns "#rrggbb" of a CIELAB colour; what sRGB cannot show ends at its border. */
  static String hex(List<Double> lab) {
    LinearRgb light = new LabColour(lab.get(0), lab.get(1), lab.get(2)).toLinearRgb();
    return String.format(
        Locale.ROOT,
        "#%02x%02x%02x",
        eightBit(light.red()),
        eightBit(light.green()),
        eightBit(light.blue()));
  }

  private static int eightBit(double light) {
    double inGamut = Math.max(0, Math.min(1, light));
    return (int) Math.round(255 * SrgbTransfer.encode(inGamut));
  }
}
