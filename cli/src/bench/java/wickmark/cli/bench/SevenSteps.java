package wickmark.cli.bench;

import java.util.List;
import org.opencv.core.Core;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.core.MatOfPoint2f;
import org.opencv.core.Point;
import org.opencv.core.Size;
import org.opencv.imgcodecs.Imgcodecs;
import org.opencv.imgproc.Imgproc;

/**
 * What any program that measures a strip must do to its picture, by native code: decode, warp the
 * strip upright (it is told the corners), CIELAB, blur, background, threshold, components. It finds
 * nothing, measures nothing and writes nothing: a floor, not a rival. {@code seven_steps.py} does
 * the same.
 */
final class SevenSteps {
  private static final int WIDTH = 1200;
  private static final int HEIGHT = 1800;

  private SevenSteps() {}

  /** Returns how many components there are. */
  static int components(byte[] file, List<double[]> corners) {
    Mat photo = Imgcodecs.imdecode(new MatOfByte(file), Imgcodecs.IMREAD_COLOR);
    Mat view =
        Imgproc.getPerspectiveTransform(
            new MatOfPoint2f(
                corners.stream().map(c -> new Point(c[0], c[1])).toArray(Point[]::new)),
            new MatOfPoint2f(
                new Point(0, 0),
                new Point(WIDTH, 0),
                new Point(WIDTH, HEIGHT),
                new Point(0, HEIGHT)));
    Mat strip = new Mat();
    Imgproc.warpPerspective(photo, strip, view, new Size(WIDTH, HEIGHT), Imgproc.INTER_LINEAR);
    Mat lab = new Mat();
    Imgproc.cvtColor(strip, lab, Imgproc.COLOR_BGR2Lab);
    Mat blurred = new Mat();
    Imgproc.GaussianBlur(lab, blurred, new Size(0, 0), 3);
    Mat background = new Mat();
    Imgproc.blur(blurred, background, new Size(241, 241));
    Mat difference = new Mat();
    Core.absdiff(blurred, background, difference);
    List<Mat> channels = new java.util.ArrayList<>();
    Core.split(difference, channels);
    Mat most = new Mat();
    Core.max(channels.get(1), channels.get(2), most);
    Mat stained = new Mat();
    Imgproc.threshold(most, stained, 8, 255, Imgproc.THRESH_BINARY);
    Mat labels = new Mat();
    Mat statistics = new Mat();
    Mat centres = new Mat();
    int count = Imgproc.connectedComponentsWithStats(stained, labels, statistics, centres);
    for (Mat mat :
        List.of(photo, view, strip, lab, blurred, background, difference, most, stained, labels)) {
      mat.release();
    }
    channels.forEach(Mat::release);
    return count;
  }
}
