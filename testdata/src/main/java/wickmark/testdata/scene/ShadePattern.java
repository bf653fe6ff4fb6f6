package wickmark.testdata.scene;

import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.noise.ValueNoise;

/** Light and shade in a pattern over the desk. */
public sealed interface ShadePattern {

  /** Returns the light left where the shade is full, in each channel. */
  LinearRgb left();

  /** Returns how full the shade is at each place of the world. */
  Depth depth();

  /** How full a shade is, from 0 for full light to 1. */
  interface Depth {
    double at(double xMm, double yMm);
  }

  /**
   * Bands of shade by a blind's slats.
   *
   * @param normalDeg direction from band to band
   * @param pitchMm from the middle of a band to that of the next
   * @param shiftMm of the first band's middle from the world's origin
   * @param shadeMm how much of the pitch is in shade, at half its depth
   * @param softMm width over which it darkens
   */
  record Blinds(
      double normalDeg,
      double pitchMm,
      double shiftMm,
      double shadeMm,
      double softMm,
      LinearRgb left)
      implements ShadePattern {
    @Override
    public Depth depth() {
      double cos = StrictMath.cos(StrictMath.toRadians(normalDeg));
      double sin = StrictMath.sin(StrictMath.toRadians(normalDeg));
      return (x, y) -> {
        double bands = (x * cos + y * sin - shiftMm) / pitchMm;
        double off = pitchMm * Math.abs(bands - StrictMath.rint(bands));
        return smooth(0.5 + (shadeMm / 2 - off) / softMm);
      };
    }
  }

  /**
   * Shade of leaves with blobs of light between them.
   *
   * @param sizeMm size of the blobs
   * @param seed chance of where they are
   */
  record Leaves(double sizeMm, LinearRgb left, long seed) implements ShadePattern {
    @Override
    public Depth depth() {
      ValueNoise crown = new ValueNoise(seed);
      // The sun is half a degree wide: a leaf some metres off has no sharper edge than this.
      double soft = 0.8;
      return (x, y) -> smooth(0.5 + crown.octaves(x / sizeMm, y / sizeMm, 2) / soft);
    }
  }

  private static double smooth(double share) {
    double t = Math.max(0, Math.min(1, share));
    return t * t * (3 - 2 * t);
  }
}
