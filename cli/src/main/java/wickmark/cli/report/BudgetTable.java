package wickmark.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wickmark.cli.measuring.RequestSettings;
import wickmark.cli.table.ResultText;
import wickmark.core.advice.Circumstances;
import wickmark.core.advice.UncertaintyAdvice;
import wickmark.core.chromatogram.Chromatogram;
import wickmark.core.chromatogram.StripEvidence;
import wickmark.core.record.RunRecord;
import wickmark.core.uncertainty.Decimals;

/**
 * Where the uncertainty of each spot's Rf comes from: a row a spot, a column a source.
 *
 * @param sources in the order in which the record names them first
 * @param advice what has most of it, and what a person can do
 */
record BudgetTable(List<String> sources, List<Row> rows, List<String> advice) {
  /** Four decimals show a ten-thousandth, the last place that an Rf carries here. */
  private static final int RF_DECIMALS = 4;

  /** One spot; the contributions are in the order of the sources. */
  record Row(String spot, String rf, List<Contribution> contributions) {}

  /**
   * What one source adds.
   *
   * @param rf standard uncertainty of Rf from this source alone, or a dash
   * @param share of the variance
   */
  record Contribution(String rf, String share) {}

  static BudgetTable of(RunRecord record, StripEvidence evidence) {
    Set<String> sources = new LinkedHashSet<>();
    for (RunRecord.Lane lane : record.lanes()) {
      lane.spots().forEach(spot -> spot.budget().forEach(line -> sources.add(line.source())));
    }
    List<Row> rows = new ArrayList<>();
    for (RunRecord.Lane lane : record.lanes()) {
      for (RunRecord.Spot spot : lane.spots()) {
        rows.add(
            new Row(
                lane.name() + ", spot " + spot.number(),
                ResultText.rf(spot),
                sources.stream().map(source -> contribution(spot, source)).toList()));
      }
    }
    return new BudgetTable(List.copyOf(sources), rows, advice(record, evidence));
  }

  /** The record has no budgets of distances; they follow from the evidence as its Rf did. */
  private static List<String> advice(RunRecord record, StripEvidence evidence) {
    Chromatogram strip =
        Chromatogram.of(evidence, RequestSettings.from(record.settings()).centre());
    return UncertaintyAdvice.of(strip, Circumstances.of(record)).stream()
        .map(UncertaintyAdvice::sentence)
        .toList();
  }

  private static Contribution contribution(RunRecord.Spot spot, String source) {
    return spot.budget().stream()
        .filter(line -> line.source().equals(source))
        .findFirst()
        .map(
            line ->
                new Contribution(
                    rf(line.rfUncertainty()), Decimals.text(100 * line.share(), 0) + " %"))
        .orElse(new Contribution("–", ""));
  }

  private static String rf(double uncertainty) {
    String text = Decimals.text(uncertainty, RF_DECIMALS);
    return uncertainty > 0 && Double.parseDouble(text) == 0 ? "< 0.0001" : text;
  }
}
