package wickmark.cli.photo;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.imageio.ImageIO;

/** Whole files of every kind that is read, to begin with when looking for faults. */
public final class FuzzSeeds {
  private FuzzSeeds() {}

  /** Returns files by name: a strip, made smaller, in every kind of file. */
  public static Map<String, byte[]> ofStrip(Path strip, int smallerBy) throws IOException {
    return of(smaller(ImageIO.read(strip.toFile()), smallerBy));
  }

  /** Returns files by name: a picture without a strip, which is soon measured in vain. */
  public static Map<String, byte[]> ofNothing() {
    return of(PictureBytes.gradient(24, 32));
  }

  private static Map<String, byte[]> of(BufferedImage small) {
    BufferedImage grey = as(small, BufferedImage.TYPE_BYTE_GRAY);
    byte[] jpeg = PictureBytes.written(small, "jpeg");
    byte[] png = PictureBytes.written(small, "png");
    byte[] profile = PictureBytes.packed(PictureBytes.profile(SRGB_LIKE));
    byte[] iccp = new byte[profile.length + 3];
    iccp[0] = 'p';
    System.arraycopy(profile, 0, iccp, 3, profile.length);
    String xmp =
        "<x:xmpmeta xmlns:x='adobe:ns:meta/'><rdf:RDF"
            + " xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'/></x:xmpmeta>";
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("plain.jpg", jpeg);
    files.put("tags.jpg", PictureBytes.withSegment(jpeg, 0xe1, PictureBytes.exif(6, 300, 26)));
    files.put(
        "xmp.jpg",
        PictureBytes.withSegment(
            jpeg, 0xe1, ("http://ns.adobe.com/xap/1.0/\0" + xmp).getBytes(StandardCharsets.UTF_8)));
    files.put("progressive.jpg", RareFiles.progressiveJpeg(small));
    files.put("grey.jpg", PictureBytes.written(grey, "jpeg"));
    files.put("cmyk.jpg", RareFiles.cmykJpeg(48, 64, 255, 40, 40, 255));
    files.put("plain.png", png);
    files.put("profile.png", PictureBytes.withChunk(png, "iCCP", iccp));
    files.put(
        "palette.png", PictureBytes.written(as(small, BufferedImage.TYPE_BYTE_INDEXED), "png"));
    files.put("bits.png", PictureBytes.written(as(small, BufferedImage.TYPE_BYTE_BINARY), "png"));
    files.put("plain.bmp", PictureBytes.written(small, "bmp"));
    files.put("plain.tif", PictureBytes.written(small, "tiff"));
    files.put("packed.tif", RareFiles.packedTiff(small));
    files.put("deep.tif", PictureBytes.deepTiff(60, 90, 60000, 50000, 40000));
    files.put("xmp.tif", RareFiles.tiffWithXmp(xmp));
    files.put("lossless.webp", RareFiles.losslessWebp());
    files.put("lossy.webp", RareFiles.lossyWebp());
    files.put("extended.webp", RareFiles.webpWithXmp(xmp));
    return files;
  }

  private static final double[][] SRGB_LIKE = {
    {0.436, 0.2225, 0.0139}, {0.3851, 0.7169, 0.0971}, {0.1431, 0.0606, 0.7141}
  };

  private static BufferedImage smaller(BufferedImage image, int by) {
    BufferedImage small =
        new BufferedImage(
            image.getWidth() / by, image.getHeight() / by, BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D pen = small.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    pen.drawImage(image, 0, 0, small.getWidth(), small.getHeight(), null);
    pen.dispose();
    return small;
  }

  private static BufferedImage as(BufferedImage image, int type) {
    BufferedImage other = new BufferedImage(image.getWidth(), image.getHeight(), type);
    Graphics2D pen = other.createGraphics();
    pen.drawImage(image, 0, 0, null);
    pen.dispose();
    return other;
  }
}
