package wickmark.cli.photo;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.ColorConvertOp;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Takes 8-bit RGB samples of an embedded ICC profile to sRGB.
 *
 * <p>Profiles made of three curves and a matrix (cameras, phones, screens) are worked out here from
 * tables, so that every Java gives the same samples; the few others go through the JDK's colour
 * management.
 */
final class ColourProfile {
  /** Fine enough that each of the 256 values comes back as itself from its own linear light. */
  private static final int ENCODING_STEPS = 1 << 14;

  private static final byte[] ENCODED = encodingTable();

  private final float @Nullable [][] linear;
  private final double @Nullable [][] matrix;
  private final @Nullable ICC_ColorSpace space;

  private ColourProfile(
      float @Nullable [][] linear, double @Nullable [][] matrix, @Nullable ICC_ColorSpace space) {
    this.linear = linear;
    this.matrix = matrix;
    this.space = space;
  }

  /** Returns the conversion, or none where the bytes are no RGB profile that can be used. */
  static Optional<ColourProfile> of(byte[] icc) {
    Optional<IccMatrixProfile> simple = IccMatrixProfile.of(icc);
    if (simple.isPresent()) {
      return Optional.of(
          new ColourProfile(simple.get().curves(), simple.get().toLinearSrgb(), null));
    }
    try {
      ICC_ColorSpace space = new ICC_ColorSpace(ICC_Profile.getInstance(icc));
      return space.getType() == ColorSpace.TYPE_RGB
          ? Optional.of(new ColourProfile(null, null, space))
          : Optional.empty();
    } catch (RuntimeException e) {
      return Optional.empty();
    }
  }

  /** Converts in place; {@code rgb} holds three bytes a pixel. */
  void convert(byte[] rgb, int widthPx) {
    if (linear != null && matrix != null) {
      convertByMatrix(rgb, linear, matrix);
    } else if (space != null) {
      convertBySystem(rgb, widthPx, space);
    }
  }

  private static void convertByMatrix(byte[] rgb, float[][] linear, double[][] matrix) {
    float m00 = (float) matrix[0][0];
    float m01 = (float) matrix[0][1];
    float m02 = (float) matrix[0][2];
    float m10 = (float) matrix[1][0];
    float m11 = (float) matrix[1][1];
    float m12 = (float) matrix[1][2];
    float m20 = (float) matrix[2][0];
    float m21 = (float) matrix[2][1];
    float m22 = (float) matrix[2][2];
    for (int i = 0; i < rgb.length; i += 3) {
      float r = linear[0][rgb[i] & 0xff];
      float g = linear[1][rgb[i + 1] & 0xff];
      float b = linear[2][rgb[i + 2] & 0xff];
      rgb[i] = encoded(m00 * r + m01 * g + m02 * b);
      rgb[i + 1] = encoded(m10 * r + m11 * g + m12 * b);
      rgb[i + 2] = encoded(m20 * r + m21 * g + m22 * b);
    }
  }

  /** Colours outside sRGB's gamut end at its border. */
  private static byte encoded(float light) {
    int step = (int) (light * ENCODING_STEPS + 0.5f);
    return ENCODED[Math.max(0, Math.min(ENCODING_STEPS, step))];
  }

  private static void convertBySystem(byte[] rgb, int widthPx, ICC_ColorSpace from) {
    int height = rgb.length / (3 * widthPx);
    int[] bands = {0, 1, 2};
    WritableRaster samples =
        Raster.createInterleavedRaster(
            new DataBufferByte(rgb, rgb.length), widthPx, height, 3 * widthPx, 3, bands, null);
    ColorConvertOp conversion =
        new ColorConvertOp(from, ColorSpace.getInstance(ColorSpace.CS_sRGB), null);
    WritableRaster converted =
        Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, widthPx, height, 3, null);
    conversion.filter(samples, converted);
    converted.getDataElements(0, 0, widthPx, height, rgb);
  }

  /** IEC 61966-2-1, the curve from linear light to 8-bit samples. */
  private static byte[] encodingTable() {
    byte[] table = new byte[ENCODING_STEPS + 1];
    for (int i = 0; i <= ENCODING_STEPS; i++) {
      double light = (double) i / ENCODING_STEPS;
      double coded =
          light <= 0.0031308 ? 12.92 * light : 1.055 * StrictMath.pow(light, 1 / 2.4) - 0.055;
      table[i] = (byte) StrictMath.round(255 * coded);
    }
    return table;
  }
}
