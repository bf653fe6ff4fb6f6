package wickmark.cli.photo;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * An ICC profile of three curves and a matrix (ICC.1:2022, section 8.3.3).
 *
 * @param curves linear light, 0 to 1, for each of the 256 values of red, green and blue
 * @param toLinearSrgb matrix from the profile's linear RGB to linear sRGB
 */
record IccMatrixProfile(float[][] curves, double[][] toLinearSrgb) {
  /**
   * From XYZ (D50) to linear sRGB: the inverse of the colorants that IEC 61966-2-1 primaries have
   * after Bradford adaptation to D50.
   */
  private static final double[][] XYZ_D50_TO_SRGB = {
    {3.1338561, -1.6168667, -0.4906146},
    {-0.9787684, 1.9161415, 0.0334540},
    {0.0719453, -0.2289914, 1.4052427}
  };

  private static final int HEADER_BYTES = 128;
  private static final int MOST_TAGS = 200;

  /** Returns the profile, or none where it is damaged or of another build. */
  static Optional<IccMatrixProfile> of(byte[] icc) {
    if (icc.length < HEADER_BYTES + 4) {
      return Optional.empty();
    }
    try {
      ByteBuffer in = ByteBuffer.wrap(icc);
      if (!text(in, 16).equals("RGB ") || !text(in, 36).equals("acsp")) {
        return Optional.empty();
      }
      Map<String, Integer> tags = tags(in);
      if (tags.containsKey("A2B0") || !tags.keySet().containsAll(REQUIRED_TAGS)) {
        return Optional.empty();
      }
      float[][] curves = new float[3][];
      double[][] colorants = new double[3][3];
      for (int c = 0; c < 3; c++) {
        String colour = "rgb".substring(c, c + 1);
        curves[c] = curve(in, tags.getOrDefault(colour + "TRC", 0));
        int xyz = tags.getOrDefault(colour + "XYZ", 0) + 8;
        for (int row = 0; row < 3; row++) {
          colorants[row][c] = fixed(in, xyz + 4 * row);
        }
      }
      return Optional.of(new IccMatrixProfile(curves, product(XYZ_D50_TO_SRGB, colorants)));
    } catch (IndexOutOfBoundsException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static final java.util.Set<String> REQUIRED_TAGS =
      java.util.Set.of("rTRC", "gTRC", "bTRC", "rXYZ", "gXYZ", "bXYZ");

  private static Map<String, Integer> tags(ByteBuffer in) {
    int count = in.getInt(HEADER_BYTES);
    if (count < 0 || count > MOST_TAGS) {
      throw new IllegalArgumentException("a profile with " + count + " tags");
    }
    Map<String, Integer> tags = new HashMap<>();
    for (int i = 0; i < count; i++) {
      int entry = HEADER_BYTES + 4 + 12 * i;
      tags.put(text(in, entry), in.getInt(entry + 4));
    }
    return tags;
  }

  private static float[] curve(ByteBuffer in, int at) {
    String type = text(in, at);
    float[] light = new float[256];
    for (int v = 0; v < 256; v++) {
      double x = v / 255.0;
      double y =
          switch (type) {
            case "curv" -> sampled(in, at, x);
            case "para" -> parametric(in, at, x);
            default -> throw new IllegalArgumentException("a curve of type " + type);
          };
      light[v] = (float) Math.max(0, Math.min(1, y));
    }
    return light;
  }

  /** Section 10.6: no point is the identity, one is a power, more are a table. */
  private static double sampled(ByteBuffer in, int at, double x) {
    int count = in.getInt(at + 8);
    if (count == 0) {
      return x;
    }
    if (count == 1) {
      return StrictMath.pow(x, (in.getShort(at + 12) & 0xffff) / 256.0);
    }
    double place = x * (count - 1);
    int below = Math.min((int) place, count - 2);
    double low = in.getShort(at + 12 + 2 * below) & 0xffff;
    double high = in.getShort(at + 14 + 2 * below) & 0xffff;
    return (low + (place - below) * (high - low)) / 65535;
  }

  /** Section 10.18, function types 0 to 4. */
  private static double parametric(ByteBuffer in, int at, double x) {
    int function = in.getShort(at + 8);
    double g = fixed(in, at + 12);
    double a = function > 0 ? fixed(in, at + 16) : 1;
    double b = function > 0 ? fixed(in, at + 20) : 0;
    double c = function > 1 ? fixed(in, at + 24) : 0;
    double d = function > 2 ? fixed(in, at + 28) : 0;
    double e = function > 3 ? fixed(in, at + 32) : 0;
    double f = function > 3 ? fixed(in, at + 36) : 0;
    return switch (function) {
      case 0 -> StrictMath.pow(x, g);
      case 1 -> x >= -b / a ? StrictMath.pow(a * x + b, g) : 0;
      case 2 -> x >= -b / a ? StrictMath.pow(a * x + b, g) + c : c;
      case 3 -> x >= d ? StrictMath.pow(a * x + b, g) : c * x;
      case 4 -> x >= d ? StrictMath.pow(a * x + b, g) + e : c * x + f;
      default -> throw new IllegalArgumentException("a curve of function type " + function);
    };
  }

  private static double fixed(ByteBuffer in, int at) {
    return in.getInt(at) / 65536.0;
  }

  private static String text(ByteBuffer in, int at) {
    byte[] four = new byte[4];
    in.get(at, four);
    return new String(four, StandardCharsets.ISO_8859_1);
  }

  private static double[][] product(double[][] left, double[][] right) {
    double[][] result = new double[3][3];
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        for (int k = 0; k < 3; k++) {
          result[row][column] += left[row][k] * right[k][column];
        }
      }
    }
    return result;
  }
}
