package wickmark.imaging.scale;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DivisionFitTest {

  private static List<DivisionFit> fits(IntToDoubleFunction length) {
    int[] indices = IntStream.range(0, 60).toArray();
    double[] lengths = IntStream.of(indices).mapToDouble(length).toArray();
    return DivisionFit.all(new TickLengths(indices, lengths), 1);
  }

  @Test
  void everyFifthAndTenthLongerIsMillimetres() {
    assertThat(fits(k -> k % 10 == 3 ? 4 : k % 10 == 8 ? 3 : 1.5))
        .first()
        .matches(fit -> fit.division() == Division.MILLIMETRES && fit.phase() == 3);
  }

  @Test
  void halvingsToASixteenthRefuteTheEighth() {
    List<DivisionFit> fits =
        fits(k -> k % 16 == 0 ? 5 : k % 8 == 0 ? 4 : k % 4 == 0 ? 3 : k % 2 == 0 ? 2 : 1);

    assertThat(fits)
        .filteredOn(fit -> fit.division() == Division.EIGHTHS)
        .allMatch(coarse -> fits.stream().anyMatch(fine -> fine.refutes(coarse)));
    assertThat(fits).anyMatch(fit -> fit.division() == Division.SIXTEENTHS);
  }

  @Test
  void marksOfOneLengthAreNoDivision() {
    assertThat(fits(k -> 1.5)).isEmpty();
  }
}
