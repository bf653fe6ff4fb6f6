package wickmark.cli.fuzz;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import wickmark.cli.ProgramInProcess;
import wickmark.cli.measuring.PictureMeasuring;
import wickmark.cli.measuring.SampleStrip;
import wickmark.cli.photo.FuzzSeeds;

/**
 * Damages whole pictures by chance and gives them to the program, from the command line on.
 * Arguments: a picture of a strip, how many files, a seed, by how much smaller to make the picture.
 * Prints what came out, and each file that came out wrong, which it leaves in the folder {@code
 * mutation-faults}.
 *
 * <p>Wrong is: another exit code than 0, 3 or 4; more than one sentence a strip; anything that
 * looks like a stack trace; files left by a picture that was not measured; more than a minute of
 * computing.
 */
public final class MutationRun {
  /** Of computing: how long that takes on the clock depends on what else the machine does. */
  private static final long HANG_SECONDS = 60;

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private final Path folder;
  private final Map<String, Integer> outcomes = new TreeMap<>();
  private final AtomicLong startedAt = new AtomicLong();
  private volatile Path current = Path.of("");
  private long slowestMillis;
  private byte[] slowest = {};
  private int wrong;

  private MutationRun(Path folder) {
    this.folder = folder;
  }

  public static void main(String[] arguments) throws IOException {
    MutationRun run = new MutationRun(Files.createTempDirectory("wickmark-mutations"));
    run.watch();
    run.damage(
        FuzzSeeds.ofStrip(Path.of(arguments[0]), 6),
        Integer.parseInt(arguments[1]),
        Long.parseLong(arguments[2]));
    run.print(Integer.parseInt(arguments[1]));
  }

  /** Returns the files that came out wrong, of a short run. */
  static int wrongOf(Path strip, Path folder, int files, long seed) throws IOException {
    MutationRun run = new MutationRun(folder);
    run.damage(FuzzSeeds.ofStrip(strip, 12), files, seed);
    return run.wrong;
  }

  /**
   * One file in a hundred is made from a strip: to measure one that is still whole takes seconds.
   */
  private void damage(Map<String, byte[]> strips, int files, long seed) throws IOException {
    List<Map.Entry<String, byte[]>> strip = List.copyOf(strips.entrySet());
    List<Map.Entry<String, byte[]>> nothing = List.copyOf(FuzzSeeds.ofNothing().entrySet());
    for (int i = 0; i < files; i++) {
      Random random = new Random(seed * 1_000_003 + i);
      List<Map.Entry<String, byte[]>> whole = i % 100 == 0 ? strip : nothing;
      Map.Entry<String, byte[]> one = whole.get(random.nextInt(whole.size()));
      byte[] other = whole.get(random.nextInt(whole.size())).getValue();
      byte[] damaged = new Mutation(random).of(one.getValue(), other);
      Path file = Files.write(folder.resolve("strip-" + one.getKey()), damaged);
      measure(file, i);
      Files.delete(file);
      if (files > 1000 && (i + 1) % 1000 == 0) {
        System.out.printf(Locale.ROOT, "%d files, %s, %d wrong%n", i + 1, outcomes, wrong);
      }
    }
  }

  private void measure(Path file, int number) throws IOException {
    Path out = folder.resolve("out");
    StringWriter said = new StringWriter();
    current = file;
    long cpuStart = THREADS.getCurrentThreadCpuTime();
    startedAt.set(System.nanoTime());
    int exitCode;
    String fault = "";
    try {
      exitCode =
          ProgramInProcess.run(
              number % 10 == 0 ? new PictureMeasuring() : SampleStrip.measuring(),
              new PrintWriter(said, true),
              "measure",
              file.toString(),
              "--out",
              out.toString());
    } catch (RuntimeException | Error e) {
      exitCode = -1;
      fault = e.toString();
    }
    startedAt.set(0);
    long millis = (THREADS.getCurrentThreadCpuTime() - cpuStart) / 1_000_000;
    if (millis > slowestMillis) {
      slowestMillis = millis;
      slowest = Files.readAllBytes(file);
    }
    outcomes.merge("exit " + exitCode, 1, Integer::sum);
    String text = said.toString();
    boolean right =
        (exitCode == 0 || exitCode == 3 || exitCode == 4)
            && !text.contains("Exception")
            && !text.contains("\tat ")
            && text.contains(file.getFileName().toString())
            && (exitCode == 0 || text.strip().lines().count() == 1 || exitCode == 4)
            && (exitCode != 3 || !Files.exists(out))
            && millis < HANG_SECONDS * 1000;
    if (text.contains("more memory")) {
      outcomes.merge("of these short of memory", 1, Integer::sum);
    }
    if (!right) {
      wrong++;
      Path kept = Files.createDirectories(Path.of("mutation-faults"));
      Files.copy(
          file,
          kept.resolve(number + "-" + file.getFileName()),
          java.nio.file.StandardCopyOption.REPLACE_EXISTING);
      System.out.println("WRONG " + number + " " + exitCode + " " + fault + " " + text);
    }
    delete(out);
  }

  private static void delete(Path out) throws IOException {
    if (Files.exists(out)) {
      try (Stream<Path> files = Files.walk(out)) {
        for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  /** A file that keeps the program for ten minutes on the clock ends the run, and is named. */
  private void watch() {
    Thread watch =
        new Thread(
            () -> {
              while (true) {
                try {
                  Thread.sleep(1000);
                } catch (InterruptedException e) {
                  return;
                }
                long start = startedAt.get();
                if (start != 0 && System.nanoTime() - start > 10 * HANG_SECONDS * 1_000_000_000L) {
                  System.out.println("HANGS on " + current);
                  Runtime.getRuntime().halt(1);
                }
              }
            },
            "watch");
    watch.setDaemon(true);
    watch.start();
  }

  private void print(int files) throws IOException {
    System.out.printf(
        Locale.ROOT,
        "%d files: %s; %d wrong; slowest %d ms of computing; at most %d MB of memory allowed%n",
        files,
        outcomes,
        wrong,
        slowestMillis,
        Runtime.getRuntime().maxMemory() >> 20);
    Files.write(Path.of("mutation-slowest"), slowest);
  }
}
