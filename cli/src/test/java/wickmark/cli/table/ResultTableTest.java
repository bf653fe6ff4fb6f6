package wickmark.cli.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wickmark.cli.measuring.SampleStrip;

class ResultTableTest {
  @Test
  void printsWhatAPracticalSheetHas() {
    // Common practice: 54 mm over 75 mm gives 0.72.
    assertThat(ResultTable.lines("strip.jpg", SampleStrip.record()))
        .containsExactly(
            "strip.jpg: 3 lanes, 4 spots; scale from the ruler, 0.5000 mm a pixel",
            "lane  spot  colour    front mm       spot mm             Rf  remarks",
            "A        1  yellow  75.0 ± 0.3  54.00 ± 0.24  0.720 ± 0.004  tailing",
            "B        1  blue    75.0 ± 0.3  30.00 ± 0.24  0.400 ± 0.004  tailing",
            "X        1  yellow  75.0 ± 0.3  54.03 ± 0.24  0.720 ± 0.004  tailing",
            "X        2  blue    75.0 ± 0.3  30.05 ± 0.24  0.401 ± 0.004  tailing",
            "± is the expanded uncertainty, k = 2 (about 95 of 100 true values lie within).",
            "X is consistent with A and B.",
            "It is no proof.",
            "C is ruled out: its spot 1 has no counterpart.");
  }
}
