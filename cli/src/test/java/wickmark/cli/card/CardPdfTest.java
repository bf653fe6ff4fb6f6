package wickmark.cli.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wickmark.core.card.Box;
import wickmark.core.card.CardLayout;
import wickmark.core.card.CardSheet;
import wickmark.core.card.Fiducial;
import wickmark.imaging.card.CardFinder;
import wickmark.imaging.card.CardView;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.testdata.picture.Picture;

class CardPdfTest {
  private static final float DPI = 150;
  private static final double PX_PER_MM = DPI / 25.4;

  private static CardView found(BufferedImage rendered) {
    Picture page = Picture.of(rendered);
    Photo photo =
        new Photo(
            page.widthPx(),
            page.heightPx(),
            page.rgb(),
            Optional.empty(),
            OptionalDouble.empty(),
            false);
    return CardFinder.find(photo).card().orElseThrow();
  }

  private static CardView found(CardSheet sheet) throws IOException {
    return found(CardPictures.rendered(sheet, DPI));
  }

  /** Moves what is printed in and round a square. */
  private static void move(BufferedImage page, Fiducial fiducial, double rightMm, double downMm) {
    Box round = fiducial.box().grown(1.5);
    int x = (int) Math.round(round.left() * PX_PER_MM);
    int y = (int) Math.round(round.top() * PX_PER_MM);
    int w = (int) Math.round(round.width() * PX_PER_MM);
    int h = (int) Math.round(round.height() * PX_PER_MM);
    int[] piece = page.getRGB(x, y, w, h, null, 0, w);
    page.setRGB(
        x + (int) Math.round(rightMm * PX_PER_MM),
        y + (int) Math.round(downMm * PX_PER_MM),
        w,
        h,
        piece,
        0,
        w);
  }

  /** As where the card is folded at a corner. */
  @Test
  void aSquareThatLiesElsewhereIsLeftOutAndNamed() throws IOException {
    BufferedImage page = CardPictures.rendered(CardSheet.A4, DPI);
    move(page, CardLayout.of(CardSheet.A4).fiducials().get(2), -2, -1.5);

    CardView card = found(page);

    assertThat(card.corners()).isEqualTo(12);
    assertThat(card.doubts()).hasSize(1);
    assertThat(card.doubts().get(0).code()).isEqualTo("card-square-left-out");
    assertThat(card.doubts().get(0).message()).contains("lower right");
    assertThat(card.misfitMm()).isLessThan(0.1);
  }

  /** As where the whole sheet curls. */
  @Test
  void squaresThatFitNoFlatSheetAreSaid() throws IOException {
    BufferedImage page = CardPictures.rendered(CardSheet.A4, DPI);
    CardLayout layout = CardLayout.of(CardSheet.A4);
    move(page, layout.fiducials().get(2), -1.5, 0.8);
    move(page, layout.fiducials().get(0), 1.2, 1.1);
    move(page, layout.fiducials().get(1), -0.3, 1.4);

    CardView card = found(page);

    assertThat(card.doubts()).extracting(d -> d.code()).containsExactly("card-not-flat");
    assertThat(Math.sqrt(card.covariance()[2][2])).isGreaterThan(0.001);
  }

  /** Drawn by one library, read by another. */
  @ParameterizedTest
  @EnumSource
  void itsFourSquaresAreFoundWhereTheLayoutHasThem(CardSheet sheet) throws IOException {
    CardView card = found(sheet);

    assertThat(card.layout().sheet()).isEqualTo(sheet);
    assertThat(card.corners()).isEqualTo(16);
    // A third of a pixel: renderers smooth edges in coded values, not in light.
    assertThat(card.misfitMm()).isLessThan(1 / PX_PER_MM / 3);
    for (Fiducial fiducial : card.layout().fiducials()) {
      PhotoPoint corner = card.toPhoto(fiducial.box().left(), fiducial.box().bottom());
      assertThat(corner.x()).isCloseTo(fiducial.box().left() * PX_PER_MM, within(0.5));
      assertThat(corner.y()).isCloseTo(fiducial.box().bottom() * PX_PER_MM, within(0.8));
    }
  }

  @ParameterizedTest
  @EnumSource
  void isOnePageOfTheSheetsSizeWithItsLettersEmbeddedAndNoPixels(CardSheet sheet)
      throws IOException {
    try (PDDocument document = Loader.loadPDF(CardPdf.of(sheet))) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      PDPage page = document.getPage(0);
      double points = 72 / 25.4;
      assertThat(page.getMediaBox().getWidth() / points)
          .isCloseTo(sheet.size().width(), within(0.01));
      assertThat(page.getMediaBox().getHeight() / points)
          .isCloseTo(sheet.size().height(), within(0.01));
      for (COSName name : page.getResources().getFontNames()) {
        assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
      }
      assertThat(page.getResources().getFontNames()).isNotEmpty();
      assertThat(page.getResources().getXObjectNames()).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void itsBarIsAHundredMillimetresLong(CardSheet sheet) throws IOException {
    int pxPerMm = 20;
    BufferedImage page = CardPictures.rendered(sheet, 25.4f * pxPerMm);
    double x = CardLayout.of(sheet).bar().x();
    // Beside the stroke itself only the marks at its ends are dark.
    int column = (int) Math.round((x + 1.5) * pxPerMm);
    int first = -1;
    int last = -1;
    double fromTop = CardLayout.of(sheet).place().top();
    double toBottom = CardLayout.of(sheet).place().bottom();
    for (int y = (int) (fromTop * pxPerMm); y < toBottom * pxPerMm; y++) {
      if ((page.getRGB(column, y) & 0xFF) < 128) {
        first = first < 0 ? y : first;
        last = y;
      }
    }
    // From the upper edge of one mark to the lower edge of the other: 0.25 mm more.
    assertThat((last + 1 - first) / (double) pxPerMm).isCloseTo(100.25, within(0.15));
  }

  @ParameterizedTest
  @EnumSource
  void theSameSheetGivesTheSameBytes(CardSheet sheet) {
    assertThat(CardPdf.of(sheet)).isEqualTo(CardPdf.of(sheet));
  }
}
