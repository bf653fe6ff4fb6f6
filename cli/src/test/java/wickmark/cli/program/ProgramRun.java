package wickmark.cli.program;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * A command line run by the shell in a folder of its own, with the assembled program on the PATH.
 *
 * @param said standard output and standard error, in the order in which a terminal would show them
 */
record ProgramRun(int exitCode, String said) {
  static final Path PROGRAM = Path.of("target", "wickmark").toAbsolutePath();

  static ProgramRun in(Path folder, String commandLine) {
    return in(folder, Map.of(), List.of("sh", "-c", commandLine));
  }

  static ProgramRun in(Path folder, Map<String, String> environment, List<String> command) {
    try {
      ProcessBuilder builder =
          new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true);
      builder.environment().merge("PATH", PROGRAM.resolve("bin").toString(), (a, b) -> b + ":" + a);
      // As in the tests within the process: a decimal comma shows every forgotten locale.
      builder.environment().put("WICKMARK_JAVA_OPTIONS", "-Duser.language=de -Duser.country=DE");
      builder.environment().putAll(environment);
      Path output = Files.createTempFile("said", ".txt");
      try {
        int exitCode = builder.redirectOutput(output.toFile()).start().waitFor();
        return new ProgramRun(exitCode, Files.readString(output, StandardCharsets.UTF_8));
      } finally {
        Files.delete(output);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
