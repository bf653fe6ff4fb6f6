package wickmark.cli.report;

import java.util.List;

/**
 * What is drawn over a picture, in the picture's pixels and as the text of SVG attributes.
 *
 * @param width of the picture
 * @param height of the picture
 * @param viewWidth of the picture and the scale beside it
 * @param image the picture as a data address
 * @param letter height of the letters
 * @param stroke width of the lines
 * @param edge the strip's outline as points of a polygon
 * @param baseline points of a line
 * @param front points of a line
 * @param matches lines between the spots that explain an unknown, each as points
 * @param ticks of a millimetre scale; empty where there is none
 * @param profiles the density along the lanes, beside the scale; empty where it is not drawn
 */
record Sketch(
    int width,
    int height,
    String viewWidth,
    String image,
    String letter,
    String stroke,
    String edge,
    String baseline,
    Label baselineLabel,
    String front,
    Label frontLabel,
    List<LaneLine> lanes,
    List<SpotMark> spots,
    List<String> matches,
    List<Tick> ticks,
    List<DensityProfile> profiles) {

  /** A text and where it stands. */
  record Label(String x, String y, String text) {}

  /** A lane from its origin to the front, with its name. */
  record LaneLine(String points, Label label) {}

  /** A spot's outline as the data of a path, its centre and its number. */
  record SpotMark(String outline, String x, String y, Label label) {}

  /** A mark of the millimetre scale. */
  record Tick(String x1, String x2, String y, String text) {}
}
