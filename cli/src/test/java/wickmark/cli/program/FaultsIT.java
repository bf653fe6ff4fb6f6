package wickmark.cli.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import wickmark.cli.record.WriteLoop;

/** The assembled program when it is killed, stopped, kept out, or when the disk is full. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "kills, mounts and permissions as on Unix")
@Timeout(180)
class FaultsIT {
  private static final String LAUNCHER = ProgramRun.PROGRAM.resolve("bin/wickmark").toString();
  private static final Path EXAMPLE = Path.of("..", "testdata", "example", "icing-scan.jpg");

  @TempDir static Path pictures;
  @TempDir Path folder;
  private static Path small = Path.of("");

  /** Half the example: as good for this, and measured sooner. */
  @BeforeAll
  static void makeASmallPicture() throws IOException {
    BufferedImage whole = ImageIO.read(EXAMPLE.toFile());
    BufferedImage half =
        new BufferedImage(
            whole.getWidth() / 2, whole.getHeight() / 2, BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D pen = half.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.drawImage(whole, 0, 0, half.getWidth(), half.getHeight(), null);
    pen.dispose();
    Files.setPosixFilePermissions(pictures, PosixFilePermissions.fromString("rwxr-xr-x"));
    small = pictures.resolve("small.png").toAbsolutePath();
    ImageIO.write(half, "png", small.toFile());
  }

  /** Another user shall be able to come this far. */
  @BeforeEach
  void openTheFolder() throws IOException {
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private ProgramRun run(String... command) {
    return ProgramRun.in(folder, Map.of(), List.of(command));
  }

  private static boolean works(String... command) {
    try {
      return new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start()
              .waitFor()
          == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** A shell lets what it starts in the background ignore Ctrl-C, and so all that this starts. */
  private static List<String> heedingCtrlC(String... command) {
    List<String> all = new ArrayList<>();
    if (works("env", "--default-signal=INT", "true")) {
      all.addAll(List.of("env", "--default-signal=INT"));
    }
    all.addAll(List.of(command));
    return all;
  }

  private static List<String> namesIn(Path place) throws IOException {
    try (Stream<Path> files = Files.list(place)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> !name.equals(".wickmark-lock")) // stays when a record was replaced
          .sorted()
          .toList();
    }
  }

  @Nested
  class Killed {
    @Test
    void inTheMiddleOfWritingItLeavesOneWholeRecord() throws Exception {
      assertThat(KillTrial.ofWriting(folder, 20)).containsExactly(Map.entry("whole", 20));
    }

    @Test
    void whatIsLeftBesideIsSweptByALaterRun() throws Exception {
      Path out = Files.createDirectory(folder.resolve("out"));
      Path left = Files.createDirectory(out.resolve(".wickmark-123"));
      Files.writeString(left.resolve("record.json"), "half");
      Path fresh = Files.createDirectory(out.resolve(".wickmark-456"));
      Files.setLastModifiedTime(
          left, java.nio.file.attribute.FileTime.from(java.time.Instant.now().minusSeconds(7200)));

      run(LAUNCHER, "measure", "no-such.jpg", "--out", out.toString());

      assertThat(left).doesNotExist();
      assertThat(fresh).exists();
    }
  }

  @Nested
  class Stopped {
    @Test
    void byCtrlCItKeepsWhatIsDoneAndGoesOnFromThere() throws Exception {
      Path class9 = Files.createDirectory(folder.resolve("class"));
      // So many that some are left, however quick the program and slow the signal.
      for (String name : List.of("a.png", "b.png", "c.png", "d.png", "e.png")) {
        Files.copy(small, class9.resolve(name));
      }
      Path said = folder.resolve("said.txt");
      Process program =
          new ProcessBuilder(
                  heedingCtrlC(LAUNCHER, "measure", "class", "--threads=1", "--out", "out"))
              .directory(folder.toFile())
              .redirectErrorStream(true)
              .redirectOutput(said.toFile())
              .start();
      while (program.isAlive() && !Files.readString(said).contains("] a.png: measured")) {
        TimeUnit.MILLISECONDS.sleep(20);
      }
      assertThat(works("kill", "-INT", String.valueOf(program.pid()))).isTrue();

      assertThat(program.waitFor()).isEqualTo(130);
      assertThat(Files.readString(said))
          .contains("Stopped. What is done is kept; the same command again goes on from there.");
      assertThat(namesIn(folder.resolve("out"))).contains("a").doesNotContain("e");
      for (String record : namesIn(folder.resolve("out"))) {
        assertThat(namesIn(folder.resolve("out").resolve(record)))
            .containsExactly("record.json", "report.html", "spots.csv", "straightened.png");
      }

      ProgramRun again = run(LAUNCHER, "measure", "class", "--threads=1", "--out", "out");

      assertThat(again.exitCode()).isZero();
      assertThat(again.said()).contains("a.png: measured before").contains("e.png: measured\n");
    }
  }

  @Nested
  class SeveralAtOnce {
    @Test
    void neverMixTheirFiles() throws Exception {
      for (int round = 0; round < 2; round++) {
        List<Process> loops = new ArrayList<>();
        for (String mark : List.of("one ", "two ", "three ")) {
          loops.add(
              new ProcessBuilder(
                      ProcessHandle.current().info().command().orElse("java"),
                      "-XX:TieredStopAtLevel=1",
                      "-cp",
                      System.getProperty(
                          "surefire.test.class.path", System.getProperty("java.class.path")),
                      WriteLoop.class.getName(),
                      folder.toString(),
                      mark,
                      "30")
                  .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                  .redirectError(ProcessBuilder.Redirect.INHERIT)
                  .start());
        }
        for (Process loop : loops) {
          assertThat(loop.waitFor()).isZero();
        }

        Set<String> marks = WriteLoop.marksIn(folder);

        assertThat(marks).hasSize(1).allMatch(mark -> mark.endsWith("29"));
        assertThat(namesIn(folder)).containsExactly("strip");
        assertThat(namesIn(folder.resolve("strip"))).hasSize(4);
      }
    }
  }

  /** A user other than the one who owns the files: root may do anything. */
  @Nested
  class WithoutPermission {
    private List<String> asAnother(String... command) {
      List<String> all = new ArrayList<>();
      if (works("sh", "-c", "[ $(id -u) = 0 ]")) {
        assumeTrue(
            works("setpriv", "--reuid=65534", "--clear-groups", "true"),
            "root cannot become another user here");
        all.addAll(List.of("setpriv", "--reuid=65534", "--clear-groups"));
      }
      all.addAll(List.of(command));
      return all;
    }

    @Test
    void toReadThePicture() throws IOException {
      Path picture = Files.copy(small, folder.resolve("strip.png"));
      Files.setPosixFilePermissions(picture, Set.of());

      ProgramRun run = ProgramRun.in(folder, Map.of(), asAnother(LAUNCHER, "measure", "strip.png"));

      assertThat(run.exitCode()).isEqualTo(3);
      assertThat(run.said())
          .isEqualTo("strip.png cannot be read: you have no permission to read it.\n");
    }

    @Test
    void toWriteTheRecord() throws IOException {
      Path out = Files.createDirectory(folder.resolve("out"));
      Files.setPosixFilePermissions(out, PosixFilePermissions.fromString("r-xr-xr-x"));
      Files.copy(small, folder.resolve("strip.png"));

      ProgramRun run =
          ProgramRun.in(
              folder, Map.of(), asAnother(LAUNCHER, "measure", "strip.png", "--out", "out"));

      assertThat(run.exitCode()).isEqualTo(1);
      assertThat(run.said())
          .isEqualTo(
              "strip.png: the record cannot be written: you have no permission to write"
                  + " there.\n");
      assertThat(namesIn(out)).isEmpty();
    }
  }

  @Nested
  class DiskFull {
    private Path disk = Path.of("");

    @BeforeEach
    void mountASmallDisk() throws IOException {
      disk = Files.createDirectory(folder.resolve("disk"));
      assumeTrue(
          works("mount", "-t", "tmpfs", "-o", "size=2m", "tmpfs", disk.toString()),
          "a small disk can be mounted by root only");
    }

    @org.junit.jupiter.api.AfterEach
    void unmount() {
      works("umount", disk.toString());
    }

    private void fill() throws IOException {
      try (var out = Files.newOutputStream(disk.resolve("filling"))) {
        byte[] block = new byte[4096];
        while (true) {
          out.write(block);
        }
      } catch (IOException e) {
        // full
      }
    }

    @Test
    void leavesNothingAndSaysSo() throws IOException {
      fill();

      ProgramRun run = run(LAUNCHER, "measure", small.toString(), "--out", "disk/out");

      assertThat(run.exitCode()).isEqualTo(1);
      assertThat(run.said())
          .isEqualTo("small.png: the record cannot be written: No space left on device.\n");
      assertThat(disk.resolve("out/small")).doesNotExist();
    }

    @Test
    void keepsTheOldRecord() throws IOException {
      run(LAUNCHER, "measure", small.toString(), "--out", "disk");
      byte[] old = Files.readAllBytes(disk.resolve("small/record.json"));
      fill();

      ProgramRun run =
          run(LAUNCHER, "measure", small.toString(), "--out", "disk", "--replace", "--title=T");

      assertThat(run.exitCode()).isEqualTo(1);
      assertThat(disk.resolve("small/record.json")).hasBinaryContent(old);
      assertThat(namesIn(disk.resolve("small"))).hasSize(4);
      assertThat(namesIn(disk)).containsExactly("filling", "small");
    }
  }

  @Nested
  class Network {
    /**
     * The system's own log of calls: sockets of the Internet families are never given an address.
     */
    @Test
    void isNeverUsed() throws IOException {
      assumeTrue(works("strace", "-o", "/dev/null", "true"), "strace cannot watch processes here");
      Path trace = folder.resolve("trace.txt");

      ProgramRun run =
          run(
              "strace",
              "-f",
              "-qq",
              "-o",
              trace.toString(),
              "-e",
              "trace=connect,bind,listen,sendto,sendmsg,sendmmsg",
              LAUNCHER,
              "measure",
              small.toString(),
              "--out",
              "out");

      assertThat(run.exitCode()).isZero();
      assertThat(Files.readAllLines(trace)).noneMatch(call -> call.contains("AF_INET"));
    }

    @Test
    void isNotNeeded() {
      assumeTrue(works("unshare", "-n", "true"), "the network cannot be taken away here");

      ProgramRun run = run("unshare", "-n", LAUNCHER, "measure", small.toString(), "--out", "out");

      assertThat(run.exitCode()).isZero();
      assertThat(folder.resolve("out/small/record.json")).exists();
    }
  }
}
