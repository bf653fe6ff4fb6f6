package wickmark.imaging.pose;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import wickmark.imaging.photo.PhotoPoint;

/**
 * Places of the plane that are known, as on a printed sheet, and where they are seen.
 *
 * @param places at least four
 * @param sigmaMm standard uncertainty of where each is seen, on the plane
 */
public record KnownPlaces(List<Place> places, double sigmaMm) {
  /** Unknowns that the places determine: five of the lie, four of the view. */
  private static final int LIE_AND_VIEW = 9;

  public KnownPlaces {
    places = List.copyOf(places);
    if (places.size() < 4 || !(sigmaMm > 0)) {
      throw new IllegalArgumentException(
          "at least four places with an uncertainty are needed, were " + places.size());
    }
  }

  /**
   * A corner of a black figure.
   *
   * @param x on the sheet, mm
   * @param y on the sheet, mm, downwards
   * @param outX 1 or −1: the side on which the figure ends; black figures look larger or smaller
   *     than they are, by toner that spreads and by the camera's finish, and all by the same
   * @param outY the same
   */
  public record Place(double x, double y, int outX, int outY, PhotoPoint seen) {}

  /**
   * How the sheet lies on the plane: the similarity that maps the plane onto the sheet best, least
   * squares, with the growth of black figures as a fifth unknown.
   *
   * @param p cosine part of the similarity, mm per plane unit
   * @param q sine part
   * @param growthMm how much further out black ends than it should
   */
  public record Lie(double p, double q, double moveX, double moveY, double growthMm) {
    /** Millimetres of the sheet to the plane's unit. */
    public double millimetresPerUnit() {
      return Math.hypot(p, q);
    }

    /** The place on the sheet, {x, y} in mm, of a place on the plane. */
    public double[] toSheet(PlanePoint plane) {
      return new double[] {
        p * plane.x() - q * plane.y() + moveX, q * plane.x() + p * plane.y() + moveY
      };
    }

    /** The place on the plane of a place on the sheet, mm. */
    public PlanePoint toPlane(double x, double y) {
      double dx = x - moveX;
      double dy = y - moveY;
      double square = p * p + q * q;
      return new PlanePoint((p * dx + q * dy) / square, (p * dy - q * dx) / square);
    }
  }

  /** How the sheet lies on the plane as a view sees it. */
  public Lie lie(PlaneView view) {
    int n = places.size();
    double[][] a = new double[2 * n][];
    double[] b = new double[2 * n];
    for (int i = 0; i < n; i++) {
      Place place = places.get(i);
      PlanePoint at = view.toPlane(place.seen());
      a[2 * i] = new double[] {at.x(), -at.y(), 1, 0, -place.outX()};
      b[2 * i] = place.x();
      a[2 * i + 1] = new double[] {at.y(), at.x(), 0, 1, -place.outY()};
      b[2 * i + 1] = place.y();
    }
    double[] s =
        new QRDecomposition(new Array2DRowRealMatrix(a, false))
            .getSolver()
            .solve(new ArrayRealVector(b, false))
            .toArray();
    return new Lie(s[0], s[1], s[2], s[3], s[4]);
  }

  /** How far each place is seen from where it should be, mm: x and y in turn. */
  public double[] misfit(PlaneView view) {
    Lie lie = lie(view);
    double[] off = new double[2 * places.size()];
    for (int i = 0; i < places.size(); i++) {
      Place place = places.get(i);
      double[] at = lie.toSheet(view.toPlane(place.seen()));
      off[2 * i] = at[0] - place.x() - lie.growthMm() * place.outX();
      off[2 * i + 1] = at[1] - place.y() - lie.growthMm() * place.outY();
    }
    return off;
  }

  /** Root mean square of the misfit per degree of freedom left, mm. */
  public double rootMeanSquare(PlaneView view) {
    double sum = 0;
    for (double off : misfit(view)) {
      sum += off * off;
    }
    return Math.sqrt(sum / Math.max(1, 2 * places.size() - LIE_AND_VIEW));
  }
}
