package wickmark.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.Template;
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
import java.util.concurrent.ConcurrentHashMap;
import wickmark.cli.text.VisibleText;

/**
 * A page from a template. The engine escapes every text; every page shares one style sheet, whose
 * hash the page's own security policy names.
 */
public final class PageTemplate {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final ObjectMapper DATA =
      JsonMapper.builder().enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN).build();
  private static final String STYLE = resource("report.css");

  /** The engine keeps a template that it has parsed: a batch fills the same one many times. */
  private static final Map<Class<?>, Configuration> TEMPLATES = new ConcurrentHashMap<>();

  private PageTemplate() {}

  /**
   * Returns the page's text.
   *
   * @param home class beside which the template lies
   * @param content a record or map with what the template prints
   */
  public static String filled(Class<?> home, String template, Object content) {
    return filled(home, template, content, Map.of());
  }

  /**
   * Returns the text of a page that has a script.
   *
   * @param data what the script reads, as a value to be written as JSON
   */
  static String filledWithScript(
      Class<?> home, String template, Object content, String script, Object data) {
    return filled(
        home,
        template,
        content,
        Map.of("script", script, "scriptHash", sha256(script), "data", harmless(data)));
  }

  /** Returns a text that lies beside this class. */
  static String text(String name) {
    return resource(name);
  }

  /** JSON that ends no script, whatever the names in it are. */
  private static String harmless(Object data) {
    try {
      return VisibleText.ofJson(DATA.writeValueAsString(data).replace("<", "\\u003c"));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a value in memory can always be written", e);
    }
  }

  private static String filled(
      Class<?> home, String template, Object content, Map<String, Object> more) {
    Map<String, Object> model = MAPPER.convertValue(content, new TypeReference<>() {});
    model.put("style", STYLE);
    model.put("styleHash", sha256(STYLE));
    model.putAll(more);
    StringWriter page = new StringWriter();
    try {
      template(home, template).process(model, page);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (TemplateException e) {
      throw new IllegalStateException("a page's template and content do not fit", e);
    }
    // A picture may be called anything, and so may a reader of the strip.
    return VisibleText.ofPage(page.toString());
  }

  /** Reads a template before it is wanted. */
  static void prepare(Class<?> home, String template) {
    try {
      template(home, template);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Template template(Class<?> home, String name) throws IOException {
    return TEMPLATES.computeIfAbsent(home, PageTemplate::templates).getTemplate(name);
  }

  private static Configuration templates(Class<?> home) {
    Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
    configuration.setClassForTemplateLoading(home, "");
    configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
    configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    configuration.setLocale(Locale.ROOT);
    configuration.setNumberFormat("computer");
    return configuration;
  }

  private static String resource(String name) {
    try (InputStream in = PageTemplate.class.getResourceAsStream(name)) {
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
