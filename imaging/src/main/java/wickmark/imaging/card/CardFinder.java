package wickmark.imaging.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wickmark.core.card.CardLayout;
import wickmark.core.card.CardSheet;
import wickmark.core.card.Fiducial;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.pose.KnownPlaces;
import wickmark.imaging.pose.PlaneFit;

/** Finds the printed card in a photo and the view of its plane. */
public final class CardFinder {
  /** Two squares give eight corners; one alone, 2 cm wide, tells too little of the plane. */
  private static final int LEAST_SQUARES = 2;

  /** A corner is measured within this in a clear picture, photo pixels. */
  private static final double CORNER_PX = 0.12;

  /** A printed sheet that lies flat on a desk is even within this, mm (common practice). */
  private static final double FLATNESS_MM = 0.08;

  /**
   * Misfit of the corners from which something is wrong, mm, root mean square. A flat card leaves
   * 0.02 to 0.05 in photos of 5 to 12 pixels a millimetre; a square moved by 1 mm leaves 0.1 to
   * 0.2, and the wrong principal point of a picture that was cut more.
   */
  private static final double WRONG_MM = 0.12;

  /**
   * A reason for it is believed only where it explains all: with the principal point let go, four
   * squares that lie nowhere near a plane still leave as little as 0.06.
   */
  private static final double EXPLAINED_MM = 0.05;

  /** The same in photos so coarse that the corners themselves are less certain. */
  private static final double EXPLAINED_SIGMAS = 2.5;

  /** The square to leave out must explain so much more than any other. */
  private static final double CLEARLY = 1.5;

  /** Misfit from which the squares are not those of one card, mm. */
  private static final double NO_CARD_MM = 3;

  private final Photo photo;

  private CardFinder(Photo photo) {
    this.photo = photo;
  }

  /**
   * What was found.
   *
   * @param doubts why a card that is there was not used
   */
  public record Finding(Optional<CardView> card, List<Doubt> doubts) {
    public Finding {
      doubts = List.copyOf(doubts);
    }

    private static Finding none() {
      return new Finding(Optional.empty(), List.of());
    }

    private static Finding notUsed(String why) {
      return new Finding(
          Optional.empty(),
          List.of(new Doubt("card-not-used", "The printed card was not used: " + why)));
    }
  }

  /** Looks for the card. */
  public static Finding find(Photo photo) {
    return new CardFinder(photo).find();
  }

  private Finding find() {
    List<SquareFinder.Found> all = SquareFinder.find(photo);
    if (all.isEmpty()) {
      return Finding.none();
    }
    Map<CardSheet, List<SquareFinder.Found>> bySheet =
        all.stream()
            .collect(
                Collectors.groupingBy(
                    f -> Fiducial.sheetOf(f.number()), TreeMap::new, Collectors.toList()));
    List<SquareFinder.Found> most = List.of();
    for (List<SquareFinder.Found> ofSheet : bySheet.values()) {
      most = ofSheet.size() > most.size() ? ofSheet : most;
    }
    if (most.stream().map(SquareFinder.Found::number).distinct().count() < most.size()) {
      return Finding.notUsed("there are two of its kind in the picture. Lay out one only.");
    }
    CardLayout layout = CardLayout.of(Fiducial.sheetOf(most.get(0).number()));
    List<Seen> seen = new ArrayList<>();
    for (SquareFinder.Found found : most) {
      SquareEdges.corners(photo, found)
          .ifPresent(
              corners -> seen.add(new Seen(layout.fiducials().get(found.number() % 4), corners)));
    }
    if (seen.size() < LEAST_SQUARES) {
      return Finding.notUsed(
          "only one of its four squares is seen clearly, and two are needed. Take the picture with"
              + " all four in it, uncovered and sharp.");
    }
    return fitted(layout, seen);
  }

  /** A square with its corners, upper left first as printed, clockwise. */
  private record Seen(Fiducial fiducial, List<PhotoPoint> corners) {}

