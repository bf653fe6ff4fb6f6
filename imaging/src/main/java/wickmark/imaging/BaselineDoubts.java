package wickmark.imaging;

import java.util.List;
import java.util.Locale;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.lane.OriginZone;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.line.LineKind;

/** What is wrong with a baseline that was found. */
final class BaselineDoubts {
  private BaselineDoubts() {}

  static List<Doubt> of(FittedLine baseline, OriginZone zone) {
    if (zone.ran()) {
      return List.of(
          new Doubt(
              "baseline-ran",
              String.format(
                  Locale.ROOT,
                  "Stain stands above the whole baseline, up to %.0f mm: ink of the line, or samples"
                      + " that were washed out. No spot is read below that, and colours may be mixed"
                      + " with it. Draw the baseline in pencil, and keep the solvent below it.",
                  zone.heightMm())));
    }
    if (baseline.kind() == LineKind.INK) {
      return List.of(
          new Doubt(
              "baseline-in-ink",
              "The baseline seems to be drawn in colour: if the solvent took it along, it is mixed"
                  + " with the samples. Draw it in pencil."));
    }
    return List.of();
  }
}
