package wickmark.imaging.strip;

import java.util.List;
import wickmark.imaging.raster.ColourRaster;
import wickmark.imaging.raster.SquareMorphology;

/**
 * The lines of squared or ruled paper that something lies on. They are longer and clearer than the
 * sides of white paper on white paper, and so many that no other line is found for them. But they
 * are thin and dark with one ground on both sides, where a side has two: the morphological closing
 * of the picture has none of them and all of its steps.
 */
final class PrintedLines {
  /** Half the side of the square that fills up what is dark and narrower, cells. */
  private static final int RADIUS = 3;

  /** Part of a line's support that is left, at the most, where it is dark and thin. */
  private static final double LEFT = 0.5;

  /** So many of a picture's lines, from which they are those of its ground. */
  static final int MANY = 36;

  private PrintedLines() {}

  /** The picture without what is dark and thin. */
  static ColourRaster filled(ColourRaster picture) {
    return new ColourRaster(
        SquareMorphology.closed(picture.red(), RADIUS),
        SquareMorphology.closed(picture.green(), RADIUS),
        SquareMorphology.closed(picture.blue(), RADIUS));
  }

  /**
   * Whether many of a picture's lines are such.
   *
   * @param filled the edges of the picture without what is dark and thin
   */
  static boolean areMany(List<EdgeLine> lines, EdgeMap filled) {
    return lines.stream().filter(line -> isThin(line, filled)).count() >= MANY;
  }

  private static boolean isThin(EdgeLine line, EdgeMap filled) {
    EdgeLine left = EdgeLine.along(filled, line.nx, line.ny, line.offset, 2);
    return left.support() < LEFT * line.support();
  }
}
