package wickmark.imaging.card;

import boofcv.abst.fiducial.SquareHamming_to_FiducialDetector;
import boofcv.alg.fiducial.square.DetectFiducialSquareHamming;
import boofcv.alg.fiducial.square.FoundFiducial;
import boofcv.factory.fiducial.ConfigFiducialHammingDetector;
import boofcv.factory.fiducial.ConfigHammingMarker;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.ConfigLength;
import boofcv.struct.image.GrayU8;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import wickmark.core.card.Fiducial;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;

/** Finds the card's squares in a shrunken photo, and reads which is which. */
final class SquareFinder {
  /**
   * Long side of the shrunken photo at the most, cells. A square is read from about 20 cells on, so
   * that a card that takes half of the picture's length is found in any.
   */
  private static final int SEARCH_SIZE = 1700;

  /** Cells around the smallest square that is read: most of a desk's grain is less. */
  private static final int LEAST_ROUND = 64;

  /**
   * Black is darker than this share of the mean around it: ten times darker than paper in light, a
   * quarter of it in coded values, where wood and cloth hardly differ from their surroundings.
   */
  private static final double DARKER = 0.8;

  /**
   * Cells of a pattern that may be read wrongly. Patterns differ in ten; with two wrong ones,
   * chance reads a pattern in one of two thousand black quadrilaterals, and a card needs two that
   * fit together.
   */
  private static final int WRONG_CELLS = 2;

  private SquareFinder() {}

  /**
   * A square as it was found.
   *
   * @param number which it is
   * @param corners upper left, upper right, lower right, lower left as printed, photo pixels, to
   *     about the cell size of the shrunken photo
   * @param cellPx that cell size
   */
  record Found(int number, List<PhotoPoint> corners, double cellPx) {}

  /** Returns all, in the order of their numbers. */
  static List<Found> find(Photo photo) {
    int longest = Math.max(photo.widthPx(), photo.heightPx());
    int factor = (longest + SEARCH_SIZE - 1) / SEARCH_SIZE;
    GrayU8 small = shrunken(photo, factor);
    SquareHamming_to_FiducialDetector<GrayU8> detector =
        FactoryFiducial.squareHamming(patterns(), settings(), GrayU8.class);
    DetectFiducialSquareHamming<GrayU8> algorithm = detector.getAlgorithm();
    algorithm.configure(null, small.width, small.height, false);
    algorithm.process(small);
    List<Found> all = new ArrayList<>();
    for (FoundFiducial found : algorithm.getFound().toList()) {
      List<PhotoPoint> corners = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        corners.add(
            new PhotoPoint(
                found.distortedPixels.get(i).x * factor, found.distortedPixels.get(i).y * factor));
      }
      all.add(new Found((int) found.id, corners, factor));
    }
    all.sort(Comparator.comparingInt(Found::number));
    return all;
  }

  private static ConfigFiducialHammingDetector settings() {
    ConfigFiducialHammingDetector settings = new ConfigFiducialHammingDetector();
    settings.squareDetector.detector.minimumContour = ConfigLength.fixed(LEAST_ROUND);
    settings.configThreshold.scale = DARKER;
    return settings;
  }

  private static ConfigHammingMarker patterns() {
    ConfigHammingMarker patterns = new ConfigHammingMarker();
    patterns.gridWidth = Fiducial.PATTERN_CELLS;
    patterns.borderWidthFraction = 1.0 / Fiducial.CELLS;
    patterns.minimumHamming = WRONG_CELLS;
    for (int number = 0; number < Fiducial.COUNT; number++) {
      patterns.addMarker(Fiducial.pattern(number));
    }
    return patterns;
  }

  /** The green channel, in which black and white differ as in any. */
  private static GrayU8 shrunken(Photo photo, int factor) {
    int w = Math.max(1, photo.widthPx() / factor);
    int h = Math.max(1, photo.heightPx() / factor);
    GrayU8 small = new GrayU8(w, h);
    int count = factor * factor;
    int[] sum = new int[w];
    for (int y = 0; y < h; y++) {
      Arrays.fill(sum, 0);
      for (int j = y * factor; j < (y + 1) * factor; j++) {
        photo.addGreenOfRow(0, j, factor, sum);
      }
      for (int x = 0; x < w; x++) {
        small.data[y * w + x] = (byte) (sum[x] / count);
      }
    }
    return small;
  }
}
