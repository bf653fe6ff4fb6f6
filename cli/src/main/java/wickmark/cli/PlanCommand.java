package wickmark.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import wickmark.cli.plan.PlanPdf;
import wickmark.cli.plan.PlanText;
import wickmark.cli.record.RecordJson;
import wickmark.core.plan.StripLayout;
import wickmark.core.sheet.Size;

/** How to lay out a strip before the run. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "Lays out a strip: baseline, origins, solvent and front, what to watch for, and cautions for"
          + " the solvent.",
      "Exit code 2 if it cannot work, with what would."
    })
final class PlanCommand implements Callable<Integer> {
  private static final int MOST_STRIPS = 200;

  @Mixin private Screen screen = new Screen();

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      required = true,
      description = "The strip: WIDTHxHEIGHT in mm, as 90x130, or a4, a5, a6, letter.")
  private String paper = "";

  @Option(
      names = "--samples",
      paramLabel = "NAMES",
      required = true,
      description = "Names of the samples from the left, as A,B,C,X; or how many there are.")
  private String samples = "";

  @Option(
      names = "--vessel",
      paramLabel = "SIZE",
      description = "Inner WIDTHxHEIGHT of the beaker or tank in mm.")
  private @Nullable String vessel;

  @Option(
      names = "--solvent",
      paramLabel = "NAME",
      defaultValue = "water",
      description =
          "The solvent; ${DEFAULT-VALUE} without this. Known with their cautions: water, salt water,"
              + " sodium hydrogencarbonate solution, ethanol, propan-2-ol, propanone, ethyl"
              + " ethanoate, petroleum ether, ammonia solution.")
  private String solvent = "";

  @Option(
      names = "--pdf",
      paramLabel = "FILE",
      description = "Write a drawing true to scale, and a table to fill in.")
  private @Nullable Path pdf;

  @Option(
      names = "--sheet",
      paramLabel = "SIZE",
      defaultValue = "a4",
      description = "Sheet of the drawing; ${DEFAULT-VALUE} without this.")
  private String sheet = "";

  @Option(
      names = "--strips",
      paramLabel = "N",
      defaultValue = "1",
      description = "How many strips to draw, for a whole class; ${DEFAULT-VALUE} without this.")
  private int strips;

  @Option(names = "--replace", description = "Replace the drawing if it is there already.")
  private boolean replace;

  @Option(names = "--json", description = "Print the plan as JSON.")
  private boolean json;

  @Override
  public Integer call() {
    try {
      StripLayout layout =
          StripLayout.of(Size.of(paper), names(), Optional.ofNullable(vessel).map(Size::of));
      if (strips < 1 || strips > MOST_STRIPS) {
        throw new IllegalArgumentException(
            "--strips lies between 1 and " + MOST_STRIPS + ", was " + strips);
      }
      int exitCode = pdf == null ? ExitCode.DONE : write(pdf, layout);
      if (json) {
        screen.out().print(RecordJson.text(asJson(layout)));
      } else {
        PlanText.lines(layout, solvent).forEach(screen.out()::println);
      }
      return exitCode;
    } catch (StripLayout.Impossible e) {
      screen.say(e);
      return ExitCode.BAD_USAGE;
    } catch (IllegalArgumentException e) {
      throw screen.wrong(e.getMessage() + ".", e);
    } catch (IOException e) {
      screen.say("The drawing cannot be written: " + e);
      return ExitCode.DEFECT;
    } finally {
      screen.flush();
    }
  }

  private List<String> names() {
    String text = samples.strip();
    if (text.matches("[0-9]{1,3}") && Integer.parseInt(text) > 0) {
      return IntStream.rangeClosed(1, Integer.parseInt(text)).mapToObj(Integer::toString).toList();
    }
    List<String> names = List.of(text.split(",", -1)).stream().map(String::strip).toList();
    if (names.stream().anyMatch(String::isEmpty)) {
      throw new IllegalArgumentException(
          "--samples is a list of names, as A,B,C,X, or a number above 0; was \"" + samples + "\"");
    }
    return names;
  }

  private int write(Path file, StripLayout layout) throws IOException {
    Size drawnOn = Size.of(sheet);
    if (PlanPdf.stripsOnASheet(drawnOn, layout.paper()) == 0) {
      screen.say(
          "A strip of "
              + layout.paper().text()
              + " does not fit on a sheet of "
              + drawnOn.text()
              + " with its margins; draw it by the figures below, or name another --sheet.");
      return ExitCode.BAD_USAGE;
    }
    return new NewFile(file, replace).write(PlanPdf.of(layout, drawnOn, strips), screen);
  }

  private static ObjectNode asJson(StripLayout layout) {
    ObjectNode all = JsonNodeFactory.instance.objectNode();
    all.putObject("paper")
        .put("widthMm", layout.paper().width())
        .put("heightMm", layout.paper().height());
    all.put("baselineMm", layout.baseline());
    all.put("solventMm", layout.solvent());
    all.put("frontMm", layout.front());
    all.put("widestSpotMm", layout.spot());
    all.put("originsApartMm", layout.apart());
    ArrayNode origins = all.putArray("origins");
    for (int i = 0; i < layout.samples().size(); i++) {
      origins
          .addObject()
          .put("sample", layout.samples().get(i))
          .put("acrossMm", layout.origins().get(i));
    }
    return all;
  }
}
