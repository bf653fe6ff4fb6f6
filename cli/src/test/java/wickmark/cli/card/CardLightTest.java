package wickmark.cli.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import wickmark.core.card.CardSheet;
import wickmark.core.colour.ColourDifference;
import wickmark.core.colour.LabColour;
import wickmark.core.record.RunRecord;
import wickmark.testdata.colour.ColourTemperature;
import wickmark.testdata.scene.LightPlan;
import wickmark.testdata.scene.PhotoPlan;
import wickmark.testdata.scene.Placement;
import wickmark.testdata.scene.SensorPlan;
import wickmark.testdata.scene.StripItem;
import wickmark.testdata.strip.Paper;

/**
 * One strip of cream paper on the card in the light of a lamp (2700 K) and of a blue sky (7500 K),
 * by a camera that balances neither. The truth is what was drawn.
 */
class CardLightTest {
  private static RunRecord inLight(double kelvin, double exposure) throws IOException {
    PhotoPlan plan =
        CardPictures.plan(
                CardPictures.print(CardSheet.A5, 1),
                CardPictures.camera(6, 240),
                5,
                StripItem.of(CardPictures.strip(5, Paper.CREAM), new Placement(2, 4, 2)))
            .lit(LightPlan.even().withColour(ColourTemperature.cast(kelvin, 1)))
            .with(SensorPlan.good().withExposure(exposure));
    return CardPictures.measured(plan, OptionalDouble.of(100)).record();
  }

  private static LabColour lab(List<Double> lab) {
    return new LabColour(lab.get(0), lab.get(1), lab.get(2));
  }

  private static List<LabColour> spots(RunRecord record) {
    List<LabColour> spots = new ArrayList<>();
    record.lanes().forEach(lane -> lane.spots().forEach(spot -> spots.add(lab(spot.lab()))));
    return spots;
  }

  /** The drawn card's white sends back 86 % of all light; the drawn paper is Paper.CREAM. */
  @Test
  void lightAndPaperAreToldApartAndSpotsKeepTheirColour() throws IOException {
    RunRecord lamp = inLight(2700, 0.42);
    RunRecord sky = inLight(7500, 0.8);
    RunRecord.Card byLamp = Objects.requireNonNull(lamp.card());
    RunRecord.Card bySky = Objects.requireNonNull(sky.card());

    // The light: yellow, and bluish.
    wickmark.testdata.colour.LinearRgb drawn = ColourTemperature.cast(2700, 1);
    double blueOverRed = byLamp.whiteRgb().get(2) / byLamp.whiteRgb().get(0);
    assertThat(blueOverRed).isCloseTo(drawn.blue() / drawn.red(), within(0.03));
    assertThat(bySky.whiteRgb().get(2)).isGreaterThan(bySky.whiteRgb().get(0));
    assertThat(byLamp.greyChroma()).isLessThan(4);

    // Of the blue light hardly any is left, and that is said.
    assertThat(byLamp.whiteRgb().get(2)).isLessThan(0.1);
    assertThat(lamp.warnings()).extracting(RunRecord.Warning::code).contains("coloured-light");
    assertThat(sky.warnings()).isEmpty();

    // The paper: the same in both, and the one that was drawn.
    wickmark.testdata.colour.LinearRgb cream = Paper.CREAM.white().times(1 / 0.86);
    LabColour truth =
        LabColour.of(new wickmark.core.colour.LinearRgb(cream.red(), cream.green(), cream.blue()));
    for (RunRecord.Card card : List.of(byLamp, bySky)) {
      assertThat(card.paperColour()).isEqualTo("cream");
      assertThat(card.paperLab().get(1)).isCloseTo(truth.a(), within(1.5));
      assertThat(card.paperLab().get(2)).isCloseTo(truth.b(), within(1.5));
    }

    // The spots: no further apart than a just noticeable difference or two.
    List<LabColour> inLamp = spots(lamp);
    List<LabColour> inSky = spots(sky);
    assertThat(inLamp).hasSize(4).hasSameSizeAs(inSky);
    for (int i = 0; i < inLamp.size(); i++) {
      assertThat(ColourDifference.between(inLamp.get(i), inSky.get(i)).value()).isLessThan(2.5);
    }
  }
}
