package wickmark.imaging.strip;

/**
 * A quad with its score.
 *
 * @param reach how far off its sides the sheet's are looked for, cells; a ruler's edge beside it
 *     would draw them off
 */
record RankedQuad(Quad quad, double score, double reach) {
  RankedQuad(Quad quad, double score) {
    this(quad, score, Double.POSITIVE_INFINITY);
  }
}
