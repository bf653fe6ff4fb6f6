package wickmark.testdata.scene;

import java.util.stream.IntStream;
import wickmark.testdata.colour.SrgbCurve;
import wickmark.testdata.noise.ValueNoise;
import wickmark.testdata.picture.Picture;

/** Turns a canvas of light into an 8-bit picture. */
final class Sensor {
  /** Share of the noise that stays in full dark; the rest grows with the light, as photons do. */
  private static final double DARK_SHARE = 0.15;

  private final SensorPlan plan;
  private final ValueNoise grain;
  private final ValueNoise tint;

  Sensor(SensorPlan plan, long seed) {
    this.plan = plan;
    this.grain = new ValueNoise(seed);
    this.tint = new ValueNoise(seed + 1);
  }

  Picture expose(Canvas light) {
    Canvas blurred =
        Blur.motion(
            Blur.gaussian(light, plan.defocusPx()),
            plan.motion().lengthPx(),
            plan.motion().angleDeg());
    Canvas coded = new Canvas(light.widthPx, light.heightPx);
    IntStream.range(0, light.heightPx).parallel().forEach(y -> read(blurred, coded, y));
    Canvas soft = plan.finish().sharpening() > 0 ? Blur.gaussian(coded, 1.0) : coded;
    byte[] rgb = new byte[coded.rgb.length];
    float sharp = (float) plan.finish().sharpening();
    for (int i = 0; i < rgb.length; i++) {
      float value = coded.rgb[i] + sharp * (coded.rgb[i] - soft.rgb[i]);
      rgb[i] = (byte) Math.max(0, Math.min(255, Math.round(255 * value)));
    }
    return new Picture(light.widthPx, light.heightPx, rgb);
  }

  /** One row of pixels: exposure, falling off to the corners, noise, clipping, sRGB curve. */
  private void read(Canvas light, Canvas coded, int y) {
    double middleX = light.widthPx / 2.0;
    double middleY = light.heightPx / 2.0;
    double corner = middleX * middleX + middleY * middleY;
    for (int x = 0; x < light.widthPx; x++) {
      double dx = x + 0.5 - middleX;
      double dy = y + 0.5 - middleY;
      double gain = plan.exposure() * (1 - plan.vignetting() * (dx * dx + dy * dy) / corner);
      double shared = noiseAt(grain, x, y);
      for (int c = 0; c < 3; c++) {
        int i = 3 * (y * light.widthPx + x) + c;
        double value = gain * light.rgb[i];
        double size = plan.noise() * Math.sqrt(DARK_SHARE * DARK_SHARE + Math.max(0, value));
        double own = noiseAt(tint, 3 * (x / 2) + c, y / 2);
        value += size * (0.85 * shared + 0.5 * own);
        coded.rgb[i] = lively(SrgbCurve.encodeClipped((float) value));
      }
    }
  }

  /** Returns nearly normal noise of standard deviation 1: the sum of three even ones. */
  private static double noiseAt(ValueNoise noise, int x, int y) {
    return noise.lattice(x, y) + noise.lattice(x + 70001, y) + noise.lattice(x, y + 70001);
  }

  private float lively(float value) {
    double contrast = plan.finish().contrast();
    if (contrast == 0) {
      return value;
    }
    double curve = value * value * (3 - 2 * value);
    return (float) (value + contrast * (curve - value));
  }
}
