package wickmark.cli.calibration;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/** The scores of some strips, added up. */
final class ScoreSum {
  private final List<StripScore> scores;

  ScoreSum(List<StripScore> scores) {
    this.scores = List.copyOf(scores);
  }

  List<Object> outcomes() {
    return List.of(
        scores.size(),
        count(StripScore::isAnswer),
        count(s -> s.isRefused() && s.truth().toRefuse()),
        count(s -> s.isRefused() && !s.truth().toRefuse()),
        count(s -> s.isMeasured() && s.truth().toRefuse()),
        count(s -> !s.isMeasured() && !s.isRefused()),
        count(StripScore::isFlawless),
        count(s -> s.isFlawless() && s.truth().hasScale() && !s.warnings().isEmpty()),
        count(s -> s.isFlawless() && s.isDoubted()),
        count(StripScore::isSilentlyWrong));
  }

  List<Object> lanesAndSpots() {
    Share spots = sum(s -> s.spots);
    Share found = sum(s -> s.foundSpots);
    return List.of(
        count(s -> s.isAnswer() && s.hasLaneCount()) + "/" + count(StripScore::isAnswer),
        sum(s -> s.lanes).percent(),
        spots.fraction(),
        spots.part(),
        found.wrong(),
        found.part(),
        sum(s -> s.faint).fraction(),
        sum(s -> s.colours).percent(),
        sum(s -> s.explained).percent(),
        sum(s -> s.unexplained).percent());
  }

  List<Object> errors() {
    Errors distance = errors(s -> s.distanceMm);
    return List.of(
        distance.trio(2),
        distance.bias(),
        errors(s -> s.rf).trio(4),
        errors(s -> s.frontMm).trio(2),
        errors(s -> s.scalePercent).trio(2),
        errors(s -> s.cornerPx).trio(1),
        errors(s -> s.cornerMm).trio(2));
  }

  List<Object> coverage() {
    Share distance = errors(s -> s.distanceMm).covered();
    Share rf = errors(s -> s.rf).covered();
    Share front = errors(s -> s.frontMm).covered();
    Share scale = errors(s -> s.scalePercent).covered();
    return List.of(
        distance.percent(),
        distance.all(),
        rf.percent(),
        rf.all(),
        front.percent(),
        front.all(),
        scale.percent(),
        scale.all());
  }

  private long count(Predicate<StripScore> which) {
    return scores.stream().filter(which).count();
  }

  private Share sum(Function<StripScore, Share> what) {
    Share sum = new Share();
    scores.forEach(score -> sum.add(what.apply(score)));
    return sum;
  }

  private Errors errors(Function<StripScore, Errors> what) {
    Errors all = new Errors();
    scores.forEach(score -> all.add(what.apply(score)));
    return all;
  }
}
