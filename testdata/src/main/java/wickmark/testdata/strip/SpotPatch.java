package wickmark.testdata.strip;

/**
 * The density that one spot added to the raster.
 *
 * @param firstColumn raster column of the patch's first column
 * @param firstRow raster row of the patch's first row
 * @param columns width of the patch
 * @param density row by row; its largest value is the spot's peak absorbance
 */
record SpotPatch(SpotPlan plan, int firstColumn, int firstRow, int columns, float[] density) {

  int rows() {
    return density.length / columns;
  }
}
