package wickmark.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import wickmark.cli.table.TextTable;

/** Where the details of a defect are left for those who can mend it. */
final class FaultFile {
  private FaultFile() {}

  /** Writes the details and returns the sentences for the person. */
  static String write(Path out, String name, Throwable fault) {
    StringWriter details = new StringWriter();
    details.write("wickmark " + Version.number() + ", Java " + Runtime.version() + "\n");
    fault.printStackTrace(new PrintWriter(details, true));
    String apology = "something failed that should not, which is a fault of the program";
    Path file = out.resolve(name + ".fault.txt");
    try {
      Files.createDirectories(out);
      Files.writeString(file, details.toString());
      return apology + "; the details are in " + TextTable.printable(file.toString()) + ".";
    } catch (IOException e) {
      return apology + " (" + fault + "); the details could not be written.";
    }
  }
}
