package wickmark.imaging.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;

/**
 * Paints a photo of a ruler on a desk from its true place, with a fixed seed. The ruler's own
 * millimetres: x along it from its zero, y from the graduated edge inwards.
 */
final class PaintedRuler {
  private static final int SUB = 4;
  private static final double WIDTH_MM = 30;

  int width = 1200;
  int height = 640;
  double pixelsPerMm = 9;
  private double cos = Math.cos(Math.toRadians(12));
  private double sin = Math.sin(Math.toRadians(12));
  double middleMm = 60;
  double lengthMm = 150;

  /** Share by which the scale changes over the picture's width, along and across it. */
  double perspectiveX = 0.0;

  double perspectiveY = 0.0;

  /** Radial displacement at the picture's corner, as a share of half the diagonal. */
  double distortion = 0.0;

  double blurPx = 0.7;
  double noise = 2;
  double ruler = 225;
  double desk = 90;
  double ink = 60;
  double tickWidthMm = 0.22;
  GraduationUnit near = GraduationUnit.MILLIMETRE;
  Optional<GraduationUnit> far = Optional.empty();
  boolean ruled = true;
  double shortMm = 3;
  double grain = 0;

  /** All marks of one length. */
  boolean plainTicks = false;

  /** Stretches of the ruler, in its millimetres, that something dark lies on. */
  final List<double[]> covered = new ArrayList<>();

  long seed = 1;

  void turnTo(double degrees) {
    cos = Math.cos(Math.toRadians(degrees));
    sin = Math.sin(Math.toRadians(degrees));
  }

  Photo paint() {
    double[] grey = new double[width * height];
    Random random = new Random(seed);
    double[] stripes = new double[4096];
    for (int i = 0; i < stripes.length; i++) {
      stripes[i] = random.nextGaussian();
    }
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double sum = 0;
        for (int s = 0; s < SUB * SUB; s++) {
          sum += shade(x + (s % SUB + 0.5) / SUB, y + (Math.floorDiv(s, SUB) + 0.5) / SUB, stripes);
        }
        grey[y * width + x] = sum / (SUB * SUB);
      }
    }
    double[] soft = blurred(blurred(grey, 1, width), width, 1);
    byte[] rgb = new byte[3 * width * height];
    for (int i = 0; i < soft.length; i++) {
      for (int c = 0; c < 3; c++) {
        double value = soft[i] + noise * random.nextGaussian();
        rgb[3 * i + c] = (byte) Math.round(Math.min(255, Math.max(0, value)));
      }
    }
    return new Photo(width, height, rgb, Optional.empty(), OptionalDouble.empty(), true);
  }

  /** Returns the place on the ruler, in its millimetres, of a place in the photo. */
  double[] millimetres(PhotoPoint p) {
    double dx = p.x() - width / 2.0;
    double dy = p.y() - height / 2.0;
    double r2 = (dx * dx + dy * dy) / (width * width / 4.0 + height * height / 4.0);
    double straight = 1 + distortion * r2;
    dx *= straight;
    dy *= straight;
    double w = 1 + perspectiveX * dx / width + perspectiveY * dy / height;
    double a = dx / w / pixelsPerMm;
    double b = dy / w / pixelsPerMm;
    return new double[] {middleMm + cos * a + sin * b, WIDTH_MM / 2 - sin * a + cos * b};
  }

  private double shade(double px, double py, double[] stripes) {
    double[] mm = millimetres(new PhotoPoint(px, py));
    double x = mm[0];
    double y = mm[1];
    double texture = grain * stripes[Math.floorMod((int) Math.floor(y * 7), stripes.length)];
    boolean onRuler = ruled && x > -5 && x < lengthMm + 5 && y > 0 && y < WIDTH_MM;
    for (double[] stretch : covered) {
      if (x > stretch[0] && x < stretch[1]) {
        return 45;
      }
    }
    if (!onRuler) {
      return desk + texture;
    }
    boolean inked =
        tick(near, x, y - 0.5) || (far.isPresent() && tick(far.get(), x, WIDTH_MM - 0.5 - y));
    return inked || figure(x, y) ? ink : ruler + texture;
  }

  private boolean tick(GraduationUnit unit, double x, double y) {
    double step = unit.millimetres();
    long k = Math.round(x / step);
    return k >= 0
        && k * step <= lengthMm
        && Math.abs(x - k * step) < tickWidthMm / 2
        && y > 0
        && y < length(unit, k);
  }

  private double length(GraduationUnit unit, long k) {
    if (plainTicks) {
      return shortMm;
    }
    return switch (unit) {
      case HALF_MILLIMETRE -> shortMm + (k % 20 == 0 ? 4 : k % 10 == 0 ? 2.5 : k % 2 == 0 ? 1 : 0);
      case EIGHTH_INCH, SIXTEENTH_INCH, THIRTY_SECOND_INCH ->
          shortMm + 1.2 * halvings(k, Math.round(25.4 / unit.millimetres()));
      default -> shortMm + (k % 10 == 0 ? 3 : k % 5 == 0 ? 1.5 : 0);
    };
  }

  private static int halvings(long k, long period) {
    int count = 0;
    for (long step = 2; step <= period && k % step == 0; step *= 2) {
      count++;
    }
    return count;
  }

  /** A blocky figure under every longest mark. */
  private boolean figure(double x, double y) {
    double off = x - 10 * Math.round(x / 10);
    return Math.abs(off) < 1
        && y > shortMm + 4.5
        && y < shortMm + 7.5
        && Math.abs(off) + 0.3 * Math.abs(y - shortMm - 6) > 0.4;
  }

  private double[] blurred(double[] in, int step, int across) {
    int reach = (int) Math.ceil(3 * blurPx);
    double[] out = new double[in.length];
    double[] kernel = new double[reach + 1];
    double norm = 0;
    for (int i = 0; i <= reach; i++) {
      kernel[i] = Math.exp(-0.5 * i * i / (blurPx * blurPx));
      norm += i == 0 ? kernel[i] : 2 * kernel[i];
    }
    int lines = step == 1 ? height : width;
    int length = step == 1 ? width : height;
    for (int line = 0; line < lines; line++) {
      for (int i = 0; i < length; i++) {
        double sum = 0;
        for (int j = -reach; j <= reach; j++) {
          int at = Math.min(length - 1, Math.max(0, i + j));
          sum += kernel[Math.abs(j)] * in[line * across + at * step];
        }
        out[line * across + i * step] = sum / norm;
      }
    }
    return out;
  }
}
