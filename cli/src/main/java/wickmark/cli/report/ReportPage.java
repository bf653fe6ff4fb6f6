package wickmark.cli.report;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import wickmark.cli.measuring.StraightPicture;
import wickmark.core.record.RunRecord;
import wickmark.imaging.photo.Photo;

/**
 * The report: one page that needs no network and no script. The template engine escapes every text;
 * the page's own security policy lets in nothing but its pictures and its one style sheet.
 */
public final class ReportPage {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Configuration TEMPLATES = templates();

  private ReportPage() {}

  /**
   * Returns the page's text.
   *
   * @param record rounded
   * @param straightenedPng the straightened strip as a PNG file
   */
  public static String html(
      RunRecord record, Photo photo, StraightPicture straightened, byte[] straightenedPng) {
    ReportContent content =
        ReportContent.of(
            record,
            SketchDrawing.onPhoto(record, photo),
            SketchDrawing.onStrip(record, straightened, straightenedPng));
    Map<String, Object> model = MAPPER.convertValue(content, new TypeReference<>() {});
    String style = resource("report.css");
    model.put("style", style);
    model.put("styleHash", sha256(style));
    StringWriter page = new StringWriter();
    try {
      TEMPLATES.getTemplate("report.ftlh").process(model, page);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (TemplateException e) {
      throw new IllegalStateException("the report's template and content do not fit", e);
    }
    return page.toString();
  }

  private static Configuration templates() {
    Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
    configuration.setClassForTemplateLoading(ReportPage.class, "");
    configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
    configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    configuration.setLocale(Locale.ROOT);
    configuration.setNumberFormat("computer");
    return configuration;
  }

  private static String resource(String name) {
    try (InputStream in = ReportPage.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String sha256(String text) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
