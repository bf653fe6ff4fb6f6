package wickmark.imaging.pose;

import java.util.List;
import wickmark.imaging.photo.PhotoPoint;

/**
 * Rows of marks as a ruler has them along its edges: each straight and evenly divided, all in one
 * direction and, mark by mark, as long as they say. How much closer together the marks of the
 * farther edge are seen tells how the plane is tilted across the ruler, whatever lies beside it.
 *
 * <p>The direction of the marks themselves would tell that too, and is not used: many rulers bear
 * their marks on a bevel, which is tilted by itself.
 *
 * @param rows the one to be trusted most first
 * @param together whether the rows agree as those of one ruler do; else the first alone is the
 *     scale
 */
public record RulerRows(List<PlaneEvidence.Division> rows, boolean together) {
  /** How far the divisions of two edges of one ruler are of one length (printing; ours). */
  private static final double AGREEMENT = 0.001;

  /**
   * Standard deviation of the height of one edge's marks over the other's, mm: one may stand on a
   * bevel and the other on the ruler's back, which is higher by 1 mm or so (ours).
   */
  private static final double FACES_APART_MM = 0.5;

  /** Standard deviation of the angle between two edges of one ruler, radians: 0.1° (ours). */
  private static final double PARALLEL = 0.1 * Math.PI / 180;

  /**
   * The same of edges of which one was misread or printed wrong, or which are those of two rulers
   * at different heights, of their logarithms (ours).
   */
  private static final double DISAGREEMENT = 0.06;

  public RulerRows {
    rows = List.copyOf(rows);
  }

  /** Whether there is a ruler at all. */
  boolean isEmpty() {
    return rows.isEmpty();
  }

  /** The same rows, of which the others do not say what the first says. */
  RulerRows apart() {
    return new RulerRows(rows, false);
  }

  /** Millimetres of the plane's unit by the rows that are the scale; there must be one. */
  public double millimetresPerUnit(PlaneView view) {
    int n = together ? rows.size() : 1;
    double sum = 0;
    for (PlaneEvidence.Division row : rows.subList(0, n)) {
      sum += StrictMath.log(row.millimetresPerMark() / EvenRow.fit(view, row).step());
    }
    return StrictMath.exp(sum / n);
  }

  /**
   * How far the marks are from where even rows have them, and how far the rows are from agreeing.
   *
   * @param inSigmas in units of their uncertainty: the marks', then two for each row but the first
   * @param disagreement squares of those two, summed
   * @param logSpread as in {@link SheetSides.Misfit}, of the rows' agreement
   * @param millimetresPerUnit by the rows that are the scale; NaN without any
   */
  record Misfit(
      double[] inSigmas, double disagreement, double logSpread, double millimetresPerUnit) {}

  /** Compares with what a view shows. */
  Misfit misfit(PlaneView view) {
    int marks = 0;
    for (PlaneEvidence.Division row : rows) {
      marks += row.index().length;
    }
    int further = Math.max(0, rows.size() - 1);
    double[] r = new double[2 * marks + 2 * further];
    EvenRow[] even = new EvenRow[rows.size()];
    int at = 0;
    for (int i = 0; i < even.length; i++) {
      even[i] = EvenRow.fit(view, rows.get(i));
      at = unevenness(view, even[i], rows.get(i), r, at);
    }
    double first = even.length == 0 ? Double.NaN : scale(0, even);
    double logSum = 0;
    double disagreement = 0;
    double logSpread = 0;
    for (int i = 1; i < even.length; i++) {
      double ratio = StrictMath.log(scale(i, even) / first);
      double sigma = together ? ratioSigma(rows.get(i), first) : DISAGREEMENT;
      r[at] = ratio / sigma;
      r[at + 1] = turn(even[0], even[i]) / PARALLEL;
      disagreement += r[at] * r[at] + r[at + 1] * r[at + 1];
      at += 2;
      logSum += ratio;
      logSpread += StrictMath.log(sigma);
    }
    double scale = together ? first * StrictMath.exp(logSum / (1 + further)) : first;
    return new Misfit(r, disagreement, logSpread, scale);
  }

  private double scale(int i, EvenRow[] even) {
    return rows.get(i).millimetresPerMark() / even[i].step();
  }

  private double ratioSigma(PlaneEvidence.Division row, double millimetresPerUnit) {
    double steps = Math.hypot(stepSigma(rows.get(0)), stepSigma(row));
    return Math.hypot(Math.hypot(AGREEMENT, FACES_APART_MM / millimetresPerUnit), steps);
  }

  /** Standard uncertainty of a row's step over the step, by the line through its marks. */
  private static double stepSigma(PlaneEvidence.Division row) {
    return row.sigmaPx() * Math.sqrt(12.0 / row.index().length) / lengthPx(row);
  }

  private static double lengthPx(PlaneEvidence.Division row) {
    PhotoPoint first = row.at().get(0);
    PhotoPoint last = row.at().get(row.at().size() - 1);
    return Math.hypot(last.x() - first.x(), last.y() - first.y());
  }

  /** Sine of the angle between two rows, of which one may be numbered from the other end. */
  private static double turn(EvenRow a, EvenRow b) {
    return (a.stepX() * b.stepY() - a.stepY() * b.stepX()) / (a.step() * b.step());
  }

  /**
   * The marks' distances from an even row, in units of their uncertainty: in the photo, where that
   * is known. On the plane a tilt along the row would shrink what is seen across it.
   */
  private static int unevenness(
      PlaneView view, EvenRow row, PlaneEvidence.Division marks, double[] r, int start) {
    PhotoPoint first = marks.at().get(0);
    PhotoPoint last = marks.at().get(marks.at().size() - 1);
    double length = lengthPx(marks);
    double alongX = (last.x() - first.x()) / length;
    double alongY = (last.y() - first.y()) / length;
    int at = start;
    for (int i = 0; i < marks.index().length; i++) {
      PhotoPoint even = view.toPhoto(row.at(marks.index()[i]));
      double dx = marks.at().get(i).x() - even.x();
      double dy = marks.at().get(i).y() - even.y();
      r[at++] = (dx * alongX + dy * alongY) / marks.sigmaPx();
      r[at++] = (dy * alongX - dx * alongY) / marks.asideSigmaPx();
    }
    return at;
  }
}
