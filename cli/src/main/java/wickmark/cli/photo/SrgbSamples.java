package wickmark.cli.photo;

import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.PixelInterleavedSampleModel;
import java.awt.image.Raster;
import java.util.Arrays;

/**
 * Takes the stored samples of a decoded picture to three bytes a pixel, upright.
 *
 * <p>The samples are read from the raster: a conversion through Java's colour models would lift
 * grey ones, because Java takes grey for linear light. Transparent parts lie on white.
 */
final class SrgbSamples {
  private final BufferedImage picture;
  private final Raster raster;
  private final int width;
  private final int bands;
  private final int[] samples;

  private SrgbSamples(BufferedImage picture) {
    this.picture = picture;
    this.raster = picture.getRaster();
    this.width = picture.getWidth();
    this.bands = raster.getNumBands();
    this.samples = new int[width * Math.max(bands, 3)];
  }

  /**
   * Returns 3 · width · height bytes: red, green, blue; rows of the upright picture from the top.
   */
  static byte[] of(BufferedImage picture, Orientation orientation) {
    if (picture.getRaster() instanceof UprightRaster upright) {
      return upright.samples();
    }
    byte[] same = inPlace(picture, orientation);
    if (same.length > 0) {
      return same;
    }
    return new SrgbSamples(picture).turned(orientation);
  }

  /** The ordinary case keeps its array, which halves the memory of a large photo. */
  private static byte[] inPlace(BufferedImage picture, Orientation orientation) {
    boolean ordinary =
        orientation == Orientation.NORMAL
            && picture.getType() == BufferedImage.TYPE_3BYTE_BGR
            && picture.getRaster().getParent() == null
            && picture.getRaster().getDataBuffer() instanceof DataBufferByte;
    if (!ordinary) {
      return new byte[0];
    }
    byte[] data = ((DataBufferByte) picture.getRaster().getDataBuffer()).getData();
    if (data.length != 3 * picture.getWidth() * picture.getHeight()) {
      return new byte[0];
    }
    for (int i = 0; i < data.length; i += 3) {
      byte blue = data[i];
      data[i] = data[i + 2];
      data[i + 2] = blue;
    }
    return data;
  }

  private byte[] turned(Orientation orientation) {
    int height = picture.getHeight();
    byte[] out = new byte[Math.multiplyExact(3, Math.multiplyExact(width, height))];
    UprightRows upright = new UprightRows(width, height, orientation, out);
    byte[][] rows = new byte[UprightRows.AT_A_TIME][3 * width];
    for (int top = 0; top < height; top += rows.length) {
      int count = Math.min(rows.length, height - top);
      for (int j = 0; j < count; j++) {
        readRow(top + j, rows[j]);
      }
      upright.put(top, rows, count);
    }
    return out;
  }

  private void readRow(int y, byte[] row) {
    ColorModel colours = picture.getColorModel();
    int type = colours.getColorSpace().getType();
    if (colours instanceof java.awt.image.IndexColorModel) {
      readPaletteRow(y, row);
    } else if (type == ColorSpace.TYPE_GRAY && isWhole()) {
      readSampleRow(y, row, 1);
    } else if (type == ColorSpace.TYPE_RGB && isWhole()) {
      readSampleRow(y, row, 3);
    } else {
      readConvertedRow(y, row);
    }
  }

  private boolean isWhole() {
    int type = raster.getDataBuffer().getDataType();
    return type == DataBuffer.TYPE_BYTE
        || type == DataBuffer.TYPE_USHORT
        || type == DataBuffer.TYPE_INT;
  }

  private void readSampleRow(int y, byte[] row, int colours) {
    if (copyBytes(y, row, colours)) {
      return;
    }
    raster.getPixels(0, y, width, 1, samples);
    boolean alpha = picture.getColorModel().hasAlpha() && bands == colours + 1;
    boolean premultiplied = picture.isAlphaPremultiplied();
    int[] most = new int[bands];
    Arrays.setAll(most, band -> (1 << raster.getSampleModel().getSampleSize(band)) - 1);
    for (int x = 0; x < width; x++) {
      double cover = alpha ? samples[x * bands + colours] / (double) most[colours] : 1;
      for (int c = 0; c < 3; c++) {
        int band = colours == 1 ? 0 : c;
        double value = 255.0 * samples[x * bands + band] / most[band];
        double shown = premultiplied ? value : value * cover;
        row[3 * x + c] = (byte) Math.round(Math.min(255, shown + 255 * (1 - cover)));
      }
    }
  }

  /** Eight-bit samples without alpha, in whatever order they lie. */
  private boolean copyBytes(int y, byte[] row, int colours) {
    if (bands != colours
        || !(raster.getSampleModel() instanceof PixelInterleavedSampleModel model)
        || !(raster.getDataBuffer() instanceof DataBufferByte buffer)
        || model.getNumDataElements() != bands
        || raster.getSampleModelTranslateX() != 0
        || raster.getSampleModelTranslateY() != 0) {
      return false;
    }
    byte[] data = buffer.getData();
    int[] offsets = model.getBandOffsets();
    int at = buffer.getOffset() + y * model.getScanlineStride();
    for (int i = 0; i < row.length; i += 3, at += model.getPixelStride()) {
      row[i] = data[at + offsets[0]];
      row[i + 1] = data[at + offsets[colours == 1 ? 0 : 1]];
      row[i + 2] = data[at + offsets[colours == 1 ? 0 : 2]];
    }
    return true;
  }

  private void readPaletteRow(int y, byte[] row) {
    raster.getSamples(0, y, width, 1, 0, samples);
    ColorModel colours = picture.getColorModel();
    for (int x = 0; x < width; x++) {
      put(row, x, colours.getRGB(samples[x]), colours.getTransparency() != Transparency.OPAQUE);
    }
  }

  /** CMYK, Lab and the like: the decoder's own colour model knows the way to sRGB. */
  private void readConvertedRow(int y, byte[] row) {
    picture.getRGB(0, y, width, 1, samples, 0, width);
    for (int x = 0; x < width; x++) {
      put(row, x, samples[x], picture.getColorModel().hasAlpha());
    }
  }

  private static void put(byte[] row, int x, int argb, boolean alpha) {
    int cover = alpha ? argb >>> 24 : 255;
    for (int c = 0; c < 3; c++) {
      int value = argb >> (16 - 8 * c) & 0xff;
      row[3 * x + c] = (byte) ((value * cover + 255 * (255 - cover) + 127) / 255);
    }
  }
}
