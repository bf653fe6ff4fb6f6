package wickmark.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The program's version, as the build wrote it into the program. */
final class Version implements IVersionProvider {
  static String number() {
    Properties properties = new Properties();
    try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
      properties.load(Objects.requireNonNull(in, "version.properties"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Objects.requireNonNull(properties.getProperty("version"), "version");
  }

  @Override
  public String[] getVersion() {
    return new String[] {"wickmark " + number()};
  }
}
