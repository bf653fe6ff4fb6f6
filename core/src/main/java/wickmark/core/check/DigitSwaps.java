package wickmark.core.check;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/** The numbers that a written number turns into if two neighbouring digits are exchanged. */
final class DigitSwaps {
  private DigitSwaps() {}

  static List<BigDecimal> of(BigDecimal asWritten) {
    BigDecimal written = asWritten.scale() > 0 ? asWritten.stripTrailingZeros() : asWritten;
    String digits = written.unscaledValue().abs().toString();
    List<BigDecimal> swaps = new ArrayList<>();
    for (int i = 0; i + 1 < digits.length(); i++) {
      char left = digits.charAt(i);
      char right = digits.charAt(i + 1);
      if (left != right) {
        String swapped = digits.substring(0, i) + right + left + digits.substring(i + 2);
        swaps.add(new BigDecimal(new BigInteger(swapped), written.scale()));
      }
    }
    return swaps;
  }
}
