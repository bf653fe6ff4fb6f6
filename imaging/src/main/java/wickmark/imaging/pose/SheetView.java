package wickmark.imaging.pose;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import wickmark.imaging.photo.PhotoPoint;

/**
 * How the camera sees the plane by a sheet on it and a ruler beside it. How square the sheet is
 * nobody knows: it may be cut with care, by hand, or have a corner that lies where none was cut
 * (lifted, torn, under a finger). Each of these is a hypothesis, fitted by itself, and so is that
 * two graduated edges do not agree. The view is the mean over all, each with its probability given
 * what is seen, and its covariance holds how far they are apart (Bayesian model averaging: Hoeting,
 * Madigan, Raftery, Volinsky, Statistical Science 14 (1999) 382–417, section 1; the evidence of
 * each by Laplace's approximation).
 *
 * @param view the view
 * @param covariance of its parameters, in their order
 * @param ruler the rows of marks, and whether they agree
 * @param careful probability that the sheet is cut with care, so that its corners are square
 */
public record SheetView(PlaneView view, double[][] covariance, RulerRows ruler, double careful) {
  /** How a sheet may be cut: a corner's standard deviation across a side, and how common it is. */
  private record Cut(double mm, double share) {}

  /** With care (guillotine, scissors along a line); by hand; a corner that is no corner (ours). */
  private static final List<Cut> CUTS =
      List.of(new Cut(0.3, 0.55), new Cut(1, 0.35), new Cut(4, 0.1));

  /** How often two graduated edges that were read do not agree (ours). */
  private static final double DISAGREE = 0.02;

  /**
   * Sum of squares of a well-cut sheet's and two agreeing edges' misfit below which neither can be
   * wrong by much: that the edges disagree then has a probability below some per cent.
   */
  private static final double AGREED = 6;

  private record Fitted(
      PlaneFit.Optimum best, RulerRows ruler, Cut cut, double misfit, double log) {}

  /** Fits. */
  public static SheetView of(PlaneEvidence evidence) {
    RulerRows ruler = new RulerRows(evidence.divisions(), true);
    PlaneFit fit =
        PlaneFit.ofCamera(evidence.widthPx(), evidence.heightPx(), evidence.focalLength35mm());
    SheetSides sheet = SheetSides.of(evidence);
    List<Fitted> all = fitted(fit, sheet, ruler, 1 - DISAGREE);
    if (evidence.divisions().size() > 1 && (all.isEmpty() || all.get(0).misfit() > AGREED)) {
      all.addAll(fitted(fit, sheet, ruler.apart(), DISAGREE));
    }
    return all.isEmpty()
        ? new SheetView(fit.start(), fit.prior(), ruler.apart(), 0)
        : mean(fit, all);
  }

  private static List<Fitted> fitted(
      PlaneFit fit, SheetSides sheet, RulerRows ruler, double share) {
    List<Fitted> all = new ArrayList<>();
    PlaneView from = fit.start();
    for (Cut cut : CUTS) {
      PlaneFit.Optimum best = fit.solve(view -> misfit(view, sheet, ruler, cut), from);
      if (best.converged()) {
        from = best.view();
        RulerRows.Misfit rows = ruler.misfit(best.view());
        SheetSides.Misfit sides = sides(best.view(), sheet, rows, cut);
        double log =
            StrictMath.log(share * cut.share())
                - best.sumOfSquares() / 2
                - (sides.logSpread() + rows.logSpread())
                + logDeterminant(best.covariance()) / 2;
        all.add(new Fitted(best, ruler, cut, sides.sumOfSquares() + rows.disagreement(), log));
      }
    }
    return all;
  }

  private static double[] misfit(PlaneView view, SheetSides sheet, RulerRows ruler, Cut cut) {
    RulerRows.Misfit rows = ruler.misfit(view);
    double[] sides = sides(view, sheet, rows, cut).inSigmas();
    double[] r = new double[rows.inSigmas().length + sides.length];
    System.arraycopy(rows.inSigmas(), 0, r, 0, rows.inSigmas().length);
    System.arraycopy(sides, 0, r, rows.inSigmas().length, sides.length);
    return r;
  }

  private static SheetSides.Misfit sides(
      PlaneView view, SheetSides sheet, RulerRows.Misfit rows, Cut cut) {
    double mmPerUnit =
        Double.isNaN(rows.millimetresPerUnit())
            ? usualMillimetresPerUnit(view, sheet.corners())
            : rows.millimetresPerUnit();
    return sheet.misfit(view, mmPerUnit, cut.mm());
  }

  /** Millimetres of the plane's unit if a sheet is as large as strips usually are. */
  public static double usualMillimetresPerUnit(PlaneView view, List<PhotoPoint> corners) {
    return SheetSides.USUAL_HALF_OUTLINE_MM / SheetSides.halfOutline(view, corners);
  }

  private static SheetView mean(PlaneFit fit, List<Fitted> all) {
    double most = all.stream().mapToDouble(Fitted::log).max().orElse(0);
    double sum = all.stream().mapToDouble(f -> StrictMath.exp(f.log() - most)).sum();
    int n = all.get(0).best().point().length;
    double[] mean = new double[n];
    double together = 0;
    double careful = 0;
    for (Fitted f : all) {
      double share = StrictMath.exp(f.log() - most) / sum;
      together += f.ruler().together() ? share : 0;
      careful += f.cut().equals(CUTS.get(0)) ? share : 0;
      for (int i = 0; i < n; i++) {
        mean[i] += share * f.best().point()[i];
      }
    }
    double[][] covariance = new double[n][n];
    for (Fitted f : all) {
      double share = StrictMath.exp(f.log() - most) / sum;
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          double apart = (f.best().point()[i] - mean[i]) * (f.best().point()[j] - mean[j]);
          covariance[i][j] += share * (f.best().covariance()[i][j] + apart);
        }
      }
    }
    RulerRows ruler = all.get(0).ruler();
    return new SheetView(
        fit.view(mean),
        PlaneFit.padded(covariance),
        together >= 0.5 ? ruler : ruler.apart(),
        careful);
  }

  private static double logDeterminant(double[][] covariance) {
    return StrictMath.log(
        new LUDecomposition(new Array2DRowRealMatrix(covariance, false)).getDeterminant());
  }
}
