package wickmark.core.advice;

import java.util.Arrays;
import java.util.Optional;
import wickmark.core.chromatogram.UncertaintySource;

/** What a person can do about each source of uncertainty; the ends of sentences, without stop. */
final class Remedies {
  private final Circumstances circumstances;

  Remedies(Circumstances circumstances) {
    this.circumstances = circumstances;
  }

  /** Returns the remedy for a source by its words; empty for a source that is not known here. */
  Optional<String> against(String source) {
    return Arrays.stream(UncertaintySource.values())
        .filter(known -> known.words().equals(source))
        .findFirst()
        .map(this::against);
  }

  private String against(UncertaintySource source) {
    return switch (source) {
      case SPOT -> againstSpot();
      case FRONT -> againstFront();
      case BASELINE -> againstBaseline();
      case STRAIGHTENING -> "take the picture from straight above and from further away";
      case FLATNESS -> againstFlatness();
      case SCALE -> againstScale();
    };
  }

  private String againstSpot() {
    if (circumstances.spotsByHand()) {
      return "set the spots' centres with the picture enlarged, or leave them to the program";
    }
    return circumstances.spotsFaint()
        ? "make the spots deeper but keep them small, in several small drops that dry in between,"
            + " and take a sharp picture in good, even light"
        : "make smaller, paler spots next time, of less sample in smaller drops, and take a sharp"
            + " picture which the strip fills";
  }

  private String againstFront() {
    return switch (circumstances.frontKind()) {
      case "pencil" ->
          "mark the front with a thin, sharp pencil line at once when the strip comes out, and take"
              + " a sharp picture which the strip fills";
      case "by-hand" ->
          "set the front with the picture enlarged, and next time mark it with a thin, sharp pencil"
              + " line at once when the strip comes out";
      default ->
          "next time, mark the front with a thin, sharp pencil line at once when the strip comes"
              + " out; where it is not marked, only its faint edge can be found";
    };
  }

  private String againstBaseline() {
    return circumstances.baselineByHand()
        ? "set the baseline with the picture enlarged, and next time draw it with a thin, sharp"
            + " pencil line"
        : "draw the baseline as a thin, sharp pencil line, and take a sharp picture which the strip"
            + " fills";
  }

  private String againstFlatness() {
    String press = "press the dry strip flat under a book before the picture";
    return circumstances.scaleSource().equals("resolution")
        ? press
        : press + ", or scan it, where the lid holds it flat";
  }

  private String againstScale() {
    return switch (circumstances.scaleSource()) {
      case "ruler" ->
          "lay the ruler flat and close beside the strip, along it, and take the picture from"
              + " straight above";
      case "card" ->
          "lay the printed card flat and close beside the strip, measure its bar with a ruler and"
              + " say its length, and take the picture from straight above";
      case "resolution" ->
          "lay a ruler on the glass close beside the strip, along it, when you scan";
      case "strip-size" ->
          "measure the strip to half a millimetre and say its size again, or lay a ruler flat and"
              + " close beside it, along it";
      case "span" ->
          "say two points further apart, measured to half a millimetre, or lay a ruler flat and"
              + " close beside the strip, along it";
      default -> "lay a ruler flat and close beside the strip, along it";
    };
  }
}
