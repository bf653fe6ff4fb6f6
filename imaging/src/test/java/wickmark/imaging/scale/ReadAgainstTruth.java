package wickmark.imaging.scale;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;

/** Compares an edge as read with the ruler as painted, in the ruler's own millimetres. */
record ReadAgainstTruth(double worstMm, double lineSpreadMm, double lineMm) {

  static ReadAgainstTruth of(RulerEdge edge, PaintedRuler truth) {
    double[][] mm =
        edge.marks().stream().map(mark -> truth.millimetres(mark.at())).toArray(double[][]::new);
    double way = mm[mm.length - 1][0] > mm[0][0] ? 1 : -1;
    double[] off = new double[mm.length];
    for (int i = 0; i < off.length; i++) {
      off[i] = way * mm[i][0] - edge.marks().get(i).index() * edge.millimetresPerMark();
    }
    double zero = RobustPolynomial.median(off.clone());
    double worst = Arrays.stream(off).map(o -> Math.abs(o - zero)).max().orElse(0);
    double[] y = Arrays.stream(mm).mapToDouble(m -> m[1]).sorted().toArray();
    return new ReadAgainstTruth(worst, y[y.length - 1] - y[0], y[y.length / 2]);
  }

  /** Every mark carries the right number, within a tenth of a millimetre of its place. */
  ReadAgainstTruth isRight() {
    assertThat(worstMm).as("worst mark, mm").isLessThan(0.1);
    assertThat(lineSpreadMm).as("spread of the marks' line, mm").isLessThan(0.6);
    return this;
  }
}
