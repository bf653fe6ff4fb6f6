package wickmark.core.match;

import wickmark.core.colour.DyeAbsorbance;

/**
 * The mixture of two dyes that comes nearest to an absorbance, by least squares over the channels.
 *
 * @param firstPart part of the first dye in the mixture's absorbance, 0 to 1
 * @param sum the mixture's absorbance
 */
record DyeMixture(double firstPart, double secondPart, DyeAbsorbance sum) {

  /** Returns the mixture of two dyes, neither of which is blank. */
  static DyeMixture of(DyeAbsorbance target, DyeAbsorbance first, DyeAbsorbance second) {
    double pp = dot(first, first);
    double qq = dot(second, second);
    double pq = dot(first, second);
    double determinant = pp * qq - pq * pq;
    double p = (dot(target, first) * qq - dot(target, second) * pq) / determinant;
    double q = (dot(target, second) * pp - dot(target, first) * pq) / determinant;
    if (!(determinant > 1e-9 * pp * qq) || p < 0 || q < 0) {
      boolean isFirst =
          dot(target, first) / StrictMath.sqrt(pp) > dot(target, second) / StrictMath.sqrt(qq);
      p = isFirst ? Math.max(0, dot(target, first) / pp) : 0;
      q = isFirst ? 0 : Math.max(0, dot(target, second) / qq);
    }
    double amountOfFirst = p * total(first);
    double amountOfSecond = q * total(second);
    double all = amountOfFirst + amountOfSecond;
    return new DyeMixture(
        all > 0 ? amountOfFirst / all : 0,
        all > 0 ? amountOfSecond / all : 0,
        new DyeAbsorbance(
            p * first.red() + q * second.red(),
            p * first.green() + q * second.green(),
            p * first.blue() + q * second.blue()));
  }

  private static double dot(DyeAbsorbance a, DyeAbsorbance b) {
    return a.red() * b.red() + a.green() * b.green() + a.blue() * b.blue();
  }

  private static double total(DyeAbsorbance dye) {
    return dye.red() + dye.green() + dye.blue();
  }
}
