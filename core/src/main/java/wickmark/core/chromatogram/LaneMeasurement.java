package wickmark.core.chromatogram;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import wickmark.core.colour.ColourName;
import wickmark.core.uncertainty.Decimals;

/** Measures one lane: numbers its spots from the front down and notes what is doubtful. */
final class LaneMeasurement {
  /**
   * How many standard uncertainties a centre may lie beyond a line before it is more than chance.
   */
  private static final double CHANCE = 3;

  /**
   * Two centres are said to differ from this on: two steps of the two decimals that are printed.
   */
  private static final double RF_STEP = 0.02;

  private final StripEvidence strip;
  private final LaneEvidence evidence;
  private final SpotCentre centre;
  private final LaneRuler ruler;
  private final List<Caution> cautions = new ArrayList<>();
  private final Lane lane;

  LaneMeasurement(StripEvidence strip, LaneEvidence evidence, SpotCentre centre) {
    this.strip = strip;
    this.evidence = evidence;
    this.centre = centre;
    this.ruler = new LaneRuler(evidence, strip.uncertainties());
    this.lane = measure();
  }

  Lane lane() {
    return lane;
  }

  List<Caution> cautions() {
    return List.copyOf(cautions);
  }

  private Lane measure() {
    List<Integer> kept = new ArrayList<>();
    List<Integer> leftOut = new ArrayList<>();
    for (int i = 0; i < evidence.spots().size(); i++) {
      (isWhollyOutside(evidence.spots().get(i)) ? leftOut : kept).add(i);
    }
    kept.sort(Comparator.comparingDouble(this::along).reversed());
    List<Spot> spots = new ArrayList<>();
    for (int index : kept) {
      spots.add(spot(spots.size() + 1, index));
    }
    return new Lane(evidence.name(), evidence.role(), ruler.frontDistance(), spots, leftOut);
  }

  private double along(int index) {
    return evidence.spots().get(index).centre(centre).along();
  }

  private boolean isWhollyOutside(SpotEvidence spot) {
    double beyond = ruler.beyondFront(spot.centre(centre));
    double below = ruler.belowBaseline(spot.centre(centre));
    String side;
    if (spot.extent().bottomAlong() > evidence.front().along()
        && beyond > CHANCE * ruler.againstFront(spot.centre(centre))) {
      side = length(beyond) + " beyond the solvent front";
    } else if (spot.extent().topAlong() < evidence.baseline().along()
        && below > CHANCE * ruler.againstBaseline(spot.centre(centre))) {
      side = length(below) + " below the baseline";
    } else {
      return false;
    }
    if (isColoured(spot) || spot.flags().contains(SpotFlag.BY_HAND)) {
      caution(
          Caution.Kind.SPOT_LEFT_OUT,
          "Lane %s: something coloured lies wholly %s and was left out. No dye runs there: look "
              + "whether the line was found in the right place.",
          evidence.name(),
          side);
    }
    return true;
  }

  /**
   * Grey beyond the lines is pencil writing; only a colour there makes one doubt the lines, or a
   * person who set a spot there.
   */
  private static boolean isColoured(SpotEvidence spot) {
    ColourName name = ColourName.of(spot.look().colour());
    return name != ColourName.GREY && name != ColourName.BLACK && name != ColourName.WHITE;
  }

  private Spot spot(int number, int index) {
    SpotEvidence spot = evidence.spots().get(index);
    Place counting = spot.centre(centre);
    noteBeyondLines(number, spot, counting);
    Spot.Factors factors =
        new Spot.Factors(
            centre,
            ruler.factor(spot.centroid()),
            ruler.factor(spot.middle()),
            ruler.factor(spot.densest()));
    if (!isOnBaseline(spot)) {
      noteCentres(number, factors);
    }
    return new Spot(
        number,
        index,
        spot,
        new Spot.Distances(
            ruler.distance(spot.centroid()),
            ruler.distance(spot.middle()),
            ruler.distance(spot.densest()),
            ruler.distanceOf(spot.extent().topAlong()),
            ruler.distanceOf(spot.extent().bottomAlong())),
        factors,
        ruler.rfBudget(counting),
        ruler.distanceBudget(UncertaintySource.SPOT, spot.centroid()));
  }

  private void noteBeyondLines(int number, SpotEvidence spot, Place counting) {
    double beyond = ruler.beyondFront(counting);
    double below = ruler.belowBaseline(counting);
    if (beyond > CHANCE * ruler.againstFront(counting)) {
      caution(
          Caution.Kind.SPOT_BEYOND_FRONT,
          "Lane %s, spot %d: its centre lies %s beyond the solvent front, more than it can be "
              + "uncertain. Rf is given as 1; look whether the front was found in the right place.",
          evidence.name(),
          number,
          length(beyond));
    } else if (beyond > 0) {
      caution(
          Caution.Kind.SPOT_PUT_ON_FRONT,
          "Lane %s, spot %d: its centre lies %s beyond the solvent front, no more than it can be "
              + "uncertain; it was put on the front (Rf 1).",
          evidence.name(),
          number,
          length(beyond));
    } else if (below > 0 && !isOnBaseline(spot)) {
      caution(
          Caution.Kind.SPOT_PUT_ON_BASELINE,
          "Lane %s, spot %d: its centre lies %s below the baseline; it was put on the line (Rf 0).",
          evidence.name(),
          number,
          length(below));
    }
  }

  /** Dye on both sides of the baseline is what a sample leaves where it was put. */
  private boolean isOnBaseline(SpotEvidence spot) {
    return spot.flags().contains(SpotFlag.AT_ORIGIN)
        || (spot.extent().bottomAlong() < evidence.baseline().along()
            && spot.extent().topAlong() > evidence.baseline().along());
  }

  private void noteCentres(int number, Spot.Factors factors) {
    double counting = factors.counting().value();
    double largest = 0;
    for (SpotCentre other : SpotCentre.values()) {
      largest = Math.max(largest, Math.abs(factors.by(other).value() - counting));
    }
    if (largest < RF_STEP || largest <= 2 * factors.counting().standardUncertainty()) {
      return;
    }
    caution(
        Caution.Kind.SPOT_CENTRES_DIFFER,
        "Lane %s, spot %d is not symmetrical: Rf is %s by %s, %s by %s, %s by %s. This table uses "
            + "%s.",
        evidence.name(),
        number,
        factors.centroid().text(),
        SpotCentre.CENTROID.description(),
        factors.middle().text(),
        SpotCentre.MIDDLE.description(),
        factors.densest().text(),
        SpotCentre.DENSEST.description(),
        centre.description());
  }

  private void caution(Caution.Kind kind, String sentence, Object... figures) {
    cautions.add(new Caution(kind, String.format(Locale.ROOT, sentence, figures)));
  }

  /** A length for a sentence: millimetres, or hundredths of the front's distance. */
  private String length(double length) {
    return strip.lengthsAreMillimetres()
        ? Decimals.text(length, 1) + " mm"
        : Decimals.text(100 * length / ruler.length(), 1) + " % of the front's distance";
  }
}
