package wickmark.testdata.scene;

/**
 * How a camera's lens and sensor, or a scanner's, turn light into numbers.
 *
 * @param defocusPx standard deviation of the blur, pixels
 * @param motion movement while the shutter was open
 * @param noise standard deviation of the noise at full white, as a share of white
 * @param exposure factor on the light; 1 shows a white of full light just unclipped
 * @param vignetting share of light lost in the corners
 * @param finish how the pictures are finished, as phones do
 */
public record SensorPlan(
    double defocusPx,
    Motion motion,
    double noise,
    double exposure,
    double vignetting,
    Finish finish) {

  /** A straight movement of so many pixels. */
  public record Motion(double lengthPx, double angleDeg) {}

  /**
   * Finishing.
   *
   * @param sharpening strength of an unsharp mask
   * @param contrast 0 for none, 0.3 for the S-curve of a lively phone
   */
  public record Finish(double sharpening, double contrast) {}

  /** Returns a good sharp camera with little noise. */
  public static SensorPlan good() {
    return new SensorPlan(0.5, new Motion(0, 0), 0.006, 0.92, 0.06, new Finish(0.2, 0));
  }

  /** Returns a scanner. */
  public static SensorPlan scanner() {
    return new SensorPlan(0.55, new Motion(0, 0), 0.004, 0.97, 0, new Finish(0.15, 0));
  }

  public SensorPlan withDefocus(double px) {
    return new SensorPlan(px, motion, noise, exposure, vignetting, finish);
  }

  public SensorPlan withMotion(double lengthPx, double angleDeg) {
    return new SensorPlan(
        defocusPx, new Motion(lengthPx, angleDeg), noise, exposure, vignetting, finish);
  }

  public SensorPlan withNoise(double value) {
    return new SensorPlan(defocusPx, motion, value, exposure, vignetting, finish);
  }

  public SensorPlan withExposure(double value) {
    return new SensorPlan(defocusPx, motion, noise, value, vignetting, finish);
  }
}
