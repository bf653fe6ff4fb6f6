package wickmark.testdata.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SheetSurfaceTest {

  private static double lengthAlong(SheetSurface sheet, double u, double height) {
    double[] a = new double[3];
    double[] b = new double[3];
    double length = 0;
    for (double v = 0; v < height - 1e-9; v += 0.5) {
      sheet.at(u, v, a);
      sheet.at(u, v + 0.5, b);
      double square =
          (b[0] - a[0]) * (b[0] - a[0])
              + (b[1] - a[1]) * (b[1] - a[1])
              + (b[2] - a[2]) * (b[2] - a[2]);
      length += Math.sqrt(square);
    }
    return length;
  }

  @Test
  void anArchedSheetKeepsItsLength() {
    SheetSurface sheet = new SheetSurface(60, 120, List.of(new Bend(Bend.Kind.ARCH, 8, 1)));

    assertThat(lengthAlong(sheet, 30, 120)).isCloseTo(120, within(0.005));
  }

  @Test
  void anArchedSheetIsHighestInItsMiddle() {
    SheetSurface sheet = new SheetSurface(60, 120, List.of(new Bend(Bend.Kind.ARCH, 8, 1)));
    double[] xyz = new double[3];

    sheet.at(30, 60, xyz);

    assertThat(xyz[2]).isCloseTo(8.15, within(0.01));
  }

  @Test
  void aCockledSheetKeepsTheLengthOfEveryColumn() {
    SheetSurface sheet = new SheetSurface(60, 120, List.of(new Bend(Bend.Kind.COCKLE, 2, 5)));

    assertThat(lengthAlong(sheet, 10, 120)).isCloseTo(120, within(0.08));
    assertThat(lengthAlong(sheet, 50, 120)).isCloseTo(120, within(0.08));
  }

  @Test
  void aFlatSheetLiesOnTheDesk() {
    SheetSurface sheet = new SheetSurface(60, 120, List.of());
    double[] xyz = new double[3];

    sheet.at(10, 100, xyz);

    assertThat(xyz[0]).isEqualTo(-20);
    assertThat(xyz[1]).isEqualTo(40);
    assertThat(xyz[2]).isLessThan(0.3);
  }
}
