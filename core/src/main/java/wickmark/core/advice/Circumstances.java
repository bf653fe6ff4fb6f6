package wickmark.core.advice;

import java.util.List;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.core.record.RunRecord;

/**
 * How a strip was measured, as far as advice depends on it.
 *
 * @param scaleSource where the millimetres come from, in the record's words
 * @param frontKind how the front shows, in the record's words
 * @param baselineByHand whether a person said where the baseline is
 * @param spotsByHand whether a person set the centres of most spots
 * @param spotsFaint whether most spots are faint
 */
public record Circumstances(
    String scaleSource,
    String frontKind,
    boolean baselineByHand,
    boolean spotsByHand,
    boolean spotsFaint) {

  /** Returns the circumstances that a record tells. */
  public static Circumstances of(RunRecord record) {
    return new Circumstances(
        record.scale().source(),
        record.front().kind(),
        record.baseline().byHand(),
        isOfMost(record, SpotFlag.BY_HAND),
        isOfMost(record, SpotFlag.FAINT));
  }

  private static boolean isOfMost(RunRecord record, SpotFlag flag) {
    List<RunRecord.Spot> spots =
        record.lanes().stream().flatMap(lane -> lane.spots().stream()).toList();
    long flagged = spots.stream().filter(spot -> spot.flags().contains(flag.word())).count();
    return 2 * flagged > spots.size();
  }
}
