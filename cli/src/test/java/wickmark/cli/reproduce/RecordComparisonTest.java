package wickmark.cli.reproduce;

import static org.assertj.core.api.Assertions.assertThat;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import wickmark.cli.measuring.SampleStrip;
import wickmark.core.record.RunRecord;

class RecordComparisonTest {
  private static RunRecord withConfidences(@Nullable Double scale, @Nullable Double bottom) {
    RunRecord record = SampleStrip.record();
    RunRecord.Scale s = record.scale();
    RunRecord.Strip strip = record.strip();
    return new RunRecord(
        record.format(),
        record.tool(),
        record.photo(),
        record.settings(),
        new RunRecord.Scale(s.source(), s.millimetresPerPixel(), s.relativeUncertainty(), scale),
        record.card(),
        new RunRecord.Strip(
            strip.cornersPx(), strip.pictureToStrip(), strip.byHand(), strip.confidence(), bottom),
        record.baseline(),
        record.front(),
        record.lanes(),
        record.unknowns(),
        record.warnings());
  }

  @Test
  void aConfidenceThatIsNotWhatItWasIsADifference() {
    assertThat(RecordComparison.differences(withConfidences(0.9, 0.8), withConfidences(0.9, 0.7)))
        .containsExactly(new Difference("strip.orientationConfidence", "0.8", "0.7"));
  }

  @Test
  void aConfidenceThatAnEarlierVersionDidNotWriteIsNone() {
    RunRecord now = withConfidences(0.9, 0.8);

    assertThat(RecordComparison.differences(withConfidences(null, null), now)).isEmpty();
    assertThat(RecordComparison.differences(now, withConfidences(null, 0.8)))
        .extracting(Difference::field)
        .containsExactly("scale.confidence");
  }
}
