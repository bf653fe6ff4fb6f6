package wickmark.imaging.scale;

import wickmark.imaging.photo.PhotoPoint;

/**
 * One mark of a ruler's edge.
 *
 * @param index the mark's number in marks from an arbitrary zero; a mark that was not seen leaves a
 *     gap
 * @param at where the mark crosses the line that all marks of its edge share, in photo pixels
 * @param sigmaPx standard uncertainty of the place along the ruler, in photo pixels, above 0
 */
public record Graduation(int index, PhotoPoint at, double sigmaPx) {
  public Graduation {
    if (!(sigmaPx > 0)) {
      throw new IllegalArgumentException("a mark's uncertainty must be above 0 px, was " + sigmaPx);
    }
  }
}
