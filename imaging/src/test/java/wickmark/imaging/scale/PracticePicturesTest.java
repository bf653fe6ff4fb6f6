package wickmark.imaging.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;

/**
 * Reads the rulers of pictures with known marks, where the system property {@code
 * wickmark.practice} names a folder of them; without it there is nothing to do. Pictures that a
 * camera has turned are left out: turning them upright is the picture reader's work.
 */
class PracticePicturesTest {
  private static final Pattern UPRIGHT = Pattern.compile("\"exif_orientation\":\\s*1\\b");

  private static final Pattern MARK =
      Pattern.compile(
          "\"unit\":\\s*\"mm\",\\s*\"value\":\\s*(\\d+),\\s*\"outer_px\":\\s*\\[\\s*([-\\d.]+),\\s*([-\\d.]+)\\s*\\],"
              + "\\s*\"inner_px\":\\s*\\[\\s*([-\\d.]+),\\s*([-\\d.]+)");

  @TestFactory
  Stream<DynamicTest> everyMillimetreEdgeIsReadWithTheRightNumbers() throws IOException {
    String folder = System.getProperty("wickmark.practice", "");
    assumeTrue(!folder.isEmpty(), "no practice pictures");
    List<Path> pictures;
    try (Stream<Path> files = Files.list(Path.of(folder))) {
      pictures = files.filter(f -> f.toString().matches(".*\\.(jpg|png)")).sorted().toList();
    }
    return pictures.stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> check(p)));
  }

  private static void check(Path picture) throws IOException {
    String truth =
        Files.readString(
            picture.resolveSibling(
                picture.getFileName().toString().replaceAll("\\.\\w+$", ".truth.json")));
    assumeTrue(UPRIGHT.matcher(truth).find(), "turned by the camera, or no picture");
    BufferedImage image = ImageIO.read(picture.toFile());
    assumeTrue(image != null, "not a picture");
    List<double[]> marks = marks(truth);
    List<RulerEdge> edges = RulerReader.read(photo(image));
    if (marks.isEmpty()) {
      assertThat(edges).isEmpty();
      return;
    }
    RulerEdge edge =
        edges.stream()
            .filter(e -> e.unit() == GraduationUnit.MILLIMETRE)
            .findFirst()
            .orElseThrow(() -> new AssertionError("no millimetre edge found"));
    assertThat(edge.confidence()).isGreaterThan(0.5);
    assertThat(numbersOff(edge, marks)).as("marks with another number").isZero();
  }

  /** Every tenth mark of the truth must have one read mark on it, ten numbers from the last one. */
  private static int numbersOff(RulerEdge edge, List<double[]> truth) {
    List<int[]> pairs = new ArrayList<>();
    for (double[] mark : truth) {
      for (Graduation read : edge.marks()) {
        if (onMark(read.at(), mark)) {
          pairs.add(new int[] {(int) mark[0], read.index()});
        }
      }
    }
    assertThat(pairs).hasSizeGreaterThan(truth.size() / 2);
    int[] first = pairs.get(0);
    int way = (pairs.get(pairs.size() - 1)[1] > first[1]) ? 1 : -1;
    return (int) pairs.stream().filter(p -> p[0] - first[0] != way * (p[1] - first[1])).count();
  }

  /** Within a pixel of the line from the mark's outer to its inner end. */
  private static boolean onMark(PhotoPoint p, double[] mark) {
    double dx = mark[3] - mark[1];
    double dy = mark[4] - mark[2];
    double length = Math.hypot(dx, dy);
    double aside = ((p.x() - mark[1]) * dy - (p.y() - mark[2]) * dx) / length;
    double along = ((p.x() - mark[1]) * dx + (p.y() - mark[2]) * dy) / length;
    return Math.abs(aside) < 1 && along > -length && along < 2 * length;
  }

  private static List<double[]> marks(String truth) {
    List<double[]> marks = new ArrayList<>();
    Matcher found = MARK.matcher(truth);
    while (found.find()) {
      double[] mark = new double[5];
      for (int i = 0; i < 5; i++) {
        mark[i] = Double.parseDouble(found.group(i + 1));
      }
      marks.add(mark);
    }
    return marks;
  }

  private static Photo photo(BufferedImage image) {
    int width = image.getWidth();
    int height = image.getHeight();
    byte[] rgb = new byte[3 * width * height];
    for (int i = 0; i < width * height; i++) {
      int pixel = image.getRGB(i % width, i / width);
      rgb[3 * i] = (byte) (pixel >> 16);
      rgb[3 * i + 1] = (byte) (pixel >> 8);
      rgb[3 * i + 2] = (byte) pixel;
    }
    return new Photo(width, height, rgb, Optional.empty(), OptionalDouble.empty(), true);
  }
}
