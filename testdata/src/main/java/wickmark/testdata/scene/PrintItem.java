package wickmark.testdata.scene;

import java.util.List;
import wickmark.testdata.picture.Picture;

/**
 * A printed sheet on the desk, below all else.
 *
 * @param print what is on it, paper included
 * @param pxPerMm pixels of the print to a millimetre of the sheet as it lies there
 * @param placement where its middle is
 * @param bends how it does not lie flat
 */
public record PrintItem(Picture print, double pxPerMm, Placement placement, List<Bend> bends) {
  public PrintItem {
    bends = List.copyOf(bends);
    if (!(pxPerMm > 0)) {
      throw new IllegalArgumentException(
          "a print needs more than 0 pixels a millimetre, got " + pxPerMm);
    }
  }

  /** A sheet that lies flat. */
  public PrintItem(Picture print, double pxPerMm, Placement placement) {
    this(print, pxPerMm, placement, List.of());
  }

  /** The same sheet, bent. */
  public PrintItem bent(Bend bend) {
    return new PrintItem(print, pxPerMm, placement, List.of(bend));
  }

  double widthMm() {
    return print.widthPx() / pxPerMm;
  }

  double heightMm() {
    return print.heightPx() / pxPerMm;
  }
}
