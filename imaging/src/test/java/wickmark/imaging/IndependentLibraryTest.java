package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfPoint2f;
import org.opencv.core.Point;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import org.opencv.imgproc.Moments;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;

/**
 * Centres of spots and courses of lines against OpenCV 4.9 on the same straightened picture: image
 * moments (Imgproc.moments) of the density over a background by closing, and a robust line
 * (Imgproc.fitLine with Huber's distance) through the darkest place of each column. Nothing of this
 * project's own background, peaks or lines is used there.
 */
class IndependentLibraryTest {
  /** Half the window around a spot and around a line, mm. */
  private static final double SPOT_MM = 5.5;

  private static final double LINE_MM = 1.2;

  private static StripReading reading;
  private static double perMm;

  /** Mean density of the three channels. */
  private static Mat density;

  @BeforeAll
  static void read() {
    nu.pattern.OpenCV.loadLocally();
    reading =
        SaidPlacesTest.read(
            DrawnStrips.scanned(DrawnStrips.Plain.SCAN, DrawnStrips.DPI), new RequestBuilder());
    perMm = reading.straightened().pixelsPerMm();
    density = density(reading.straightened().picture());
  }

  private static Mat density(Photo photo) {
    Mat rgb = new Mat(photo.heightPx(), photo.widthPx(), CvType.CV_8UC3);
    byte[] bytes = new byte[3 * photo.widthPx() * photo.heightPx()];
    for (int y = 0, k = 0; y < photo.heightPx(); y++) {
      for (int x = 0; x < photo.widthPx(); x++) {
        bytes[k++] = (byte) photo.red(x, y);
        bytes[k++] = (byte) photo.green(x, y);
        bytes[k++] = (byte) photo.blue(x, y);
      }
    }
    rgb.put(0, 0, bytes);
    // IEC 61966-2-1, decoding of sRGB, as a table for OpenCV.
    Mat table = new Mat(1, 256, CvType.CV_32FC1);
    for (int i = 0; i < 256; i++) {
      double v = i / 255.0;
      table.put(0, i, v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4));
    }
    List<Mat> channels = new java.util.ArrayList<>();
    Core.split(rgb, channels);
    Mat sum = Mat.zeros(rgb.size(), CvType.CV_32FC1);
    for (Mat channel : channels) {
      Mat light = new Mat();
      Core.LUT(channel, table, light);
      Mat closed = new Mat();
      int side = (int) (16 * perMm) | 1;
      Imgproc.morphologyEx(
          light,
          closed,
          Imgproc.MORPH_CLOSE,
          // A square, which OpenCV takes row by row: a disc of this size takes minutes.
          Imgproc.getStructuringElement(Imgproc.MORPH_RECT, new Size(side, side)));
      Mat paper = new Mat();
      Imgproc.GaussianBlur(closed, paper, new Size(0, 0), 2 * perMm);
      Mat ratio = new Mat();
      Core.divide(paper, light, ratio);
      Mat log = new Mat();
      Core.log(ratio, log);
      Core.addWeighted(sum, 1, log, 1 / (3 * Math.log(10)), 0, sum);
    }
    return sum;
  }

  /** A place of the photo in the straightened picture. */
  private static double[] straight(PhotoPoint p) {
    List<Double> h = reading.straightened().fromPhoto();
    double w = h.get(6) * p.x() + h.get(7) * p.y() + h.get(8);
    return new double[] {
      (h.get(0) * p.x() + h.get(1) * p.y() + h.get(2)) / w,
      (h.get(3) * p.x() + h.get(4) * p.y() + h.get(5)) / w
    };
  }

  @Test
  void centresOfSpotsAgreeWithImageMoments() {
    int compared = 0;
    for (var lane : reading.pictures()) {
      for (var spot : lane.spots()) {
        double[] at = straight(new PhotoPoint(spot.centrePx().get(0), spot.centrePx().get(1)));
        int half = (int) (SPOT_MM * perMm);
        Rect around = new Rect((int) at[0] - half, (int) at[1] - half, 2 * half + 1, 2 * half + 1);
        Mat window = new Mat();
        // What is fainter than the noise of blank paper has no weight.
        Imgproc.threshold(density.submat(around), window, 0.012, 0, Imgproc.THRESH_TOZERO);
        Moments moments = Imgproc.moments(window);
        double x = around.x + moments.m10 / moments.m00 + 0.5;
        double y = around.y + moments.m01 / moments.m00 + 0.5;
        assertThat(y / perMm).isCloseTo(at[1] / perMm, within(0.1));
        assertThat(x / perMm).isCloseTo(at[0] / perMm, within(0.2));
        compared++;
      }
    }
    assertThat(compared).isEqualTo(4);
  }

  @Test
  void linesAgreeWithARobustLineThroughTheDarkestPlaces() {
    assertThat(offMm(reading.placed().baseline())).isLessThan(0.06);
    assertThat(offMm(reading.placed().front())).isLessThan(0.06);
  }

  /** Greatest distance of OpenCV's line from ours at the ends of the middle three fifths. */
  private static double offMm(List<PhotoPoint> course) {
    double[] left = straight(course.get(0));
    double[] right = straight(course.get(course.size() - 1));
    int half = (int) (LINE_MM * perMm);
    List<Point> darkest = new java.util.ArrayList<>();
    int width = density.cols();
    for (int x = width / 5; x < 4 * width / 5; x++) {
      double guess = left[1] + (right[1] - left[1]) * (x + 0.5 - left[0]) / (right[0] - left[0]);
      Rect column = new Rect(x, (int) guess - half, 1, 2 * half + 1);
      Mat line = new Mat();
      Core.subtract(density.submat(column), new Scalar(0.05), line);
      Imgproc.threshold(line, line, 0, 0, Imgproc.THRESH_TOZERO);
      Moments moments = Imgproc.moments(line);
      if (moments.m00 > 0) {
        darkest.add(new Point(x + 0.5, column.y + moments.m01 / moments.m00 + 0.5));
      }
    }
    assertThat(darkest).hasSizeGreaterThan(width / 4);
    Mat fitted = new Mat();
    Imgproc.fitLine(
        new MatOfPoint2f(darkest.toArray(Point[]::new)), fitted, Imgproc.DIST_HUBER, 0, 0.01, 0.01);
    double slope = fitted.get(1, 0)[0] / fitted.get(0, 0)[0];
    double most = 0;
    for (double x : new double[] {0.2 * width, 0.5 * width, 0.8 * width}) {
      double ours = left[1] + (right[1] - left[1]) * (x - left[0]) / (right[0] - left[0]);
      double theirs = fitted.get(3, 0)[0] + slope * (x - fitted.get(2, 0)[0]);
      most = Math.max(most, Math.abs(ours - theirs) / perMm);
    }
    return most;
  }
}
