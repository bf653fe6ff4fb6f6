package wickmark.imaging.straight;

import java.util.List;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.raster.Raster;

/**
 * The paper's edge as a closed curve in the photo.
 *
 * @param outline points around the sheet
 * @param holes parts of it that are not to be looked at, points around each
 */
public record PaperShape(List<PhotoPoint> outline, List<List<PhotoPoint>> holes) {
  public PaperShape {
    outline = List.copyOf(outline);
    holes = holes.stream().map(List::copyOf).toList();
  }

  /** 1 for cells whose centre lies on the paper, 0 for the others and those in holes. */
  Raster mask(StripFrame frame) {
    Raster mask = filled(outline, frame);
    for (List<PhotoPoint> hole : holes) {
      Raster inside = filled(hole, frame);
      for (int i = 0; i < mask.cells().length; i++) {
        mask.cells()[i] = inside.cells()[i] > 0 ? 0 : mask.cells()[i];
      }
    }
    return mask;
  }

  /** 1 for cells whose centre lies within a closed curve (even-odd rule). */
  private static Raster filled(List<PhotoPoint> outline, StripFrame frame) {
    int n = outline.size();
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      double[] p = frame.fromPhoto(outline.get(i));
      x[i] = p[0];
      y[i] = p[1];
    }
    Raster mask = new Raster(frame.width(), frame.height());
    double[] crossings = new double[n];
    for (int row = 0; row < frame.height(); row++) {
      double level = row + 0.5;
      int count = 0;
      for (int i = 0; i < n; i++) {
        int j = (i + 1) % n;
        if ((y[i] <= level) != (y[j] <= level)) {
          crossings[count++] = x[i] + (level - y[i]) / (y[j] - y[i]) * (x[j] - x[i]);
        }
      }
      java.util.Arrays.sort(crossings, 0, count);
      for (int c = 0; c + 1 < count; c += 2) {
        int from = (int) Math.max(0, Math.ceil(crossings[c] - 0.5));
        int to = (int) Math.min(frame.width() - 1.0, Math.floor(crossings[c + 1] - 0.5));
        for (int column = from; column <= to; column++) {
          mask.set(column, row, 1);
        }
      }
    }
    return mask;
  }

  /** Whether a place of the photo lies on the paper (even-odd rule). */
  public boolean contains(PhotoPoint place) {
    boolean in = false;
    int n = outline.size();
    for (int i = 0, j = n - 1; i < n; j = i++) {
      PhotoPoint a = outline.get(i);
      PhotoPoint b = outline.get(j);
      if ((a.y() > place.y()) != (b.y() > place.y())
          && place.x() < (b.x() - a.x()) * (place.y() - a.y()) / (b.y() - a.y()) + a.x()) {
        in = !in;
      }
    }
    return in;
  }
}
