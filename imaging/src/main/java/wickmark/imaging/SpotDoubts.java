package wickmark.imaging;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.spot.SpotRegion;

/** Doubts of single spots: whether they are spots, and whether one was missed. */
final class SpotDoubts {
  /** Confidence from which a spot is believed. */
  private static final double SPOT = 0.8;

  /** A spot whose centre lies below this part of the way may be what was left at the origin. */
  private static final double NEAR_ORIGIN = 0.08;

  /** Least clear stain, mm², that might be a spot of its own. */
  private static final double STAIN_MM2 = 3;

  private final FittedLine baseline;
  private final FittedLine front;
  private final double cellsPerMm;

  SpotDoubts(FittedLine baseline, FittedLine front, double cellsPerMm) {
    this.baseline = baseline;
    this.front = front;
    this.cellsPerMm = cellsPerMm;
  }

  List<Doubt> of(ReadingAssembly.Lanes lanes, Optional<LeftoverDye.Stain> leftover) {
    List<Doubt> doubts = new ArrayList<>();
    List<String> unsure = new ArrayList<>();
    List<String> low = new ArrayList<>();
    for (int k = 0; k < lanes.spots().size(); k++) {
      for (int i = 0; i < lanes.spots().get(k).size(); i++) {
        SpotRegion spot = lanes.spots().get(k).get(i);
        String name = lanes.names().get(k) + " spot " + (i + 1);
        if (spot.confidence() < SPOT) {
          unsure.add(String.format(Locale.ROOT, "%s (%.2f)", name, spot.confidence()));
        }
        double part = part(spot.centroid().x(), spot.centroid().y());
        if (part < NEAR_ORIGIN) {
          low.add(String.format(Locale.ROOT, "%s (Rf %.2f)", name, part));
        }
      }
    }
    if (!unsure.isEmpty()) {
      doubts.add(
          new Doubt(
              "spots-unsure",
              "Not surely spots (0 to 1; "
                  + String.format(Locale.ROOT, "%.2f", SPOT)
                  + " is enough): "
                  + String.join(", ", unsure)
                  + ". Look whether there is dye; leave out what is none with --ignore."));
    }
    if (!low.isEmpty()) {
      doubts.add(
          new Doubt(
              "spots-near-origin",
              "Close to the baseline, perhaps what was left of the sample or ran out of the line: "
                  + String.join(", ", low)
                  + ". Look at them before their Rf is used."));
    }
    leftover.filter(stain -> stain.areaMm2() >= STAIN_MM2).ifPresent(s -> doubts.add(stain(s)));
    return doubts;
  }

  private Doubt stain(LeftoverDye.Stain stain) {
    return new Doubt(
        "stain-left-over",
        String.format(
            Locale.ROOT,
            "%.0f mm² of stain (absorbance up to %.2f) belong to no spot, most of it %.0f mm from"
                + " the left edge at %.2f of the way to the front. Look whether a spot was missed.",
            stain.areaMm2(),
            stain.peak(),
            stain.x() / cellsPerMm,
            part(stain.x(), stain.y())));
  }

  /** Part of the way from baseline to front. */
  private double part(double x, double y) {
    return (baseline.at(x) - y) / (baseline.at(x) - front.at(x));
  }
}
