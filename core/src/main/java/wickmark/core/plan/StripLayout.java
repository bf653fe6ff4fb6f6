package wickmark.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickmark.core.sheet.Size;

/**
 * Where everything goes on a strip; mm from the paper's lower and left edge.
 *
 * @param baseline height of the pencil line
 * @param solvent height to which the solvent stands on the paper
 * @param front height at which the run should be stopped at the latest
 * @param origins places across, one a sample, from the left
 * @param spot widest that a spot should be when it is put on
 */
public record StripLayout(
    Size paper,
    List<String> samples,
    double baseline,
    double solvent,
    double front,
    List<Double> origins,
    double spot) {

  /** Start line of most method sheets (common practice: 2 cm). */
  private static final double BASELINE = 20;

  /** On small papers: about 10 mm (WHO, Quality control methods for plant materials, TLC). */
  private static final double BASELINE_ON_SMALL_PAPER = 10;

  private static final double SMALL_PAPER = 80;

  /** The solvent stands half as high as the baseline: 1 cm under 2 cm (common practice). */
  private static final double SOLVENT_SHARE = 0.5;

  /** The run ends when the front is about three quarters up the paper (common practice). */
  private static final double FRONT_SHARE = 0.75;

  /** On a shorter way than this a reading error of 0.5 mm makes more than 0.01 in Rf. */
  private static final double SHORTEST_RUN = 40;

  /** Origins keep this far from the sides, and from each other (WHO, as above; school sheets). */
  private static final double FROM_SIDE = 10;

  private static final double APART = 10;

  /** Between paper and wall on each side, so that they do not touch. */
  private static final double FROM_WALL = 5;

  private static final double WIDE_LANES = 15;

  /** A strip that cannot work; the message says why and what would. */
  public static final class Impossible extends Exception {
    private static final long serialVersionUID = 1;

    Impossible(String message) {
      super(message);
    }
  }

  /** Keeps copies of the lists. */
  public StripLayout {
    samples = List.copyOf(samples);
    origins = List.copyOf(origins);
  }

  /**
   * Lays out a strip.
   *
   * @param vessel inner width and height of the beaker or tank, where known
   * @throws Impossible if it cannot work
   */
  public static StripLayout of(Size paper, List<String> samples, Optional<Size> vessel)
      throws Impossible {
    double baseline = paper.height() < SMALL_PAPER ? BASELINE_ON_SMALL_PAPER : BASELINE;
    double front = Math.floor(FRONT_SHARE * paper.height());
    if (front - baseline < SHORTEST_RUN) {
      double least = Math.ceil((SHORTEST_RUN + BASELINE_ON_SMALL_PAPER) / FRONT_SHARE);
      throw new Impossible(
          "The paper is too short: from the baseline at "
              + mm(baseline)
              + " to the front at three quarters of the height is less than "
              + mm(SHORTEST_RUN)
              + ", too little to tell Rf values apart. Take paper of at least "
              + mm(paper.height() < SMALL_PAPER ? least : SMALL_PAPER)
              + " height.");
    }
    if (vessel.isPresent()) {
      mustFit(paper, samples.size(), vessel.get());
    }
    List<Double> origins = origins(paper, samples.size());
    double apart = origins.size() > 1 ? origins.get(1) - origins.get(0) : paper.width();
    return new StripLayout(
        paper,
        samples,
        baseline,
        SOLVENT_SHARE * baseline,
        front,
        origins,
        apart < WIDE_LANES ? 2 : 3);
  }

  private static void mustFit(Size paper, int count, Size vessel) throws Impossible {
    double width = vessel.width() - 2 * FROM_WALL;
    double height = vessel.height() - FROM_WALL;
    if (paper.width() > width || paper.height() > height) {
      String fits =
          width >= 2 * FROM_SIDE && height >= SMALL_PAPER
              ? "Paper of at most " + new Size(width, height).text() + " fits" + room(width, count)
              : "It is too small for any strip; take a larger vessel.";
      throw new Impossible(
          "Paper of "
              + paper.text()
              + " touches the wall or the lid of a vessel that is "
              + vessel.text()
              + " inside. "
              + fits);
    }
  }

  /** What a narrower paper means for the samples. */
  private static String room(double width, int count) {
    int fit = most(width);
    return fit >= count ? "." : "; it has room for " + fit + " of the " + count + " samples.";
  }

  /** How many origins a paper has room for. */
  private static int most(double width) {
    return (int) Math.floor((width - 2 * FROM_SIDE) / APART) + 1;
  }

  /** Evenly, with half a lane at each side where the paper is wide enough for that. */
  private static List<Double> origins(Size paper, int count) throws Impossible {
    double lane = paper.width() / count;
    double side = Math.max(FROM_SIDE, lane / 2);
    double apart = count == 1 ? 0 : (paper.width() - 2 * side) / (count - 1);
    if (paper.width() < 2 * FROM_SIDE || (count > 1 && apart < APART)) {
      int fit = most(paper.width());
      throw new Impossible(
          count
              + (count == 1 ? " sample needs" : " samples need")
              + " paper of at least "
              + mm(2 * FROM_SIDE + APART * (count - 1))
              + " width: origins lie "
              + mm(APART)
              + " from each other and from the sides. "
              + (fit < 1
                  ? "This paper is too narrow for any."
                  : "On this paper there is room for " + fit + "."));
    }
    List<Double> origins = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      // To half a millimetre: that is what one can draw.
      origins.add(Math.round(2 * (side + i * apart)) / 2.0);
    }
    return origins;
  }

  /** Mean distance from one origin to the next; the paper's width for a single one. */
  public double apart() {
    return origins.size() == 1
        ? paper.width()
        : (origins.get(origins.size() - 1) - origins.get(0)) / (origins.size() - 1);
  }

  /** Distance from the baseline to where the front should be stopped. */
  public double run() {
    return front - baseline;
  }

  private static String mm(double value) {
    return Size.millimetres(value) + " mm";
  }
}
