package wickmark.cli.bench;

import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import wickmark.cli.ProgramInProcess;

/**
 * What measuring costs beside native code, against the picture's size and against what is on the
 * strip: processor time of the whole process, so that a machine with other work will do, the least of
 * several rounds. {@code CostTable [ROUNDS]}.
 */
public final class CostTable {
  private static final double[] MEGAPIXELS = {2, 4, 8, 12, 24, 50};

  private CostTable() {}

  /** Prints both tables. */
  public static void main(String[] arguments) throws IOException {
    int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 4;
    DrawnPhoto drawn = DrawnPhoto.of(1);
    besideNativeCode(drawn, 4 * rounds);
    BufferedImage photo = ImageIO.read(drawn.file().toFile());
    System.out.println("| megapixels | s of processor time |\n| --- | --- |");
    SimpleRegression fit = new SimpleRegression();
    for (double size : MEGAPIXELS) {
      double seconds = least(resized(photo, size), rounds);
      fit.addData(Math.log(size), Math.log(seconds));
      System.out.printf(Locale.ROOT, "| %.0f | %.2f |%n", size, seconds);
    }
    System.out.printf(
        Locale.ROOT,
        "%nexponent of size: %.2f ± %.2f%n%n| lanes | spots | s of processor time |%n",
        fit.getSlope(),
        fit.getSlopeStdErr());
    System.out.println("| --- | --- | --- |");
    for (long seed = 1; seed <= DrawnPhoto.SEEDS; seed++) {
      DrawnPhoto one = DrawnPhoto.of(seed);
      System.out.printf(
          Locale.ROOT,
          "| %d | %d | %.2f |%n",
          one.lanes(),
          one.spots(),
          least(one.file(), rounds));
    }
  }

  /** In turns, once everything is warm. */
  private static void besideNativeCode(DrawnPhoto photo, int rounds) throws IOException {
    nu.pattern.OpenCV.loadLocally();
    org.opencv.core.Core.setNumThreads(1);
    byte[] bytes = Files.readAllBytes(photo.file());
    double measure = Double.POSITIVE_INFINITY;
    double steps = Double.POSITIVE_INFINITY;
    for (int i = 0; i < rounds; i++) {
      measure = Math.min(measure, least(photo.file(), 1));
      long before = processorNanos();
      SevenSteps.components(bytes, photo.corners());
      steps = Math.min(steps, (processorNanos() - before) / 1e9);
    }
    System.out.printf(
        Locale.ROOT,
        "measure %.3f s, seven steps %.3f s, ratio %.1f (12 megapixels, warm)%n%n",
        measure,
        steps,
        measure / steps);
  }

  private static Path resized(BufferedImage photo, double megapixels) throws IOException {
    double factor = Math.sqrt(megapixels * 1e6 / photo.getWidth() / photo.getHeight());
    int w = (int) Math.round(factor * photo.getWidth());
    int h = (int) Math.round(factor * photo.getHeight());
    BufferedImage out = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
    var pen = out.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    Image source = factor < 0.5 ? photo.getScaledInstance(w, h, Image.SCALE_AREA_AVERAGING) : photo;
    pen.drawImage(source, 0, 0, w, h, null);
    pen.dispose();
    File file = Path.of("target", "bench", Math.round(megapixels) + "-megapixels.jpg").toFile();
    ImageIO.write(out, "jpg", file);
    return file.toPath();
  }

  private static double least(Path file, int rounds) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < rounds; i++) {
      long before = processorNanos();
      measure(file);
      least = Math.min(least, (processorNanos() - before) / 1e9);
    }
    return least;
  }

  private static void measure(Path file) {
    ProgramInProcess.run(
        new PrintWriter(Writer.nullWriter()),
        "measure",
        file.toString(),
        "--replace",
        "--out",
        Path.of("target", "bench", "records").toString());
  }

  private static long processorNanos() {
    return ((com.sun.management.OperatingSystemMXBean)
            ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }
}