  private Finding fitted(CardLayout layout, List<Seen> seen) {
    Fit whole = fit(seen, false);
    if (whole.misfitMm() <= WRONG_MM) {
      return found(layout, whole, List.of());
    }
    Fit cut = fit(seen, true);
    if (cut.misfitMm() <= explained(seen)) {
      return found(layout, cut, List.of());
    }
    Optional<Finding> without = withoutOne(layout, seen);
    if (without.isPresent()) {
      return without.get();
    }
    if (whole.misfitMm() > NO_CARD_MM) {
      return Finding.notUsed(
          "its squares do not fit together. Lay it flat, and take the picture from above.");
    }
    return found(
        layout,
        whole,
        List.of(
            new Doubt(
                "card-not-flat",
                String.format(
                    Locale.ROOT,
                    "The card's squares do not fit a flat card, by %.2f mm in the mean: it curls, or a"
                        + " lens distorts strongly. Millimetres may be wrong by several times as"
                        + " much. Lay it flat, weigh down its edges, and take the picture from"
                        + " further away.",
                    whole.misfitMm()))));
  }

  /** Leaves out the one square that alone does not fit, where there is such a one. */
  private Optional<Finding> withoutOne(CardLayout layout, List<Seen> seen) {
    if (seen.size() <= LEAST_SQUARES) {
      return Optional.empty();
    }
    List<Without> all =
        seen.stream()
            .map(one -> new Without(one, fit(others(seen, one), false)))
            .sorted(Comparator.comparingDouble(w -> w.fit().misfitMm()))
            .toList();
    Without best = all.get(0);
    if (best.fit().misfitMm() > explained(seen)
        || all.get(1).fit().misfitMm() < CLEARLY * best.fit().misfitMm()) {
      return Optional.empty();
    }
    String where = place(best.left().fiducial());
    return Optional.of(
        found(
            layout,
            best.fit(),
            List.of(
                new Doubt(
                    "card-square-left-out",
                    "One of the card's squares, the "
                        + where
                        + ", does not fit the others and was left out. Is it covered in part, or"
                        + " does the card curl up there? Lay the card flat."))));
  }

  private record Without(Seen left, Fit fit) {}

  private static List<Seen> others(List<Seen> seen, Seen one) {
    return seen.stream().filter(s -> !s.equals(one)).toList();
  }

  private static double explained(List<Seen> seen) {
    return Math.max(EXPLAINED_MM, EXPLAINED_SIGMAS * CORNER_PX * millimetresPerPixel(seen));
  }

  /** About: the squares' sides as printed over those seen. */
  private static double millimetresPerPixel(List<Seen> seen) {
    double mm = 0;
    double px = 0;
    for (Seen one : seen) {
      for (int i = 0; i < 4; i++) {
        PhotoPoint at = one.corners().get(i);
        PhotoPoint next = one.corners().get((i + 1) & 3);
        mm += one.fiducial().box().width();
        px += Math.hypot(next.x() - at.x(), next.y() - at.y());
      }
    }
    return mm / px;
  }

  private static String place(Fiducial fiducial) {
    return List.of("upper left", "upper right", "lower right", "lower left")
        .get(fiducial.number() % 4);
  }

  private record Fit(KnownPlaces known, PlaneFit.Result result, double misfitMm) {}

  private Fit fit(List<Seen> squares, boolean cut) {
    List<KnownPlaces.Place> places = new ArrayList<>();
    for (Seen seen : squares) {
      double[] x = {seen.fiducial().box().left(), seen.fiducial().box().right()};
      double[] y = {seen.fiducial().box().top(), seen.fiducial().box().bottom()};
      for (int i = 0; i < 4; i++) {
        int right = i == 1 || i == 2 ? 1 : 0;
        int lower = i >= 2 ? 1 : 0;
        PhotoPoint at = seen.corners().get(i);
        places.add(new KnownPlaces.Place(x[right], y[lower], 2 * right - 1, 2 * lower - 1, at));
      }
    }
    KnownPlaces known =
        new KnownPlaces(places, Math.hypot(CORNER_PX * millimetresPerPixel(squares), FLATNESS_MM));
    PlaneFit.Result result =
        PlaneFit.of(photo.widthPx(), photo.heightPx(), photo.focalLength35mm(), known, cut);
    return new Fit(known, result, known.rootMeanSquare(result.view()));
  }

  private static Finding found(CardLayout layout, Fit fit, List<Doubt> doubts) {
    // Where corners lie further off than they should, the view is less certain by as much.
    double worse = Math.max(1, fit.misfitMm() / fit.known().sigmaMm());
    double[][] covariance = fit.result().covariance();
    for (double[] row : covariance) {
      for (int j = 0; j < row.length; j++) {
        row[j] *= worse * worse;
      }
    }
    return new Finding(
        Optional.of(new CardView(layout, fit.result().view(), covariance, fit.known(), doubts)),
        List.of());
  }
}
