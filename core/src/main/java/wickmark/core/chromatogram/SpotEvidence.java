package wickmark.core.chromatogram;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import wickmark.core.colour.LabColour;

/**
 * What was found of one spot. Its three centres agree on a round spot and part on a tailing one.
 *
 * @param centroid the absorbance-weighted centre
 * @param middle the middle of the visible extent
 * @param densest the point of greatest absorbance
 * @param look its colour and depth
 * @param confidence how sure it is that there is a spot, 0 to 1
 */
public record SpotEvidence(
    Place centroid,
    Place middle,
    Place densest,
    Extent extent,
    Look look,
    Set<SpotFlag> flags,
    double confidence) {

  /** Keeps a copy of the flags, in the order in which they are listed. */
  public SpotEvidence {
    flags = Collections.unmodifiableSet(new TreeSet<>(flags));
    if (!(confidence >= 0 && confidence <= 1)) {
      throw new IllegalArgumentException("confidence is between 0 and 1, was " + confidence);
    }
  }

  /**
   * The visible extent, in the strip's unit of length.
   *
   * @param topAlong the rim nearest the front
   * @param bottomAlong the rim nearest the baseline
   * @param width across the lane
   * @param area in the unit's square
   */
  public record Extent(double topAlong, double bottomAlong, double width, double area) {

    /** A top below the bottom is refused. */
    public Extent {
      if (!(topAlong >= bottomAlong)) {
        throw new IllegalArgumentException(
            "a spot's top is not below its bottom, was " + topAlong + " and " + bottomAlong);
      }
    }
  }

  /**
   * How a spot looks.
   *
   * @param peakAbsorbance greatest absorbance above the paper, decadic
   * @param colour with the paper as white
   */
  public record Look(double peakAbsorbance, LabColour colour) {}

  /** Returns the place that a definition of the centre means. */
  public Place centre(SpotCentre which) {
    return switch (which) {
      case CENTROID -> centroid;
      case MIDDLE -> middle;
      case DENSEST -> densest;
    };
  }
}
