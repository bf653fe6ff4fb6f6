package wickmark.imaging.card;

import java.util.ArrayList;
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

  /** Misfit of the corners from which the card does not lie flat, mm, root mean square. */
  private static final double BENT_MM = 0.25;

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
    if (whole.misfitMm() <= BENT_MM) {
      return found(layout, whole, List.of());
    }
    Fit cut = fit(seen, true);
    if (cut.misfitMm() <= BENT_MM) {
      return found(layout, cut, List.of());
    }
    for (int i = 0; i < seen.size() && seen.size() > LEAST_SQUARES; i++) {
      List<Seen> others = new ArrayList<>(seen);
      others.remove(i);
      Fit without = fit(others, false);
      if (without.misfitMm() <= BENT_MM) {
        return found(
            layout,
            without,
            List.of(
                new Doubt(
                    "card-square-left-out",
                    "One of the card's squares, the "
                        + place(seen.get(i).fiducial())
                        + ", does not fit the others and was left out. Is it covered in part, or"
                        + " does the card curl up there? Lay the card flat.")));
      }
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
                    "The card's squares lie %.1f mm from where they would on a flat card: it curls,"
                        + " or a lens distorts strongly. Millimetres may be wrong by as much over"
                        + " the length of the strip. Lay it flat, weigh down its edges, and take"
                        + " the picture from further away.",
                    whole.misfitMm()))));
  }

  private static String place(Fiducial fiducial) {
    return List.of("upper left", "upper right", "lower right", "lower left")
        .get(fiducial.number() % 4);
  }

  private record Fit(KnownPlaces known, PlaneFit.Result result, double misfitMm) {}

  private Fit fit(List<Seen> squares, boolean cut) {
    List<KnownPlaces.Place> places = new ArrayList<>();
    double sidesMm = 0;
    double sidesPx = 0;
    for (Seen seen : squares) {
      double[] x = {seen.fiducial().box().left(), seen.fiducial().box().right()};
      double[] y = {seen.fiducial().box().top(), seen.fiducial().box().bottom()};
      for (int i = 0; i < 4; i++) {
        int right = i == 1 || i == 2 ? 1 : 0;
        int lower = i >= 2 ? 1 : 0;
        PhotoPoint at = seen.corners().get(i);
        PhotoPoint next = seen.corners().get((i + 1) & 3);
        places.add(new KnownPlaces.Place(x[right], y[lower], 2 * right - 1, 2 * lower - 1, at));
        sidesMm += seen.fiducial().box().width();
        sidesPx += Math.hypot(next.x() - at.x(), next.y() - at.y());
      }
    }
    KnownPlaces known =
        new KnownPlaces(places, Math.hypot(CORNER_PX * sidesMm / sidesPx, FLATNESS_MM));
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
