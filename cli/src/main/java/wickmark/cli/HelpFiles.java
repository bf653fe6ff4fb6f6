package wickmark.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.IParamLabelRenderer;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import wickmark.cli.measuring.StripMeasuring;

/**
 * Files of the assembled program that are made of its commands when it is built: the completion for
 * shells and the page of the manual, in the macros of man(7). Argument: the folder to write to.
 */
public final class HelpFiles {
  private static final String PROGRAM = "wickmark";

  private HelpFiles() {}

  public static void main(String[] arguments) throws IOException {
    StripMeasuring none =
        (photo, said) -> {
          throw new IllegalStateException("nothing is measured while the program is built");
        };
    CommandLine line = Wickmark.commandLine(none);
    Path folder = Path.of(arguments[0]);
    write(
        folder.resolve("bash-completion/completions").resolve(PROGRAM),
        AutoComplete.bash(PROGRAM, line));
    write(folder.resolve("man/man1").resolve(PROGRAM + ".1"), manual(line));
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text, StandardCharsets.UTF_8);
  }

  static String manual(CommandLine line) {
    CommandSpec root = line.getCommandSpec();
    StringBuilder page = new StringBuilder();
    page.append(".TH WICKMARK 1 \"\" \"Wickmark " + roff(Version.number()) + "\"\n");
    page.append(".SH NAME\n" + PROGRAM + " \\- measures strips of paper chromatography\n");
    page.append(".SH SYNOPSIS\n.B " + PROGRAM + "\n.I COMMAND\n[options]\n");
    page.append(".SH DESCRIPTION\n");
    paragraphs(page, root.usageMessage().description());
    options(page, root);
    page.append(".SH COMMANDS\n");
    line.getSubcommands().values().forEach(command -> command(page, command));
    page.append(".SH NOTES\n");
    paragraphs(page, root.usageMessage().footer());
    return page.toString();
  }

  private static void command(StringBuilder page, CommandLine command) {
    CommandSpec spec = command.getCommandSpec();
    page.append(".SS " + roff(spec.qualifiedName()) + "\n");
    paragraphs(page, spec.usageMessage().description());
    spec.positionalParameters().forEach(parameter -> entry(page, "", parameter));
    options(page, spec);
    paragraphs(page, spec.usageMessage().footer());
  }

  private static void options(StringBuilder page, CommandSpec spec) {
    for (OptionSpec option : spec.options()) {
      if (!option.hidden()) {
        entry(page, String.join(", ", option.names()), option);
      }
    }
  }

  private static void entry(StringBuilder page, String names, ArgSpec argument) {
    IParamLabelRenderer labels = new Help(argument.command()).createDefaultParamLabelRenderer();
    String label =
        labels
            .renderParameterLabel(
                argument, Ansi.OFF, Help.defaultColorScheme(Ansi.OFF).parameterStyles())
            .toString();
    page.append(
        ".TP\n" + (names.isEmpty() ? "" : "\\fB" + roff(names) + "\\fR") + roff(label) + "\n");
    page.append(text(argument.description()) + "\n");
  }

  private static void paragraphs(StringBuilder page, String[] lines) {
    if (!text(lines).isBlank()) {
      page.append(".PP\n" + text(lines) + "\n");
    }
  }

  /** The lines of a help text; an empty one parts paragraphs. */
  private static String text(String[] lines) {
    return Arrays.stream(lines)
        .flatMap(line -> String.format(line).lines())
        .map(line -> Ansi.OFF.string(line).strip())
        .filter(line -> !line.isEmpty())
        .map(HelpFiles::roff)
        .collect(Collectors.joining("\n"));
  }

  /** Text as roff prints it: no minus becomes a hyphen, no first letter a command. */
  private static String roff(String text) {
    String escaped = text.replace("\\", "\\e").replace("-", "\\-");
    String ascii =
        escaped
            .codePoints()
            .mapToObj(c -> c < 0x7F ? Character.toString(c) : "\\[u%04X]".formatted(c))
            .collect(Collectors.joining());
    return ascii.startsWith(".") || ascii.startsWith("'") ? "\\&" + ascii : ascii;
  }
}
