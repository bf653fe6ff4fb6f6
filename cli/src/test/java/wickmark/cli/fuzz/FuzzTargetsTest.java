package wickmark.cli.fuzz;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import wickmark.cli.CommandLineFuzz;
import wickmark.cli.corrections.CorrectionsFuzz;
import wickmark.cli.hand.HandReadingsFuzz;
import wickmark.cli.photo.FuzzSeeds;
import wickmark.cli.photo.PictureFuzz;
import wickmark.cli.record.RecordFuzz;

/** What the guided search calls holds on what it begins with, and on a little chance. */
@Timeout(60)
class FuzzTargetsTest {
  private interface Target {
    void call(byte[] data) throws Exception;
  }

  private static void byChance(Target target, byte[] whole, int times) throws Exception {
    target.call(whole);
    target.call(new byte[0]);
    Random random = new Random(5);
    for (int i = 0; i < times; i++) {
      target.call(new Mutation(random).of(whole, whole));
    }
  }

  @Test
  void pictures() throws Exception {
    for (byte[] file : FuzzSeeds.ofNothing().values()) {
      byChance(PictureFuzz::fuzzerTestOneInput, file, 5);
    }
  }

  @Test
  void handReadings() throws Exception {
    byChance(HandReadingsFuzz::fuzzerTestOneInput, Seeds.readings(), 200);
  }

  @Test
  void records() throws Exception {
    byChance(RecordFuzz::fuzzerTestOneInput, Seeds.record(), 200);
  }

  @Test
  void corrections() throws Exception {
    byChance(CorrectionsFuzz::fuzzerTestOneInput, Seeds.corrections(), 200);
  }

  @Test
  void options() throws Exception {
    byChance(CommandLineFuzz::fuzzerTestOneInput, Seeds.options(), 200);
  }
}
