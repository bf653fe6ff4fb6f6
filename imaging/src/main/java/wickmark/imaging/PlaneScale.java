package wickmark.imaging;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.pose.PlaneView;
import wickmark.imaging.scale.PixelScale;

/**
 * How the camera or scanner sees the paper's plane, and how many millimetres its unit has.
 *
 * @param view the view
 * @param covariance of the view's parameters; empty for a scan, which has none
 * @param millimetresPerUnit of the plane's unit, which is its distance from the camera; empty
 *     without a scale
 * @param source where the scale comes from
 * @param relativeUncertainty of the scale along its source
 * @param confidence 0 to 1: that a division of the ruler is what it was taken for
 * @param scaleOfView what the scale would be in another view, where it was taken from marks in the
 *     picture, for propagating the view's uncertainty
 * @param flat whether the picture is a scan
 * @param careful 0 to 1: that the outline is a sheet cut with care, with square corners; 1 where
 *     nothing was made of it
 * @param doubts two sources that disagree, a resolution that is none
 */
record PlaneScale(
    PlaneView view,
    double[][] covariance,
    OptionalDouble millimetresPerUnit,
    PixelScale.Source source,
    double relativeUncertainty,
    double confidence,
    Optional<ScaleOfView> scaleOfView,
    boolean flat,
    double careful,
    List<Doubt> doubts) {
  /** Millimetres of the plane's unit as marks in the picture give it in a view. */
  interface ScaleOfView {
    double millimetresPerUnit(PlaneView view);
  }

  /** The same view with a scale that the person says. */
  PlaneScale said(double mmPerUnit, PixelScale.Source said, double relative) {
    PlaneScale scaled =
        new PlaneScale(
            view,
            covariance,
            OptionalDouble.of(mmPerUnit),
            said,
            relative,
            1,
            Optional.empty(),
            flat,
            careful,
            doubts);
    if (millimetresPerUnit.isEmpty()) {
      return scaled;
    }
    double apart = mmPerUnit / millimetresPerUnit.getAsDouble() - 1;
    double u = Math.hypot(relative, relativeUncertainty) + 0.004;
    if (Math.abs(apart) <= 3 * u) {
      return scaled;
    }
    return scaled.with(
        new Doubt(
            "scales-disagree",
            String.format(
                Locale.ROOT,
                "The scale that was said (%s, %.4f mm per pixel) makes lengths %.1f %% %s than the"
                    + " one found in the picture (%s, %.4f mm per pixel). The one that was said was"
                    + " used.",
                said.word(),
                mmPerUnit / view.focalPx(),
                100 * Math.abs(apart),
                apart > 0 ? "longer" : "shorter",
                source.word(),
                millimetresPerUnit.getAsDouble() / view.focalPx())));
  }

  /** The same with one more doubt. */
  PlaneScale with(Doubt doubt) {
    List<Doubt> more = new ArrayList<>(doubts);
    more.add(doubt);
    return new PlaneScale(
        view,
        covariance,
        millimetresPerUnit,
        source,
        relativeUncertainty,
        confidence,
        scaleOfView,
        flat,
        careful,
        more);
  }

  /** Whether the scale is that of the desk: one said of the strip itself knows how high it lies. */
  boolean isOfDesk() {
    return source == PixelScale.Source.RULER || source == PixelScale.Source.CARD;
  }
}
