package wickmark.core.match;

import wickmark.core.colour.ColourName;
import wickmark.core.uncertainty.Decimals;

/** How spots are spoken of. */
final class SpotWords {
  private SpotWords() {}

  static String colours(SpotPair pair) {
    String own = ColourName.of(pair.unknown().colour()).word();
    String other = ColourName.of(pair.reference().colour()).word();
    String difference =
        "colour difference " + Decimals.text(pair.colourDifference(), 0) + " at like depth";
    return own.equals(other)
        ? "another shade of " + own + ", " + difference
        : own + " against " + other + ", " + difference;
  }

  static String look(SpotSignature spot) {
    return ColourName.of(spot.colour()).word() + ", Rf " + spot.rf().text();
  }
}
