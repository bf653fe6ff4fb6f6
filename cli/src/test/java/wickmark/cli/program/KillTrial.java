package wickmark.cli.program;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import wickmark.cli.record.RecordFolder;
import wickmark.cli.record.WriteLoop;

/**
 * Kills processes at random moments, as a power key or a full memory does, and looks at what they
 * leave. Arguments: how often to kill the assembled program, a picture for it, how often to kill a
 * process that does nothing but write.
 */
final class KillTrial {
  private final Random random = new Random(20);
  private final Map<String, Integer> outcomes = new TreeMap<>();

  private KillTrial() {}

  public static void main(String[] arguments) throws IOException, InterruptedException {
    KillTrial trial = new KillTrial();
    Path folder = Files.createTempDirectory("wickmark-kills");
    if (Integer.parseInt(arguments[0]) > 0) {
      trial.killProgram(folder, Path.of(arguments[1]), Integer.parseInt(arguments[0]));
      trial.print("the program");
    }
    trial.killWriting(folder, Integer.parseInt(arguments[2]));
    trial.print("a process that only writes");
  }

  /** Returns how often which outcome was met when the writing process was killed. */
  static Map<String, Integer> ofWriting(Path folder, int kills)
      throws IOException, InterruptedException {
    KillTrial trial = new KillTrial();
    trial.killWriting(folder, kills);
    return trial.outcomes;
  }

  private void print(String what) {
    System.out.println(what + ": " + outcomes);
    outcomes.clear();
  }

  private void killWriting(Path folder, int kills) throws IOException, InterruptedException {
    Path out = folder.resolve("writing");
    for (int i = 0; i < kills; i++) {
      Process loop =
          new ProcessBuilder(
                  ProcessHandle.current().info().command().orElse("java"),
                  "-Xshare:auto",
                  "-XX:TieredStopAtLevel=1",
                  "-cp",
                  classPath(),
                  WriteLoop.class.getName(),
                  out.toString(),
                  "run " + i + " number ",
                  "0")
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      try (BufferedReader said = loop.inputReader(StandardCharsets.UTF_8)) {
        String line = said.readLine();
        if (line == null) {
          throw new IllegalStateException("the writing process did not start");
        }
        TimeUnit.MICROSECONDS.sleep(random.nextInt(100_000));
        loop.destroyForcibly().waitFor();
      }
      List<String> marks = new ArrayList<>(WriteLoop.marksIn(out));
      boolean record = Files.exists(out.resolve("strip/record.json"));
      boolean old = marks.size() == 1 && !marks.get(0).startsWith("run " + i + " ");
      outcomes.merge(
          !record || marks.size() != 1 || marks.get(0).startsWith("torn") || old
              ? "WRONG " + marks
              : "whole",
          1,
          Integer::sum);
    }
  }

  /** The class path as one file list; the tests' own classes are first on it. */
  private static String classPath() {
    return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"))
        .replace(File.pathSeparator + File.pathSeparator, File.pathSeparator);
  }

  private void killProgram(Path folder, Path picture, int kills)
      throws IOException, InterruptedException {
    Path out = folder.resolve("program");
    Path record = out.resolve(stem(picture));
    start(picture, out, "Title 0").waitFor(); // reads the program's files into memory
    long start = System.nanoTime();
    start(picture, out, "Title 0").waitFor();
    long wholeMicros = (System.nanoTime() - start) / 1000;
    String before = titleOf(record);
    int killed = 0;
    for (int i = 1; killed < kills; i++) {
      Process program = start(picture, out, "Title " + i);
      boolean ended =
          program.waitFor((long) (random.nextDouble() * 1.05 * wholeMicros), TimeUnit.MICROSECONDS);
      program.destroyForcibly().waitFor();
      killed += ended ? 0 : 1;
      String now = titleOf(record);
      String page = titleInPage(record, now);
      boolean right = (now.equals(before) || now.equals("Title " + i)) && page.equals(now);
      String which = now.equals(before) ? "the old record" : "the new record";
      outcomes.merge(
          !right
              ? "WRONG: " + now + " with a page of " + page
              : ended
                  ? "ended before the kill"
                  : which
                      + (complete(record)
                          ? ", whole"
                          : ", whole; some of its tables to be made again"),
          1,
          Integer::sum);
      before = now;
    }
  }

  private static Process start(Path picture, Path out, String title) throws IOException {
    return new ProcessBuilder(
            ProgramRun.PROGRAM.resolve("bin/wickmark").toString(),
            "measure",
            picture.toString(),
            "--out",
            out.toString(),
            "--replace",
            "--title",
            title)
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  private static String stem(Path picture) {
    String name = picture.getFileName().toString();
    return name.substring(0, name.lastIndexOf('.'));
  }

  private static String titleOf(Path record) throws IOException {
    return new ObjectMapper()
        .readTree(Files.readString(record.resolve(RecordFolder.RECORD)))
        .at("/settings/title")
        .asText();
  }

  private static String titleInPage(Path record, String expected) throws IOException {
    Path page = record.resolve(RecordFolder.REPORT);
    if (!Files.exists(page)) {
      return expected; // it is made after the record; what is not there cannot be wrong
    }
    String text = Files.readString(page);
    return text.contains(expected) && text.stripTrailing().endsWith("</html>")
        ? expected
        : "another title";
  }

  private static boolean complete(Path record) throws IOException {
    try (Stream<Path> files = Files.list(record)) {
      return files.filter(file -> !file.getFileName().toString().startsWith(".")).count() == 4;
    }
  }
}
