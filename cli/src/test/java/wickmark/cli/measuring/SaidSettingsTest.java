package wickmark.cli.measuring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import wickmark.imaging.photo.PhotoPoint;

class SaidSettingsTest {
  @Test
  void nothingSaidIsNoSetting() {
    assertThat(SaidSettings.of(Said.nothing())).isEmpty();
    assertThat(SaidSettings.from(Map.of())).isEqualTo(Said.nothing());
  }

  @Test
  void everythingSaidComesBack() {
    Said said =
        new Said(
            new SaidLanes(
                List.of("A", "B"),
                List.of("B"),
                OptionalInt.of(2),
                Map.of("A", new PhotoPoint(12.5, 30))),
            new SaidPlaces(
                Optional.of(BottomEnd.LEFT),
                OptionText.corners("1,2,3,4,5,6,7,8.5"),
                Optional.of(OptionText.line("1,2,3,4")),
                Optional.of(OptionText.line("5,6,7,8")),
                List.of(OptionText.line("9,9,10,10"))),
            Optional.of(OptionText.span("0,0,100,0=25.4")));

    assertThat(SaidSettings.from(SaidSettings.of(said))).isEqualTo(said);
  }

  @Test
  void eachScaleComesBack() {
    SaidScale size = new SaidScale.StripSize(OptionalDouble.of(60), OptionalDouble.empty());
    Said bySize = new Said(Said.nothing().lanes(), Said.nothing().places(), Optional.of(size));
    Said byDots =
        new Said(
            Said.nothing().lanes(),
            Said.nothing().places(),
            Optional.of(new SaidScale.DotsPerInch(300)));

    assertThat(SaidSettings.from(SaidSettings.of(bySize))).isEqualTo(bySize);
    assertThat(SaidSettings.from(SaidSettings.of(byDots))).isEqualTo(byDots);
  }

  @Test
  void aSettingOfTheWrongKindIsNamed() {
    assertThatThrownBy(() -> SaidSettings.from(Map.of("baseline", "high up")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("baseline");
  }
}
