package wickmark.cli.check;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import wickmark.cli.record.RecordJson;
import wickmark.core.check.ClassReport;
import wickmark.core.check.HandCheckReport;
import wickmark.core.check.HandReading;
import wickmark.core.check.Mark;
import wickmark.core.check.ReaderReport;
import wickmark.core.check.ReadingProblem;
import wickmark.core.check.SlipFinding;
import wickmark.core.statistics.Interval;
import wickmark.core.statistics.SampleMean;
import wickmark.core.uncertainty.Decimals;

/** A check as JSON; lengths in millimetres. */
public final class CheckJson {
  private static final int DECIMALS = 4;

  private CheckJson() {}

  /** Returns the text. */
  public static String text(HandCheckReport report, List<ReadingProblem> problems) {
    ObjectNode all = JsonNodeFactory.instance.objectNode();
    all.put("allRight", report.isAllRight());
    ArrayNode readers = all.putArray("readers");
    report.readers().forEach(reader -> put(readers.addObject(), reader));
    put(all.putObject("together"), report.together());
    ArrayNode noted = all.putArray("problems");
    for (ReadingProblem problem : problems) {
      noted.addObject().put("place", problem.place()).put("message", problem.message());
    }
    return RecordJson.text(all);
  }

  private static void put(ObjectNode node, ReaderReport reader) {
    node.put("reader", reader.reader());
    node.put("meanDifferenceMm", rounded(reader.differences().map(SampleMean::mean)));
    node.put("spreadMm", rounded(reader.differences().flatMap(SampleMean::standardDeviation)));
    ArrayNode marks = node.putArray("values");
    for (Mark mark : reader.marks()) {
      marks
          .addObject()
          .put("lane", mark.row().lane())
          .put("spot", mark.row().spot())
          .put("quantity", mark.quantity().name().toLowerCase(Locale.ROOT))
          .put("hand", rounded(mark.hand()))
          .put("machine", rounded(mark.machine()))
          .put("difference", rounded(mark.difference()))
          .put("en", rounded(mark.en()))
          .put("agrees", mark.agrees())
          .put("place", mark.row().place());
    }
    ArrayNode slips = node.putArray("likelySlips");
    for (SlipFinding slip : reader.slips()) {
      ObjectNode one =
          slips.addObject().put("slip", slip.slip().code()).put("message", slip.message());
      ArrayNode places = one.putArray("places");
      slip.rows().stream().map(HandReading::place).forEach(places::add);
    }
  }

  private static void put(ObjectNode node, ClassReport together) {
    node.put("leftOut", together.leftOut());
    together
        .agreement()
        .ifPresent(
            agreement -> {
              ObjectNode one = node.putObject("agreement");
              one.put("count", agreement.count());
              one.put("meanDifferenceMm", rounded(agreement.meanDifference()));
              put(one.putArray("meanConfidenceMm"), agreement.meanConfidence());
              one.put("lowerLimitMm", rounded(agreement.lower().value()));
              put(one.putArray("lowerLimitConfidenceMm"), agreement.lower().confidence());
              one.put("upperLimitMm", rounded(agreement.upper().value()));
              put(one.putArray("upperLimitConfidenceMm"), agreement.upper().confidence());
            });
    together
        .line()
        .ifPresent(
            line -> {
              ObjectNode one = node.putObject("line");
              one.put("slope", rounded(line.slope()));
              put(one.putArray("slopeConfidence"), line.slopeConfidence());
              one.put("interceptMm", rounded(line.intercept()));
              put(one.putArray("interceptConfidenceMm"), line.interceptConfidence());
            });
    together
        .precision()
        .ifPresent(
            precision ->
                node.putObject("precision")
                    .put("repeatabilityMm", rounded(precision.repeatability()))
                    .put("reproducibilityMm", rounded(precision.reproducibility())));
    ArrayNode spots = node.putArray("spots");
    for (ClassReport.SpotSummary spot : together.spots()) {
      spots
          .addObject()
          .put("lane", spot.lane())
          .put("spot", spot.spot())
          .put("machineMm", rounded(spot.machine()))
          .put("readings", spot.distances().size())
          .put("robustMeanMm", rounded(spot.robustMean()))
          .put("robustDeviationMm", rounded(spot.robustDeviation()))
          .put("outlier", spot.outlier().map(HandReading::place).orElse(null));
    }
  }

  private static void put(ArrayNode node, Interval interval) {
    node.add(rounded(interval.low())).add(rounded(interval.high()));
  }

  private static Double rounded(double value) {
    return Decimals.rounded(value, DECIMALS);
  }

  private static @Nullable Double rounded(Optional<Double> value) {
    return value.map(CheckJson::rounded).orElse(null);
  }
}
