package wickmark.imaging.spot;

import java.util.List;
import java.util.Set;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.core.colour.LabColour;

/**
 * One stain on the straight strip. Places and lengths are in cells of the map, x right and y down.
 *
 * @param centroid absorbance-weighted centre, and the standard uncertainty of its y
 * @param densest where the absorbance is greatest
 * @param box the visible extent
 * @param area of the visible extent, square cells
 * @param peakAbsorbance greatest absorbance in any channel
 * @param colour with the paper as white
 * @param flags what is special about it
 * @param confidence how sure it is that this is a spot, 0 to 1
 * @param outline closed polygon around the visible extent, {x, y} each
 */
public record SpotRegion(
    Centroid centroid,
    double[] densest,
    Box box,
    double area,
    double peakAbsorbance,
    LabColour colour,
    Set<SpotFlag> flags,
    double confidence,
    List<double[]> outline) {

  /** Centre of mass. */
  public record Centroid(double x, double y, double uncertainty) {}

  /** Extent: top and bottom as rows at the spot's column, left and right as columns. */
  public record Box(double left, double right, double top, double bottom) {}
}
