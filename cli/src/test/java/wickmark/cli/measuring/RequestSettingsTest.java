package wickmark.cli.measuring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wickmark.core.chromatogram.SpotCentre;
import wickmark.core.match.MatchSettings;
import wickmark.imaging.ReadingRequest;
import wickmark.imaging.ReadingRequest.Bottom;
import wickmark.imaging.ReadingRequest.SaidLines;
import wickmark.imaging.ReadingRequest.SaidScale;
import wickmark.imaging.ReadingRequest.SaidStrip;
import wickmark.imaging.photo.PhotoPoint;

class RequestSettingsTest {
  @Test
  void nothingSaidIsTheUsual() {
    MeasuringRequest usual = MeasuringRequest.of(ReadingRequest.nothing());

    assertThat(RequestSettings.of(usual))
        .containsOnlyKeys("spotCentre", "toleranceRf", "toleranceColour");
    assertThat(RequestSettings.from(Map.of())).isEqualTo(usual);
  }

  static Stream<SaidScale> scales() {
    return Stream.of(
        new SaidScale.Dpi(300),
        new SaidScale.StripWidth(60),
        new SaidScale.StripHeight(105.5),
        new SaidScale.StripSize(60, 105.5),
        new SaidScale.Print(97.5),
        OptionText.span("0,0,100,0=25.4"));
  }

  @ParameterizedTest
  @MethodSource("scales")
  void everythingSaidComesBack(SaidScale scale) {
    ReadingRequest reading =
        new ReadingRequest(
            List.of("A", "B"),
            Set.of("B"),
            OptionalInt.of(2),
            Optional.of(scale),
            new SaidStrip(
                OptionText.corners("1,2,3,4,5,6,7,8.5"),
                Optional.of(Bottom.LEFT),
                List.of(OptionText.area("9,9,10,10"))),
            new SaidLines(
                Optional.of(OptionText.segment("1,2,3,4")),
                Optional.of(OptionText.segment("5,6,7,8")),
                Map.of("A", new PhotoPoint(12.5, 30), "B", new PhotoPoint(40, 30))));

    MeasuringRequest said =
        new MeasuringRequest(reading, SpotCentre.DENSEST, MatchSettings.defaults())
            .withTolerances(0.05, 6);
    assertThat(RequestSettings.from(RequestSettings.of(said))).isEqualTo(said);
  }

  @Test
  void theOrderIsFixed() {
    ReadingRequest said =
        new ReadingRequest(
            List.of(),
            Set.of("e", "d", "c", "b", "a"),
            OptionalInt.empty(),
            Optional.empty(),
            ReadingRequest.nothing().strip(),
            ReadingRequest.nothing().lines());

    assertThat(RequestSettings.of(MeasuringRequest.of(said)))
        .containsEntry("unknown", List.of("a", "b", "c", "d", "e"));
  }

  @Test
  void aSettingOfTheWrongKindIsNamed() {
    assertThatThrownBy(() -> RequestSettings.from(Map.of("baseline", "high up")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("baseline");
    assertThatThrownBy(() -> RequestSettings.from(Map.of("spotCentre", "heart")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("heart");
  }
}
