package wickmark.testdata.scene;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import wickmark.testdata.noise.ValueNoise;

/**
 * How a sheet of paper does not lie flat. Bends add up.
 *
 * @param kind its form
 * @param heightMm height of its highest place above the desk
 * @param seed chance for the irregular ones
 */
public record Bend(Kind kind, double heightMm, long seed) {

  /** The forms of bent paper. */
  public enum Kind {
    /** Curved along its length, its middle lifted. */
    ARCH,
    /** Curved along its length, both ends lifted. */
    CUP,
    /** Curved across, its middle lifted. */
    BOW,
    /** Wavy as paper dries. */
    COCKLE,
    /** One upper corner lifted. */
    CORNER,
    /** Its upper end stands up from a crease where it hung. */
    HUNG,
    /** Its left side lies on something flat, as on a ruler. */
    LEFT_SIDE,
    /** The same on the right. */
    RIGHT_SIDE
  }

  static double heightAt(
      List<Bend> bends, double across, double along, double width, double height) {
    double sum = 0.15;
    for (Bend bend : bends) {
      sum += bend.at(across / width, along / height, width, height);
    }
    return sum;
  }

  /** Returns this bend's height where the shares of width and height are u and v. */
  private double at(double u, double v, double width, double height) {
    return switch (kind) {
      case ARCH -> heightMm * hump(v);
      case CUP -> heightMm * (1 - hump(v));
      case BOW -> heightMm * hump(u);
      case CORNER -> {
        double past = Math.max(0, u + v - 1.35) / 0.65;
        yield heightMm * past * past;
      }
      case LEFT_SIDE -> heightMm * propped(u * width);
      case RIGHT_SIDE -> heightMm * propped((1 - u) * width);
      case HUNG -> heightMm * ramp((v - 0.86) * height) / ramp(0.14 * height);
      default -> cockle(u * width, v * height);
    };
  }

  private static double hump(double share) {
    return StrictMath.sin(Math.PI * Math.max(0, Math.min(1, share)));
  }

  /** A crease is not a knife: it turns within a few millimetres. */
  private static double ramp(double mm) {
    double soft = 1.5;
    return (mm + Math.sqrt(mm * mm + soft * soft)) / 2;
  }

  /** Level for 5 mm from the side that lies on something, then down to the desk within 14 mm. */
  private static double propped(double fromSideMm) {
    double down = Math.max(0, Math.min(1, (fromSideMm - 5) / 14));
    return 1 - down * down * (3 - 2 * down);
  }

  private double cockle(double x, double y) {
    ValueNoise noise = new ValueNoise(seed);
    DoubleUnaryOperator wave = t -> 0.5 + 0.5 * StrictMath.sin(t);
    double lean = noise.at(0.3, 0.6);
    double first =
        wave.applyAsDouble(2 * Math.PI * (x * 0.5 * lean + y) / 46 + 3 * noise.at(x / 60, y / 60));
    double second =
        wave.applyAsDouble(
            2 * Math.PI * (x - y * 0.4 * lean) / 58 + 3 * noise.at(x / 70 + 9, y / 70));
    return heightMm * (0.6 * first + 0.4 * second);
  }
}
