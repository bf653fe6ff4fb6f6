package wickmark.imaging.card;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import wickmark.core.card.Box;
import wickmark.core.colour.SrgbTransfer;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.raster.Selection;

/**
 * How large the card was printed, by the edges of its sheet: the sheet's size is known, and where
 * its white ends is measured in the print's millimetres. A page that was fitted when it was printed
 * is so told without a ruler, wherever the desk is no white one.
 */
public final class SheetEdges {
  /** Outwards from the margin, where nothing is printed, mm: to where a fitted page would end. */
  private static final double FROM_MM = 7;

  private static final double TO_MM = -22;
  private static final double STEP_MM = 0.2;

  /** The white that the paper has along each look outwards, mm. */
  private static final double WHITE_MM = 2;

  private static final int PLACES = 24;

  /** A change of light, relative to white, that is no shading of the paper. */
  private static final double LEAST_CHANGE = 0.2;

  /** How far it must go on so, mm: a stroke or a crumb is thinner. */
  private static final double LASTING_MM = 1.6;

  private static final double LEAST_SHARE = 0.6;

  /** Median distance of the places from their median, mm: an edge is straight. */
  private static final double MOST_SCATTER_MM = 0.35;

  /** The edge's place, with shadow and blur, mm. */
  private static final double EDGE_MM = 0.3;

  /** ISO 216:2007, tolerance of sheets' sides from 150 to 600 mm, rectangular. */
  private static final double CUT_MM = 2 / 1.7320508;

  /** Both ways must tell the same, within this: else the paper is of another size. */
  private static final double SAME = 0.012;

  private final Photo photo;
  private final CardView card;

  private SheetEdges(Photo photo, CardView card) {
    this.photo = photo;
    this.card = card;
  }

  /**
   * How large the print is.
   *
   * @param print 1 for true, 0.97 for a page that was shrunk to 97 %
   * @param relativeUncertainty standard, of that
   * @param bothWays whether width and height were seen and tell the same
   */
  public record PrintScale(double print, double relativeUncertainty, boolean bothWays) {}

  /** Returns it; empty where no two opposite edges are seen or the sheet is of another size. */
  public static Optional<PrintScale> of(Photo photo, CardView card) {
    return new SheetEdges(photo, card).scale();
  }

  private Optional<PrintScale> scale() {
    Box paper = card.layout().paper();
    OptionalDouble across = seen(side(0), side(1), paper.width());
    OptionalDouble along = seen(side(2), side(3), paper.height());
    double acrossU = uncertainty(paper.width());
    double alongU = uncertainty(paper.height());
    if (across.isPresent() && along.isPresent()) {
      double a = paper.width() / across.getAsDouble();
      double b = paper.height() / along.getAsDouble();
      if (Math.abs(a / b - 1) > SAME) {
        return Optional.empty();
      }
      double wa = 1 / (acrossU * acrossU);
      double wb = 1 / (alongU * alongU);
      double mean = (wa * a + wb * b) / (wa + wb);
      return Optional.of(new PrintScale(mean, 1 / Math.sqrt(wa + wb), true));
    }
    if (along.isPresent()) {
      return Optional.of(new PrintScale(paper.height() / along.getAsDouble(), alongU, false));
    }
    return across.isPresent()
        ? Optional.of(new PrintScale(paper.width() / across.getAsDouble(), acrossU, false))
        : Optional.empty();
  }

  private static double uncertainty(double length) {
    return Math.hypot(CUT_MM, Math.sqrt(2) * EDGE_MM) / length;
  }

  private static OptionalDouble seen(OptionalDouble one, OptionalDouble other, double nominal) {
    return one.isPresent() && other.isPresent()
        ? OptionalDouble.of(nominal - one.getAsDouble() - other.getAsDouble())
        : OptionalDouble.empty();
  }

  /**
   * How far within its true place an edge is seen, mm of the print; below 0 outside.
   *
   * @param which 0 left, 1 right, 2 upper, 3 lower
   */
  private OptionalDouble side(int which) {
    double[] edges = new double[PLACES];
    int n = 0;
    for (int i = 0; i < PLACES; i++) {
      double edge = edge(which, 0.1 + 0.8 * i / (PLACES - 1));
      if (!Double.isNaN(edge)) {
        edges[n++] = edge;
      }
    }
    if (n < LEAST_SHARE * PLACES) {
      return OptionalDouble.empty();
    }
    double middle = Selection.median(Arrays.copyOf(edges, n), n);
    double[] off = new double[n];
    for (int i = 0; i < n; i++) {
      off[i] = Math.abs(edges[i] - middle);
    }
    return Selection.median(off, n) > MOST_SCATTER_MM
        ? OptionalDouble.empty()
        : OptionalDouble.of(middle);
  }

  private double edge(int which, double part) {
    int steps = (int) Math.round((FROM_MM - TO_MM) / STEP_MM);
    int white = (int) Math.round(WHITE_MM / STEP_MM);
    int lasting = (int) Math.round(LASTING_MM / STEP_MM);
    double[] paper = new double[3];
    int changed = 0;
    for (int k = 0; k <= steps; k++) {
      double within = FROM_MM - k * STEP_MM;
      double[] light = light(which, within, part);
      if (light.length == 0) {
        return Double.NaN;
      }
      if (k < white) {
        for (int c = 0; c < 3; c++) {
          paper[c] += light[c] / white;
        }
      } else if (differs(light, paper)) {
        changed++;
        if (changed >= lasting) {
          return within + (changed - 0.5) * STEP_MM;
        }
      } else {
        changed = 0;
      }
    }
    return Double.NaN;
  }

  private static boolean differs(double[] light, double[] paper) {
    double most = 0;
    for (int c = 0; c < 3; c++) {
      most = Math.max(most, Math.abs(light[c] / Math.max(1e-3, paper[c]) - 1));
    }
    return most > LEAST_CHANGE;
  }

  /** Linear light in three channels at a place near an edge; nothing outside the picture. */
  private double[] light(int which, double within, double part) {
    Box paper = card.layout().paper();
    PhotoPoint at =
        switch (which) {
          case 0 -> card.toPhoto(within, part * paper.height());
          case 1 -> card.toPhoto(paper.right() - within, part * paper.height());
          case 2 -> card.toPhoto(part * paper.width(), within);
          default -> card.toPhoto(part * paper.width(), paper.bottom() - within);
        };
    int x = (int) Math.floor(at.x());
    int y = (int) Math.floor(at.y());
    if (x < 0 || y < 0 || x >= photo.widthPx() || y >= photo.heightPx()) {
      return new double[0];
    }
    return new double[] {
      SrgbTransfer.decode(photo.red(x, y) / 255.0),
      SrgbTransfer.decode(photo.green(x, y) / 255.0),
      SrgbTransfer.decode(photo.blue(x, y) / 255.0)
    };
  }
}
