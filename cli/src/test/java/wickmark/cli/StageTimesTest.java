package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import wickmark.imaging.ReadingStage;

class StageTimesTest {
  private final AtomicLong now = new AtomicLong();

  private StageTimes times() {
    return new StageTimes(now::get);
  }

  private void pass(long milliseconds) {
    now.addAndGet(milliseconds * 1_000_000);
  }

  private StageTimes aPicture(long spots) {
    StageTimes times = times();
    times.enters(StageTimes.DECODE);
    pass(60);
    times.enters(ReadingStage.SPOTS);
    pass(spots);
    times.ends();
    pass(1000);
    return times;
  }

  @Test
  void aStageLastsUntilTheNextBegins() {
    assertThat(aPicture(20).lines())
        .contains(
            "decode              60.0   75 %",
            "spots               20.0   25 %",
            "write                0.0    0 %",
            "all                 80.0  100 %");
  }

  @Test
  void aStageThatComesTwiceIsAddedUp() {
    StageTimes times = times();
    times.enters(ReadingStage.CARD);
    pass(10);
    times.enters(ReadingStage.RULER);
    pass(70);
    times.enters(ReadingStage.CARD);
    pass(20);
    times.ends();

    assertThat(times.lines())
        .contains("card                30.0   30 %", "ruler               70.0   70 %");
  }

  @Test
  void manyPicturesGiveTheirMean() {
    StageTimes all = times();
    all.add(aPicture(20));
    all.add(aPicture(60));

    assertThat(all.lines())
        .contains("decode              60.0   60 %", "spots               40.0   40 %");
  }

  @Test
  void withoutAPictureAllIsNothing() {
    assertThat(times().lines()).contains("all                  0.0  100 %");
  }
}
