package wickmark.core.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CardLayoutTest {
  private static List<Box> boxes(CardLayout layout) {
    List<Box> boxes = new ArrayList<>(layout.fiducials().stream().map(Fiducial::box).toList());
    boxes.add(layout.place());
    boxes.add(layout.rules().beside().grown(-0.1));
    boxes.add(layout.rules().below().grown(-0.1));
    boxes.addAll(layout.patches().stream().map(p -> p.box().grown(-0.1)).toList());
    CardLayout.Bar bar = layout.bar();
    boxes.add(new Box(bar.x() - 4.5, bar.top(), bar.x() + 2.5, bar.bottom()));
    boxes.add(layout.upperWords().grown(-0.1));
    boxes.add(layout.lowerWords());
    return boxes;
  }

  private static boolean overlap(Box a, Box b) {
    return a.left() < b.right()
        && b.left() < a.right()
        && a.top() < b.bottom()
        && b.top() < a.bottom();
  }

  @ParameterizedTest
  @EnumSource
  void nothingLiesOnAnythingElse(CardSheet sheet) {
    List<Box> boxes = boxes(CardLayout.of(sheet));

    for (int i = 0; i < boxes.size(); i++) {
      for (int j = i + 1; j < boxes.size(); j++) {
        assertThat(overlap(boxes.get(i), boxes.get(j)))
            .as("%s on %s", boxes.get(i), boxes.get(j))
            .isFalse();
      }
    }
  }

  /** Office printers leave up to 6.4 mm white (common practice). */
  @ParameterizedTest
  @EnumSource
  void staysWhereAPrinterPrints(CardSheet sheet) {
    CardLayout layout = CardLayout.of(sheet);
    Box printable = layout.paper().grown(-6.4);

    assertThat(boxes(layout))
        .allSatisfy(
            box -> {
              assertThat(printable.contains(box.left(), box.top())).isTrue();
              assertThat(printable.contains(box.right(), box.bottom())).isTrue();
            });
  }

  @ParameterizedTest
  @EnumSource
  void hasAWhiteRingOfACellRoundEachSquare(CardSheet sheet) {
    CardLayout layout = CardLayout.of(sheet);

    for (Fiducial fiducial : layout.fiducials()) {
      Box quiet = fiducial.box().grown(0.99 * fiducial.cell());
      assertThat(boxes(layout).stream().filter(b -> !b.equals(fiducial.box())))
          .noneMatch(box -> overlap(quiet, box));
    }
  }

  /** The usual strip of a school, 86 by 130 mm, with room to spare. */
  @ParameterizedTest
  @EnumSource
  void hasRoomForAUsualStrip(CardSheet sheet) {
    Box place = CardLayout.of(sheet).place();

    assertThat(place.width()).isGreaterThan(86 + 10);
    assertThat(place.height()).isGreaterThan(130 + 10);
  }

  @ParameterizedTest
  @EnumSource
  void hasABarOfAHundredMillimetres(CardSheet sheet) {
    CardLayout.Bar bar = CardLayout.of(sheet).bar();

    assertThat(bar.bottom() - bar.top()).isEqualTo(100);
  }
}
