package wickmark.cli.browser;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.print.PageSize;
import org.openqa.selenium.print.PrintOptions;

/** A Chromium without a window, with a profile of its own that is thrown away. */
public final class Browser implements AutoCloseable {
  /** Kept, so that its level is: that no version of the protocol fits exactly does not matter. */
  private static final Logger TALK = Logger.getLogger("org.openqa.selenium");

  static {
    TALK.setLevel(Level.SEVERE);
  }

  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  /** Returns whether there is a Chromium with its driver; tests that need it are skipped if not. */
  public static boolean isInstalled() {
    return onPath("chromium").isPresent() && onPath("chromedriver").isPresent();
  }

  private static Optional<File> onPath(String program) {
    return Arrays.stream(Objects.requireNonNullElse(System.getenv("PATH"), "").split(":"))
        .map(folder -> new File(folder, program))
        .filter(File::canExecute)
        .findFirst();
  }

  /**
   * Starts one.
   *
   * @param downloads where it puts what a page saves
   */
  public static Browser start(Path downloads) {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(onPath("chromium").orElseThrow());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--window-size=1280,1000");
    options.setExperimentalOption(
        "prefs",
        Map.of(
            "download.default_directory",
            downloads.toAbsolutePath().toString(),
            "download.prompt_for_download",
            false));
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(onPath("chromedriver").orElseThrow())
            .usingAnyFreePort()
            .withSilent(true)
            .build();
    ChromeDriver driver = new ChromeDriver(service, options);
    driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(60));
    return new Browser(driver);
  }

  public void open(Path page) {
    driver.get(page.toAbsolutePath().toUri().toString());
  }

  /** Shows pages as people see them who like it dark, or light. */
  public void prefer(String scheme) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
  }

  public void clickOn(String id) {
    WebElement element = find("#" + id);
    driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
    element.click();
  }

  /**
   * Returns the first element of a kind. While scripts are off the driver cannot tell when a page
   * is there as a whole, so this waits for the element.
   */
  public WebElement find(String css) {
    driver.manage().timeouts().implicitlyWait(PATIENCE);
    try {
      return driver.findElement(By.cssSelector(css));
    } finally {
      driver.manage().timeouts().implicitlyWait(Duration.ZERO);
    }
  }

  public List<WebElement> findAll(String css) {
    return driver.findElements(By.cssSelector(css));
  }

  /** Returns a handle of the correcting page by its label's beginning, brought into view. */
  public WebElement handle(String label) {
    WebElement handle = find(".handle[aria-label^='" + label + "']");
    driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", handle);
    return handle;
  }

  /** Focuses a handle and presses keys together. */
  public void press(String label, Keys... keys) {
    driver.executeScript("arguments[0].focus()", handle(label));
    Actions actions = actions();
    for (Keys key : keys) {
      actions.keyDown(key);
    }
    for (Keys key : keys) {
      actions.keyUp(key);
    }
    actions.perform();
  }

  public Actions actions() {
    return new Actions(driver);
  }

  /** Runs a script in the page. */
  public Object run(String script, Object... arguments) {
    return Objects.requireNonNullElse(driver.executeScript(script, arguments), "");
  }

  /** Returns the texts of a table's body, row by row. */
  @SuppressWarnings("unchecked")
  public List<List<String>> table(String css) {
    return (List<List<String>>)
        run(
            "return [...document.querySelectorAll(arguments[0] + ' tr')].map(row =>"
                + " [...row.cells].map(cell => cell.textContent.trim()))",
            css);
  }

  /** Returns what the accessibility rules of WCAG 2.2 A and AA find wrong in the page. */
  public List<String> accessibilityFaults() {
    return faults(
        "{runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']}");
  }

  /** Returns what is wrong with its contrasts alone, which is all that light and dark change. */
  public List<String> contrastFaults() {
    return faults("{runOnly: {type: 'rule', values: ['color-contrast']}}");
  }

  @SuppressWarnings("unchecked")
  private List<String> faults(String options) {
    driver.executeScript(axe());
    Object faults =
        driver.executeAsyncScript(
            "const done = arguments[arguments.length - 1];"
                + "axe.run(document, "
                + options
                + ").then(r => done(r.violations.map(v => v.id + ': ' + v.help + ': '"
                + " + v.nodes.map(n => n.html.slice(0, 160)).join(' | '))),"
                + " e => done(['failed: ' + e]))");
    return (List<String>) Objects.requireNonNull(faults);
  }

  private static String axe() {
    try (InputStream in = Browser.class.getResourceAsStream("/axe.min.js")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Lets pages run scripts, or not. */
  public void script(boolean allowed) {
    driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !allowed));
  }

  /** Returns the page as a PDF on paper of a size in centimetres. */
  public byte[] printed(double widthCm, double heightCm) {
    PrintOptions options = new PrintOptions();
    options.setPageSize(new PageSize(heightCm, widthCm));
    return Base64.getDecoder().decode(driver.print(options).getContent());
  }

  /** Keeps a picture of the page, to look at. */
  public void keepPicture(Path file) throws IOException {
    Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
  }

  /** Sizes the window. */
  public void size(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  /** Sends one raw touch event: "touchStart", "touchMove" or "touchEnd" at places of the window. */
  public void touch(String type, List<Map<String, Object>> points) {
    driver.executeCdpCommand(
        "Input.dispatchTouchEvent", Map.of("type", type, "touchPoints", points));
  }

  /** Returns what the page said on its console. */
  public List<String> complaints() {
    return driver.manage().logs().get("browser").getAll().stream()
        .map(entry -> entry.getMessage())
        .toList();
  }

  @Override
  public void close() {
    driver.quit();
  }
}
