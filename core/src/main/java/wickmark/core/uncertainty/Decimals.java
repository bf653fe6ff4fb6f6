package wickmark.core.uncertainty;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The one rounding rule: half-up on the decimal number that the value shows.
 *
 * <p>Java's formatters disagree with each other on ties and on values that binary cannot hold
 * (0.565 prints as 0.57 or 0.56), so nothing else in this program rounds a number for people.
 */
public final class Decimals {
  private static final int MOST_DECIMALS = 6;

  private Decimals() {}

  /** Returns {@code value} with a fixed number of decimals and a decimal point. */
  public static String text(double value, int decimals) {
    return text(BigDecimal.valueOf(value), decimals);
  }

  /** Returns {@code value} with a fixed number of decimals and a decimal point. */
  public static String text(BigDecimal value, int decimals) {
    BigDecimal rounded = value.setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }

  /** Returns {@code value} rounded to a number of decimals. */
  public static double rounded(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
  }

  /**
   * Returns the exact quotient of two decimal numbers, rounded half-up once.
   *
   * @throws ArithmeticException if {@code divisor} is 0
   */
  public static BigDecimal quotient(BigDecimal dividend, BigDecimal divisor, int decimals) {
    return dividend.divide(divisor, decimals, RoundingMode.HALF_UP);
  }

  /**
   * Returns how many decimals a value with this uncertainty is given with: enough for one
   * significant digit of the uncertainty, or two where the first is 1 or 2. At least 0, at most 6.
   */
  public static int forUncertainty(double uncertainty) {
    if (!(uncertainty > 0)) {
      return MOST_DECIMALS;
    }
    BigDecimal two =
        BigDecimal.valueOf(uncertainty).round(new MathContext(2, RoundingMode.HALF_UP));
    int firstDigit = Character.digit(two.unscaledValue().toString().charAt(0), 10);
    int digits = firstDigit <= 2 ? 2 : 1;
    int decimals = two.scale() - two.precision() + digits;
    return Math.max(0, Math.min(MOST_DECIMALS, decimals));
  }
}
