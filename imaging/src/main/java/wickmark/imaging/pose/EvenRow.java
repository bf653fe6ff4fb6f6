package wickmark.imaging.pose;

/**
 * The straight, evenly divided row on the plane that fits a row of marks best (least squares).
 *
 * @param middleIndex mean index of the marks
 * @param middle mean place of the marks
 * @param stepX from one index to the next, plane units
 * @param stepY the same
 */
public record EvenRow(double middleIndex, PlanePoint middle, double stepX, double stepY) {

  /** Fits the row to marks as a view sees them. */
  public static EvenRow fit(PlaneView view, PlaneEvidence.Division marks) {
    return fit(places(view, marks), marks.index());
  }

  /** Where the marks lie on the plane as a view sees them. */
  static PlanePoint[] places(PlaneView view, PlaneEvidence.Division marks) {
    PlanePoint[] p = new PlanePoint[marks.index().length];
    for (int i = 0; i < p.length; i++) {
      p[i] = view.toPlane(marks.at().get(i));
    }
    return p;
  }

  /** Fits the row to places on the plane. */
  static EvenRow fit(PlanePoint[] p, double[] index) {
    int n = p.length;
    double mk = 0;
    double mx = 0;
    double my = 0;
    for (int i = 0; i < n; i++) {
      mk += index[i] / n;
      mx += p[i].x() / n;
      my += p[i].y() / n;
    }
    double skk = 0;
    double skx = 0;
    double sky = 0;
    for (int i = 0; i < n; i++) {
      double k = index[i] - mk;
      skk += k * k;
      skx += k * (p[i].x() - mx);
      sky += k * (p[i].y() - my);
    }
    return new EvenRow(mk, new PlanePoint(mx, my), skx / skk, sky / skk);
  }

  /** Where the row has a mark. */
  PlanePoint at(double index) {
    double k = index - middleIndex;
    return new PlanePoint(middle.x() + k * stepX, middle.y() + k * stepY);
  }

  /** Plane units from one mark to the next. */
  public double step() {
    return Math.hypot(stepX, stepY);
  }
}
