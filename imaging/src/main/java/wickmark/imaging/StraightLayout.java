package wickmark.imaging;

import java.util.List;
import wickmark.imaging.photo.PhotoPoint;

/**
 * Where lines, lanes and spots lie on the straightened picture, in its pixels: what it takes to
 * measure again when a person moves one of them.
 *
 * @param unitsPerPixel the strip's unit of length (millimetres, or strip heights) a pixel
 * @param lanes in the order of the evidence's lanes
 * @param photo where places of it lie in the photo
 * @param hand how well a person sets a place
 */
public record StraightLayout(
    double unitsPerPixel, Course baseline, Course front, List<Lane> lanes, Grid photo, Hand hand) {

  public StraightLayout {
    lanes = List.copyOf(lanes);
  }

  /**
   * A line across the strip: its row is a polynomial of (column − middle) ÷ half, which is held
   * within ±1.15.
   *
   * @param coefficients of rising powers
   */
  public record Course(double middle, double half, List<Double> coefficients) {
    public Course {
      coefficients = List.copyOf(coefficients);
    }
  }

  /**
   * A lane.
   *
   * @param originX column of its origin on the baseline
   * @param spots in the order of the evidence's spots
   * @param density along the lane
   */
  public record Lane(double originX, List<Spot> spots, Density density) {
    public Lane {
      spots = List.copyOf(spots);
    }
  }

  /**
   * A spot.
   *
   * @param x column of its centre
   * @param y row of its centre
   * @param top row of its upper rim
   * @param bottom row of its lower rim
   */
  public record Spot(
      double x, double y, double top, double bottom, double densestX, double densestY) {}

  /**
   * The density along a lane, to look at.
   *
   * @param start distance of the first value from the baseline, pixels
   * @param step between values, pixels
   * @param density summed across the lane, density · mm
   */
  public record Density(double start, double step, List<Double> density) {
    public Density {
      density = List.copyOf(density);
    }
  }

  /**
   * Places of the photo on an even grid over the straightened picture, from its outer corner to its
   * outer corner; between them the mapping is as good as linear.
   *
   * @param places row by row
   */
  public record Grid(int columns, int rows, List<PhotoPoint> places) {
    public Grid {
      places = List.copyOf(places);
      if (places.size() != columns * rows) {
        throw new IllegalArgumentException(
            "a grid has a place for each column and row, got " + places.size());
      }
    }
  }

  /**
   * Standard uncertainties of what a person sets, pixels.
   *
   * @param line of a place on a line, along the strip
   * @param lineMeant of a line against what is meant by it
   * @param spot of a spot's centre, along the strip
   */
  public record Hand(double line, double lineMeant, double spot) {}
}
