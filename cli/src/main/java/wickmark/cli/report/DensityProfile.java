package wickmark.cli.report;

import java.util.List;

/**
 * The density along one lane, drawn beside the strip at the strip's own height, as the text of SVG
 * attributes.
 *
 * @param base x of no density
 * @param top y of the line of no density's upper end
 * @param bottom y of its lower end
 * @param curve points of an area's outline
 * @param end x where its column ends
 */
record DensityProfile(
    String base,
    String top,
    String bottom,
    String curve,
    Sketch.Label name,
    List<Mark> spots,
    double end) {

  /** A spot's centre: a line across the column, and its number. */
  record Mark(String x1, String x2, String y, String text) {}
}
