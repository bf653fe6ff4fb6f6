package wickmark.imaging.card;

import java.util.List;
import wickmark.core.card.Box;
import wickmark.core.card.CardLayout;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.pose.KnownPlaces;
import wickmark.imaging.pose.PlaneView;

/** The card as it is seen. Lengths on it are in the print's own millimetres. */
public final class CardView {
  private final CardLayout layout;
  private final PlaneView view;
  private final double[][] covariance;
  private final KnownPlaces known;
  private final KnownPlaces.Lie lie;
  private final List<Doubt> doubts;

  CardView(
      CardLayout layout,
      PlaneView view,
      double[][] covariance,
      KnownPlaces known,
      List<Doubt> doubts) {
    this.layout = layout;
    this.view = view;
    this.covariance = covariance;
    this.known = known;
    this.lie = known.lie(view);
    this.doubts = List.copyOf(doubts);
  }

  public CardLayout layout() {
    return layout;
  }

  /** The view of the card's plane. */
  public PlaneView view() {
    return view;
  }

  /** The covariance of the view's parameters. */
  public double[][] covariance() {
    return covariance;
  }

  /** A square that was left out, a card that curls. */
  public List<Doubt> doubts() {
    return doubts;
  }

  /** Corners of squares that were measured. */
  public int corners() {
    return known.places().size();
  }

  /** Root mean square of what the corners are off, mm. */
  public double misfitMm() {
    return known.rootMeanSquare(view);
  }

  /** Millimetres to the plane's unit, if the view were another one. */
  public double millimetresPerUnit(PlaneView other) {
    return known.lie(other).millimetresPerUnit();
  }

  /** The place in the photo of a place on the card, mm. */
  public PhotoPoint toPhoto(double x, double y) {
    return view.toPhoto(lie.toPlane(x, y));
  }

  /** The place on the card, {x, y} in mm, of a place in the photo. */
  public double[] fromPhoto(PhotoPoint photo) {
    return lie.toSheet(view.toPlane(photo));
  }

  /** The corners of a box of the card in the photo, upper left first, clockwise. */
  public List<PhotoPoint> corners(Box box) {
    return List.of(
        toPhoto(box.left(), box.top()),
        toPhoto(box.right(), box.top()),
        toPhoto(box.right(), box.bottom()),
        toPhoto(box.left(), box.bottom()));
  }
}
