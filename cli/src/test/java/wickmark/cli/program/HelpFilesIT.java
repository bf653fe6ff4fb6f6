package wickmark.cli.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Completion and manual of the assembled program, held against what its help says. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "is about shells of Unix")
class HelpFilesIT {
  private static final Path SHARE = ProgramRun.PROGRAM.resolve("share");
  private static final Path COMPLETION = SHARE.resolve("bash-completion/completions/wickmark");
  private static final Pattern COMMAND = Pattern.compile("(?m)^  ([a-z]+)  ");
  private static final Pattern OPTION = Pattern.compile("(?m)^ {2,6}(?:-\\w, )?(--[a-z-]+)");

  @TempDir Path folder;

  private String help(String command) {
    return ProgramRun.in(folder, "wickmark " + command + " --help").said();
  }

  private static Set<String> all(Pattern pattern, String text) {
    Set<String> found = new TreeSet<>();
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  /** What bash offers after a line, asked of bash itself. */
  private Set<String> offered(String line) {
    String script =
        """
        source '%s'
        COMP_WORDS=(%s '')
        COMP_CWORD=$((${#COMP_WORDS[@]} - 1))
        COMP_WORDS[COMP_CWORD]=$1
        _complete_wickmark
        printf '%%s\\n' "${COMPREPLY[@]}"
        """
            .formatted(COMPLETION, line);
    String dashes = run(script, "--");
    String nothing = run(script, "");
    return new TreeSet<>(Stream.concat(dashes.lines(), nothing.lines()).toList());
  }

  private String run(String script, String begun) {
    return ProgramRun.in(folder, Map.of(), List.of("bash", "-c", script, "bash", begun)).said();
  }

  @Test
  void everyCommandAndOptionIsCompletedAndInTheManual() throws IOException {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "there is no bash here");
    Set<String> commands = all(COMMAND, help(""));
    Map<String, Set<String>> options = new TreeMap<>();
    commands.forEach(command -> options.put(command, all(OPTION, help(command))));
    String manual = Files.readString(SHARE.resolve("man/man1/wickmark.1")).replace("\\-", "-");

    assertThat(commands)
        .contains("measure", "check", "reproduce", "pool", "plan", "card", "example");
    assertThat(options.get("measure")).contains("--lanes", "--corrections", "--printed-length");
    assertThat(offered("wickmark")).containsAll(commands);
    options.forEach(
        (command, named) -> {
          assertThat(named).as(command).isNotEmpty();
          assertThat(offered("wickmark " + command)).as(command).containsAll(named);
          assertThat(manual).contains(".SS wickmark " + command + "\n");
          String section = manual.substring(manual.indexOf(".SS wickmark " + command + "\n") + 4);
          int end = section.indexOf("\n.S");
          String itsOwn = end < 0 ? section : section.substring(0, end);
          assertThat(named).as(command).allSatisfy(option -> assertThat(itsOwn).contains(option));
        });
  }

  @Test
  void noGeneratorIsShipped() throws IOException {
    try (Stream<Path> jars = Files.list(ProgramRun.PROGRAM.resolve("lib"))) {
      assertThat(jars.map(jar -> jar.getFileName().toString()))
          .noneMatch(name -> name.contains("codegen") || name.contains("exec"));
    }
  }
}
