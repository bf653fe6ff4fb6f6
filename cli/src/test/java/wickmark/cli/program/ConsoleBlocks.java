package wickmark.cli.program;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The blocks of a Markdown text that show a console: a command after "$ ", then what it prints. */
final class ConsoleBlocks {
  private static final Pattern BLOCK =
      Pattern.compile("(?ms)^```console\\n\\$ (?<command>[^\\n]*)\\n(?<output>.*?)^```$");

  /** A command and what the text says that it prints, with the line feed at its end. */
  record Block(String command, String output) {}

  private ConsoleBlocks() {}

  static List<Block> of(String markdown) {
    List<Block> blocks = new ArrayList<>();
    Matcher matcher = BLOCK.matcher(markdown);
    while (matcher.find()) {
      blocks.add(new Block(matcher.group("command"), matcher.group("output")));
    }
    return blocks;
  }

  /** Returns the text with what each command printed in place of what it said. */
  static String rewritten(String markdown, UnaryOperator<String> printedBy) {
    return BLOCK
        .matcher(markdown)
        .replaceAll(
            match -> {
              String command = match.group(1);
              return Matcher.quoteReplacement(
                  "```console\n$ " + command + "\n" + printedBy.apply(command) + "```");
            });
  }
}
