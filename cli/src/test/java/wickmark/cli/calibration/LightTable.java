package wickmark.cli.calibration;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import wickmark.cli.card.CardPictures;
import wickmark.core.card.CardSheet;
import wickmark.core.colour.ColourDifference;
import wickmark.core.colour.LabColour;
import wickmark.core.colour.LinearRgb;
import wickmark.core.record.RunRecord;
import wickmark.testdata.colour.ColourTemperature;
import wickmark.testdata.scene.LightPlan;
import wickmark.testdata.scene.PhotoPlan;
import wickmark.testdata.scene.Placement;
import wickmark.testdata.scene.SensorPlan;
import wickmark.testdata.scene.StripItem;
import wickmark.testdata.strip.Paper;

/**
 * Measures one strip on several papers, on the drawn card, in lights of several colours, by a
 * camera that balances none of them, and prints how much colours change: of spots with the strip's
 * paper as the white and with the card's, and of the paper.
 */
public final class LightTable {
  private static final double[] KELVIN = {6500, 2700, 4000, 5000, 7500};

  private LightTable() {}

  /** Prints the table. */
  public static void main(String[] arguments) throws IOException {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    Map<String, Paper> papers = new LinkedHashMap<>();
    papers.put("filter paper", Paper.FILTER);
    papers.put("cream", Paper.CREAM);
    papers.put("coffee filter", Paper.COFFEE_FILTER);
    List<LabColour> onFilter = new ArrayList<>();
    List<LabColour> onFilterByCard = new ArrayList<>();
    out.println(
        "| paper | called | a*, b* drawn | furthest from it | spots, paper as white: over lights |"
            + " to filter paper | card as white: over lights | to filter paper |");
    out.println("| --- | --- | --- | ---: | ---: | ---: | ---: | ---: |");
    for (Map.Entry<String, Paper> paper : papers.entrySet()) {
      wickmark.testdata.colour.LinearRgb drawn = paper.getValue().white().times(1 / 0.86);
      LabColour truth = LabColour.of(new LinearRgb(drawn.red(), drawn.green(), drawn.blue()));
      List<LabColour> first = new ArrayList<>();
      List<LabColour> firstByCard = new ArrayList<>();
      String called = "";
      double off = 0;
      double overLights = 0;
      double overLightsByCard = 0;
      for (double kelvin : KELVIN) {
        RunRecord record = measured(paper.getValue(), kelvin);
        RunRecord.Card card = Objects.requireNonNull(record.card());
        called = called.contains(card.paperColour()) ? called : called + " " + card.paperColour();
        off =
            Math.max(
                off,
                Math.hypot(card.paperLab().get(1) - truth.a(), card.paperLab().get(2) - truth.b()));
        List<LabColour> spots = new ArrayList<>();
        record.lanes().forEach(l -> l.spots().forEach(s -> spots.add(lab(s.lab()))));
        LinearRgb tint = lab(card.paperLab()).toLinearRgb();
        List<LabColour> byCard =
            spots.stream().map(s -> LabColour.of(s.toLinearRgb(tint))).toList();
        if (first.isEmpty()) {
          first.addAll(spots);
          firstByCard.addAll(byCard);
        }
        overLights = Math.max(overLights, furthest(first, spots));
        overLightsByCard = Math.max(overLightsByCard, furthest(firstByCard, byCard));
      }
      if (onFilter.isEmpty()) {
        onFilter.addAll(first);
        onFilterByCard.addAll(firstByCard);
      }
      out.printf(
          Locale.ROOT,
          "| %s | %s | %.1f, %.1f | %.1f | %.1f | %.1f | %.1f | %.1f |%n",
          paper.getKey(),
          called.strip(),
          truth.a(),
          truth.b(),
          off,
          overLights,
          furthest(onFilter, first),
          overLightsByCard,
          furthest(onFilterByCard, firstByCard));
    }
  }

  private static LabColour lab(List<Double> lab) {
    return new LabColour(lab.get(0), lab.get(1), lab.get(2));
  }

  private static double furthest(List<LabColour> some, List<LabColour> others) {
    double furthest = some.size() == others.size() ? 0 : Double.NaN;
    for (int i = 0; i < Math.min(some.size(), others.size()); i++) {
      furthest = Math.max(furthest, ColourDifference.between(some.get(i), others.get(i)).value());
    }
    return furthest;
  }

  private static RunRecord measured(Paper paper, double kelvin) throws IOException {
    wickmark.testdata.colour.LinearRgb light = ColourTemperature.cast(kelvin, 1);
    double strongest = Math.max(light.red(), Math.max(light.green(), light.blue()));
    PhotoPlan plan =
        CardPictures.plan(
                CardPictures.print(CardSheet.A5, 1),
                CardPictures.camera(6, 240),
                5,
                StripItem.of(CardPictures.strip(5, paper), new Placement(2, 4, 2)))
            .lit(LightPlan.even().withColour(light))
            .with(SensorPlan.good().withExposure(0.85 / strongest));
    return CardPictures.measured(plan, OptionalDouble.of(100)).record();
  }
}
