package wickmark.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickmark.cli.card.CardPdf;
import wickmark.cli.table.TextTable;
import wickmark.core.card.CardLayout;
import wickmark.core.card.CardSheet;
import wickmark.core.sheet.Size;

/** The card to lay a strip on. */
@Command(
    name = "card",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "Writes a sheet to print, as a PDF. Lay the strip on it and photograph both: the card gives"
          + " the picture its scale and straightens it, in place of a ruler."
    })
final class CardCommand implements Callable<Integer> {
  @Mixin private Screen screen = new Screen();

  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      defaultValue = "wickmark-card.pdf",
      description = "The file to write; ${DEFAULT-VALUE} without this.")
  private Path file = Path.of("wickmark-card.pdf");

  @Option(
      names = "--sheet",
      paramLabel = "SIZE",
      defaultValue = "a4",
      description = "Sheet to print on: a4, a5 or letter; ${DEFAULT-VALUE} without this.")
  private String sheet = "";

  @Option(names = "--replace", description = "Replace the file if it is there already.")
  private boolean replace;

  @Override
  public Integer call() {
    CardSheet on =
        CardSheet.named(sheet)
            .orElseThrow(() -> screen.wrong("--sheet is a4, a5 or letter, was \"" + sheet + "\"."));
    try {
      int exitCode = new NewFile(file, replace).write(CardPdf.of(on), screen);
      if (exitCode == ExitCode.DONE) {
        print(on, screen.out());
      }
      return exitCode;
    } catch (IOException e) {
      screen.say("The card cannot be written: " + e);
      return ExitCode.DEFECT;
    } finally {
      screen.flush();
    }
  }

  private void print(CardSheet on, PrintWriter out) {
    CardLayout layout = CardLayout.of(on);
    Size place = new Size(Math.floor(layout.place().width()), Math.floor(layout.place().height()));
    out.println(TextTable.printable(file.toString()) + ": strips of up to " + place.text() + ".");
    out.println("- Print it at 100 %, not fitted to the page, on plain white paper.");
    out.println(
        "- Measure the bar on the print with a ruler, once for each printer. Say its length when"
            + " you measure: --printed-length 100 if it is 100 mm long.");
    out.println(
        "- Lay the card flat and the dry strip flat on its grey area, with the four squares"
            + " uncovered; take the picture from above with all four squares in it.");
  }
}
