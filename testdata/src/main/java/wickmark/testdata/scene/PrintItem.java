package wickmark.testdata.scene;

import wickmark.testdata.picture.Picture;

/**
 * A printed sheet on the desk, below all else.
 *
 * @param print what is on it, paper included
 * @param pxPerMm pixels of the print to a millimetre of the sheet as it lies there
 * @param placement where its middle is
 */
public record PrintItem(Picture print, double pxPerMm, Placement placement) {
  public PrintItem {
    if (!(pxPerMm > 0)) {
      throw new IllegalArgumentException(
          "a print needs more than 0 pixels a millimetre, got " + pxPerMm);
    }
  }

  double widthMm() {
    return print.widthPx() / pxPerMm;
  }

  double heightMm() {
    return print.heightPx() / pxPerMm;
  }
}
