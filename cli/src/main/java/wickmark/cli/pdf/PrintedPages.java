package wickmark.cli.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import wickmark.core.sheet.Size;

/** Sheets to print as one PDF, with its letters embedded; the same sheets give the same bytes. */
public final class PrintedPages implements AutoCloseable {
  private static final String LETTERS =
      "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private final PDDocument document;
  private final PDFont letters;

  private PrintedPages(PDDocument document, PDFont letters) {
    this.document = document;
    this.letters = letters;
  }

  /** Begins a document. */
  public static PrintedPages titled(String title) throws IOException {
    PDDocument document = new PDDocument();
    document.setDocumentId(1L);
    document.getDocumentInformation().setTitle(title);
    // Viewers that heed it offer printing at 100 % rather than fitted to the page.
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    document.getDocumentCatalog().setViewerPreferences(preferences);
    try (InputStream in = PDDocument.class.getResourceAsStream(LETTERS)) {
      return new PrintedPages(
          document, PDType0Font.load(document, Objects.requireNonNull(in, LETTERS), true));
    }
  }

  /** Adds a sheet; close its pen before the next. */
  public SheetPen add(Size sheet) throws IOException {
    PDPage page =
        new PDPage(
            new PDRectangle(SheetPen.points(sheet.width()), SheetPen.points(sheet.height())));
    document.addPage(page);
    return new SheetPen(document, page, letters);
  }

  /** Returns the file's bytes. */
  public byte[] bytes() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    document.save(bytes);
    return bytes.toByteArray();
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
