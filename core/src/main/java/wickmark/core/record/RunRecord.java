package wickmark.core.record;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One measured strip, as it is written to {@code record.json}: the component names are the names of
 * the JSON fields. Lengths are millimetres on the strip, places are photo pixels (x right, y down,
 * (0, 0) the outer corner of the top-left pixel), uncertainties are standard uncertainties (k = 1,
 * JCGM 100:2008). What is not known is {@code null}.
 *
 * @param settings every setting that had a say in the result, by name: strings, numbers, booleans,
 *     or lists of them
 */
public record RunRecord(
    String format,
    Tool tool,
    Photo photo,
    Map<String, Object> settings,
    Scale scale,
    @Nullable Card card,
    Strip strip,
    Baseline baseline,
    Front front,
    List<Lane> lanes,
    List<Unknown> unknowns,
    List<Warning> warnings) {

  /** The format that this version writes. */
  public static final String FORMAT = "wickmark-record/1";

  /** The program that measured. */
  public record Tool(String name, String version) {}

  /** The picture: its file name without a path, the SHA-256 of the file, its upright size. */
  public record Photo(String file, String sha256, int widthPx, int heightPx) {}

  /**
   * How pixels became millimetres.
   *
   * @param source ruler, card, resolution, strip-size, span or none
   * @param millimetresPerPixel at the strip's centre, mean of along and across
   * @param relativeUncertainty standard uncertainty of the scale over the scale
   * @param confidence how sure it is that lengths are within 1 % of the true ones, 0 to 1, as far
   *     as the ruler's divisions and the uncertainty tell; {@code null} without a scale, and in
   *     records of versions that did not write it
   */
  public record Scale(
      String source,
      @Nullable Double millimetresPerPixel,
      @Nullable Double relativeUncertainty,
      @Nullable Double confidence) {}

  /**
   * What the printed card tells of light and paper. The spots' colours are not set by it: they are
   * taken with the strip's own paper as the white, which lies in the same light.
   *
   * @param sheet the card's size by name
   * @param whiteRgb linear light of the card's white: red, green and blue, 1 being the most that
   *     the picture can show
   * @param greyChroma the largest chroma of the grey patches, CIELAB with the card's white as the
   *     white: 0 in even light and a picture of true tones
   * @param paperLab CIELAB (D65) of the strip's blank paper with the card's white as the white
   * @param paperColour that in a word: white, cream, or what it is tinted
   */
  public record Card(
      String sheet,
      List<Double> whiteRgb,
      double greyChroma,
      List<Double> paperLab,
      String paperColour) {}

  /**
   * Where the strip lies.
   *
   * @param cornersPx top-left, top-right, bottom-right, bottom-left of the strip, the baseline's
   *     end being the bottom
   * @param pictureToStrip homography, row by row, from photo pixels to strip coordinates: x right
   *     along the baseline, y up from it; millimetres where the scale is known, otherwise in units
   *     of the strip's height
   * @param byHand whether a person said where the corners are
   * @param confidence how sure the outline is, 0 to 1
   * @param orientationConfidence how sure it is which end is the bottom, 0 to 1; {@code null} in
   *     records of versions that did not write it
   */
  public record Strip(
      List<List<Double>> cornersPx,
      List<Double> pictureToStrip,
      boolean byHand,
      double confidence,
      @Nullable Double orientationConfidence) {}

  /**
   * The pencil line, by its two ends.
   *
   * @param byHand whether a person said where it is
   */
  public record Baseline(List<List<Double>> endsPx, boolean byHand, double confidence) {}

  /**
   * The solvent front, by its two ends.
   *
   * @param kind pencil, tide-mark or by-hand
   * @param pathPx the front as a curve, from left to right; its first and last points are the ends
   */
  public record Front(
      List<List<Double>> endsPx, String kind, List<List<Double>> pathPx, double confidence) {}

  /**
   * One sample's path.
   *
   * @param role reference or unknown
   * @param originByHand whether a person said where the origin is
   * @param confidence how sure it is that one sample was put there, 0 to 1; {@code null} in records
   *     of versions that did not write it
   * @param reading what the number of spots says, in words ("a mixture of at least 3")
   */
  public record Lane(
      String name,
      String role,
      List<Double> originPx,
      boolean originByHand,
      @Nullable Double confidence,
      @Nullable Double frontDistanceMm,
      @Nullable Double frontDistanceUncertaintyMm,
      String reading,
      List<Spot> spots) {}

  /**
   * One spot. Distances are square to the baseline.
   *
   * @param number 1 is the one nearest the front
   * @param distanceMm of the absorbance-weighted centroid; of a spot with the flag by-hand, of the
   *     centre that a person set, which is its middle and densest point too
   * @param middleMm of the middle of the visible extent
   * @param densestMm of the point of greatest absorbance
   * @param rfMiddle Rf by the middle of the visible extent
   * @param lab CIELAB (D65) of the spot with the paper as white
   * @param colour plain English name
   * @param budget where the uncertainty of Rf comes from
   * @param outlinePx the visible extent as a closed polygon
   */
  public record Spot(
      int number,
      @Nullable Double distanceMm,
      @Nullable Double distanceUncertaintyMm,
      @Nullable Double middleMm,
      @Nullable Double densestMm,
      @Nullable Double topMm,
      @Nullable Double bottomMm,
      @Nullable Double widthMm,
      @Nullable Double areaMm2,
      double rf,
      double rfUncertainty,
      double rfMiddle,
      double rfDensest,
      double peakAbsorbance,
      List<Double> centrePx,
      List<Double> lab,
      String colour,
      List<String> flags,
      double confidence,
      List<BudgetLine> budget,
      List<List<Double>> outlinePx) {}

  /**
   * One line of an uncertainty budget.
   *
   * @param source what it comes from, in words
   * @param rfUncertainty its contribution to the standard uncertainty of Rf
   * @param share its part of the variance, 0 to 1
   */
  public record BudgetLine(String source, double rfUncertainty, double share) {}

  /**
   * What explains one unknown.
   *
   * @param explanations best first
   * @param unexplainedSpots spot numbers of the unknown that no reference of the best explanation
   *     accounts for
   * @param ruledOut references that cannot be in it, with the reason
   * @param findings what a reader should know, in sentences
   */
  public record Unknown(
      String lane,
      List<Explanation> explanations,
      List<Integer> unexplainedSpots,
      List<RuledOut> ruledOut,
      List<String> findings) {}

  /**
   * A set of references that together account for the unknown.
   *
   * @param score 0 to 1, larger is better
   * @param matches which spot of the unknown goes with which spot of which reference
   */
  public record Explanation(List<String> references, double score, List<SpotMatch> matches) {}

  /** A pair of spots taken for the same dye. */
  public record SpotMatch(
      int unknownSpot,
      String reference,
      int referenceSpot,
      double rfDifference,
      double colourDifference) {}

  /** A reference that cannot be in the unknown. */
  public record RuledOut(String reference, String reason) {}

  /** A doubt that the reader must see. */
  public record Warning(String code, String message) {}
}
