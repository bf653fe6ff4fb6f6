package wickmark.imaging.line;

import java.util.Optional;
import java.util.Set;
import wickmark.imaging.paper.DensityMap;

/**
 * What the person says of bottom, baseline and front; what is not said is searched for.
 *
 * @param turns quarter turns that may be, see {@link Layout#quarterTurns}
 * @param baseline the line, if said
 * @param front the line, if said
 */
public record SaidLayout(
    Set<Integer> turns, Optional<TwoPlaces> baseline, Optional<TwoPlaces> front) {
  /** Width of a bin of columns, as in the search. */
  private static final double BIN_MM = 2;

  public SaidLayout {
    turns = Set.copyOf(turns);
  }

  /** Nothing said. */
  public static SaidLayout nothing() {
    return new SaidLayout(Set.of(0, 1, 2, 3), Optional.empty(), Optional.empty());
  }

  /** Two places on a line, as parts of width and height of the strip with its corners as given. */
  public record TwoPlaces(double x1, double y1, double x2, double y2) {
    private TwoPlaces turned() {
      return new TwoPlaces(1 - y1, x1, 1 - y2, x2);
    }

    /** The straight line in a map, or none if it does not run across it. */
    Optional<CrossLine> in(DensityMap map, int turns) {
      TwoPlaces here = turns == 0 ? this : turned();
      double dx = (here.x2 - here.x1) * map.width();
      double dy = (here.y2 - here.y1) * map.height();
      if (Math.abs(dy) >= Math.abs(dx)) {
        return Optional.empty();
      }
      int bins = Math.max(6, (int) (map.width() / (BIN_MM * map.cellsPerMm())));
      double[] x = new double[bins];
      double[] y = new double[bins];
      double[] contrast = new double[bins];
      for (int b = 0; b < bins; b++) {
        x[b] = (b + 0.5) * map.width() / bins;
        y[b] = here.y1 * map.height() + dy / dx * (x[b] - here.x1 * map.width());
        contrast[b] = 1;
      }
      return Optional.of(new CrossLine(LineKind.BY_HAND, x, y, contrast, 1e-3));
    }
  }
}
