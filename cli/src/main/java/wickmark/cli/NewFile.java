package wickmark.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import wickmark.cli.record.ExtraFiles;

/**
 * A single file that a command makes.
 *
 * @param replace whether another that is there may be lost
 */
record NewFile(Path file, boolean replace) {

  /** Writes it, or says that another is in the way; returns the exit code. */
  int write(byte[] content, Screen screen) throws IOException {
    Path parent = file.getParent();
    Path folder = parent == null ? Path.of("") : parent;
    Map<String, byte[]> made = Map.of(String.valueOf(file.getFileName()), content);
    if (!replace && ExtraFiles.inTheWay(folder, made).isPresent()) {
      screen.say("There is another " + file + " already; use --replace.");
      return ExitCode.BAD_USAGE;
    }
    ExtraFiles.write(folder, made);
    return ExitCode.DONE;
  }
}
