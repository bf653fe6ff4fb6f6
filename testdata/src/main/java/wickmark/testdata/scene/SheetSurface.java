package wickmark.testdata.scene;

import java.util.List;

/**
 * A bent sheet in space, as a grid over the paper's own millimetres. Lengths along the paper's
 * columns are kept (arc length), those along its rows in the middle row too: a ruler laid on the
 * flattened paper reads what the truth says.
 */
final class SheetSurface {
  private static final double STEP_MM = 0.5;
  private static final double MARGIN_MM = 6;

  private final double width;
  private final double height;
  private final boolean flat;
  private final int columns;
  private final int rows;
  private final float[] x;
  private final float[] y;
  private final float[] z;

  SheetSurface(double width, double height, List<Bend> bends) {
    this.width = width;
    this.height = height;
    this.flat = bends.isEmpty();
    this.columns = flat ? 0 : (int) Math.ceil((width + 2 * MARGIN_MM) / STEP_MM) + 1;
    this.rows = flat ? 0 : (int) Math.ceil((height + 2 * MARGIN_MM) / STEP_MM) + 1;
    this.x = new float[columns * rows];
    this.y = new float[columns * rows];
    this.z = new float[columns * rows];
    if (!flat) {
      raise(bends);
      for (int column = 0; column < columns; column++) {
        shorten(y, column, columns, rows, height);
      }
      for (int row = 0; row < rows; row++) {
        shorten(x, row * columns, 1, columns, width);
      }
    }
  }

  private void raise(List<Bend> bends) {
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        z[row * columns + column] =
            (float)
                Bend.heightAt(
                    bends, column * STEP_MM - MARGIN_MM, row * STEP_MM - MARGIN_MM, width, height);
      }
    }
  }

  /** Walks along one line of the grid: a step that also climbs gets less far over the desk. */
  private void shorten(float[] place, int first, int stride, int count, double length) {
    double walked = 0;
    double[] reached = new double[count];
    for (int i = 1; i < count; i++) {
      double climb = z[first + i * stride] - z[first + (i - 1) * stride];
      walked += Math.sqrt(Math.max(0, STEP_MM * STEP_MM - climb * climb));
      reached[i] = walked;
    }
    double middle = (length / 2 + MARGIN_MM) / STEP_MM;
    int low = (int) middle;
    double centre = reached[low] + (middle - low) * (reached[low + 1] - reached[low]);
    for (int i = 0; i < count; i++) {
      place[first + i * stride] = (float) (reached[i] - centre);
    }
  }

  /** Puts into {@code xyz} where a place on the paper is, relative to its middle. */
  void at(double u, double v, double[] xyz) {
    if (flat) {
      xyz[0] = u - width / 2;
      xyz[1] = v - height / 2;
      xyz[2] = 0.15;
      return;
    }
    double c = Math.max(0, Math.min(columns - 1.001, (u + MARGIN_MM) / STEP_MM));
    double r = Math.max(0, Math.min(rows - 1.001, (v + MARGIN_MM) / STEP_MM));
    int column = (int) c;
    int row = (int) r;
    // Beyond the grid the sheet goes on in the plane, so that every pixel has an answer.
    double beyondU = u - (c * STEP_MM - MARGIN_MM);
    double beyondV = v - (r * STEP_MM - MARGIN_MM);
    xyz[0] = mix(x, column, row, c - column, r - row) + beyondU;
    xyz[1] = mix(y, column, row, c - column, r - row) + beyondV;
    xyz[2] = mix(z, column, row, c - column, r - row);
  }

  private double mix(float[] of, int column, int row, double right, double up) {
    int i = row * columns + column;
    double low = of[i] + right * (of[i + 1] - of[i]);
    double high = of[i + columns] + right * (of[i + columns + 1] - of[i + columns]);
    return low + up * (high - low);
  }

  boolean isFlat() {
    return flat;
  }

  double width() {
    return width;
  }

  double height() {
    return height;
  }
}
