package wickmark.cli.pool;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import wickmark.cli.record.RecordJson;
import wickmark.core.pool.PooledStrips;
import wickmark.core.record.RunRecord;
import wickmark.core.statistics.Interval;
import wickmark.core.uncertainty.Decimals;

/** Pooled records as JSON. */
public final class PoolJson {
  private static final int DECIMALS = 5;

  private PoolJson() {}

  /** Returns the text. */
  public static String text(List<RunRecord> records, PooledStrips pooled) {
    ObjectNode all = JsonNodeFactory.instance.objectNode();
    ArrayNode pictures = all.putArray("pictures");
    records.forEach(record -> pictures.add(record.photo().file()));
    all.put("repeatabilityRf", rounded(pooled.repeatability()));
    all.put(
        "outlierTest",
        "Grubbs' test, two-sided, 5 % (ISO 5725-2), and further off than the value is uncertain"
            + " (k = 2)");
    ArrayNode spots = all.putArray("spots");
    for (PooledStrips.PooledSpot spot : pooled.spots()) {
      put(spots.addObject(), spot);
    }
    return RecordJson.text(all);
  }

  private static void put(ObjectNode node, PooledStrips.PooledSpot spot) {
    node.put("lane", spot.lane())
        .put("spot", spot.number())
        .put("colour", spot.colour())
        .put("meanRf", rounded(Optional.of(spot.mean().mean())))
        .put("standardDeviationRf", rounded(spot.mean().standardDeviation()))
        .put("meanLowRf", rounded(spot.mean().confidence().map(Interval::low)))
        .put("meanHighRf", rounded(spot.mean().confidence().map(Interval::high)))
        .put("missingInLanes", spot.missingIn());
    spot.outlier()
        .ifPresentOrElse(place -> node.put("outlier", place), () -> node.putNull("outlier"));
    ArrayNode values = node.putArray("values");
    for (PooledStrips.Value value : spot.values()) {
      values
          .addObject()
          .put("picture", value.record())
          .put("spot", value.spot())
          .put("rf", rounded(Optional.of(value.rf())))
          .put("rfUncertainty", rounded(Optional.of(value.rfUncertainty())));
    }
  }

  private static @Nullable Double rounded(Optional<Double> value) {
    return value.map(v -> Decimals.rounded(v, DECIMALS)).orElse(null);
  }
}
