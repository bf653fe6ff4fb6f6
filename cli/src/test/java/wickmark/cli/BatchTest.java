package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.cli.measuring.PictureMeasuring;
import wickmark.cli.measuring.SampleStrip;
import wickmark.cli.measuring.StripMeasuring;
import wickmark.imaging.ReadingRequest;

@Timeout(120)
class BatchTest {
  private static final Path EXAMPLES = Path.of("..", "testdata", "example");

  @TempDir Path folder;

  private Path picture(String name) throws IOException {
    Path file = folder.resolve(name);
    ImageIO.write(new BufferedImage(12, 20, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
    return file;
  }

  private CommandLineRun measure(StripMeasuring measuring, Object... more) {
    Object[] arguments =
        Stream.concat(Stream.of("measure", "--out", folder.resolve("out")), Stream.of(more))
            .toArray();
    return CommandLineRun.of(measuring, arguments);
  }

  private static Map<String, byte[]> filesIn(Path folder) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }

  @Nested
  class SeveralAtATime {
    /** The real measurement: nothing in it may remember or depend on what runs beside it. */
    @Test
    void giveTheSameBytesAndTheSameTableAsOneAtATime() throws IOException {
      List<CommandLineRun> runs = new ArrayList<>();
      for (String threads : List.of("1", "2")) {
        runs.add(
            CommandLineRun.of(
                new PictureMeasuring(),
                "measure",
                EXAMPLES.resolve("icing-scan.jpg"),
                EXAMPLES.resolve("icing-bench.jpg"),
                "--lanes=Yolk,Rose,Sky,Leaf,Icing",
                "--unknown=Icing",
                "--threads=" + threads,
                "--out",
                folder.resolve(threads)));
      }

      assertThat(runs.get(1).out()).isEqualTo(runs.get(0).out());
      Map<String, byte[]> one = filesIn(folder.resolve("1"));
      Map<String, byte[]> two = filesIn(folder.resolve("2"));
      // Four files a record, and the overview.
      assertThat(one).hasSize(9);
      assertThat(two).containsOnlyKeys(one.keySet());
      one.forEach((name, bytes) -> assertThat(two.get(name)).as(name).isEqualTo(bytes));
    }

    @Test
    void areToldInTheOrderInWhichTheyWereNamed() throws IOException {
      List<Object> pictures = new ArrayList<>();
      for (int i = 0; i < 40; i++) {
        pictures.add(picture(String.format("p%02d.png", i)));
      }
      AtomicInteger calls = new AtomicInteger();
      StripMeasuring uneven =
          (photo, said) -> {
            if (calls.incrementAndGet() % 5 == 1) {
              LockSupport.parkNanos(2_000_000);
            }
            return SampleStrip.measuring().measure(photo, said);
          };
      pictures.add("--threads=7");

      CommandLineRun run = measure(uneven, pictures.toArray());

      List<String> told = run.err().lines().filter(line -> line.startsWith("[")).toList();
      assertThat(told)
          .containsExactlyElementsOf(
              IntStream.range(0, 40)
                  .mapToObj(i -> String.format("[%d of 40] p%02d.png: measured", i + 1, i))
                  .toList());
    }

    @Test
    void noMoreThanSaidAreInMemory() throws IOException {
      List<Object> pictures = new ArrayList<>();
      for (int i = 0; i < 60; i++) {
        pictures.add(picture("p" + i + ".png"));
      }
      AtomicInteger now = new AtomicInteger();
      AtomicInteger most = new AtomicInteger();
      StripMeasuring counting =
          (photo, said) -> {
            most.accumulateAndGet(now.incrementAndGet(), Math::max);
            LockSupport.parkNanos(2_000_000);
            now.decrementAndGet();
            return SampleStrip.measuring().measure(photo, said);
          };
      pictures.add("--threads=3");

      assertThat(measure(counting, pictures.toArray()).exitCode()).isEqualTo(ExitCode.DONE);
      assertThat(most.get()).isBetween(1, 3);
    }

    /** With less memory than several need together, each still comes out as it would alone. */
    @Test
    void aPictureThatNeedsAllTheMemoryIsMeasuredAlone() throws IOException {
      List<Object> pictures = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        pictures.add(picture("p" + i + ".png"));
      }
      AtomicInteger now = new AtomicInteger();
      AtomicInteger failures = new AtomicInteger();
      StripMeasuring hungry =
          (photo, said) -> {
            try {
              int beside = now.incrementAndGet();
              Thread.sleep(20);
              if (beside > 1 || now.get() > 1) {
                failures.incrementAndGet();
                throw new OutOfMemoryError("as if");
              }
              return SampleStrip.measuring().measure(photo, said);
            } catch (InterruptedException e) {
              throw new IllegalStateException(e);
            } finally {
              now.decrementAndGet();
            }
          };
      pictures.add("--threads=4");

      CommandLineRun run = measure(hungry, pictures.toArray());

      assertThat(run.exitCode()).as(run.err()).isEqualTo(ExitCode.DONE);
      assertThat(failures.get()).isPositive();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "257", "many"})
    void asManyAsMakeSense(String threads) throws IOException {
      CommandLineRun run =
          measure(SampleStrip.measuring(), picture("a.png"), "--threads=" + threads);

      assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
      assertThat(run.err()).contains("--threads");
    }
  }

  @Nested
  class ManyPictures {
    @Test
    void oneBadOneAmongManyStopsNone() throws IOException {
      byte[] png = Files.readAllBytes(picture("one.png"));
      Path pictures = Files.createDirectory(folder.resolve("class"));
      for (int i = 0; i < 120; i++) {
        Files.write(pictures.resolve("p" + i + ".png"), i == 50 ? new byte[] {1, 0, 2} : png);
      }

      CommandLineRun run = measure(SampleStrip.measuring(), pictures, "--threads=2");

      assertThat(run.exitCode()).isEqualTo(ExitCode.UNREADABLE);
      try (Stream<Path> records = Files.list(folder.resolve("out")).filter(Files::isDirectory)) {
        assertThat(records).hasSize(119);
      }
      assertThat(run.err())
          .contains(
              "120 pictures: 119 measured, 0 measured before, 0 in part, 1 not measured; 119 with"
                  + " warnings.")
          .containsPattern("p50.png +not measured +it is not a JPEG, PNG, TIFF, WebP or BMP");
    }

    @Test
    void aSecondRunSkipsWhatIsDone() throws IOException {
      Path pictures = Files.createDirectory(folder.resolve("class"));
      byte[] png = Files.readAllBytes(picture("one.png"));
      for (int i = 0; i < 10; i++) {
        Files.write(pictures.resolve("p" + i + ".png"), png);
      }
      measure(SampleStrip.measuring(), pictures);
      Files.write(pictures.resolve("late.png"), png);
      AtomicInteger measured = new AtomicInteger();

      CommandLineRun run =
          measure(
              (photo, said) -> {
                measured.incrementAndGet();
                return SampleStrip.measuring().measure(photo, said);
              },
              pictures);

      assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
      assertThat(measured.get()).isEqualTo(1);
      assertThat(run.err()).contains("11 pictures: 1 measured, 10 measured before");
    }

    @Test
    void theSummarySaysWhyOfEachThatWasNot() throws IOException {
      StripMeasuring choosy =
          (photo, said) ->
              photo.widthPx() == 12
                  ? SampleStrip.measuring().measure(photo, said)
                  : List.of(new MeasuredStrip.Refused("No strip was found."));
      Path other = folder.resolve("blank.png");
      ImageIO.write(new BufferedImage(9, 9, BufferedImage.TYPE_INT_RGB), "png", other.toFile());

      CommandLineRun run = measure(choosy, picture("a.png"), other, folder.resolve("gone.png"));

      assertThat(run.exitCode()).isEqualTo(ExitCode.NOT_MEASURABLE);
      assertThat(run.err())
          .containsPattern("a.png +measured +1 warning")
          .containsPattern("blank.png +not measured +No strip was found.")
          .containsPattern("gone.png +not measured +there is no such file.");
    }

    @Test
    void aPatternStandsForTheFilesThatItMatches() throws IOException {
      picture("b1.png");
      picture("b2.png");
      picture("c.png");

      CommandLineRun run = measure(SampleStrip.measuring(), folder.resolve("b*.png"));

      assertThat(run.err()).contains("[1 of 2] b1.png").contains("[2 of 2] b2.png");
      assertThat(measure(SampleStrip.measuring(), folder.resolve("x*.png")).err())
          .contains("x*.png cannot be read: there is no such file.");
    }
  }

  @Nested
  class FromATable {
    private final List<ReadingRequest> heard = Collections.synchronizedList(new ArrayList<>());

    private CommandLineRun run(String table, Object... more) throws IOException {
      picture("one.png");
      picture("two.png");
      Path file = Files.writeString(folder.resolve("class.csv"), table);
      Object[] all =
          Stream.concat(Stream.of("--list", file, "--threads=1"), Stream.of(more)).toArray();
      return measure(this::hear, all);
    }

    private List<MeasuredStrip> hear(wickmark.imaging.photo.Photo photo, MeasuringRequest said) {
      heard.add(said.reading());
      return SampleStrip.measuring().measure(photo, said);
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "picture,lanes,unknown\none.png,\"A,B,X\",X\ntwo.png,,\n",
          "Picture;Lanes;Unknown\none.png;A,B,X;X\ntwo.png;;\n",
          "unknown\tpicture\tlanes\nX\tone.png\tA;B;X\n\ttwo.png\n",
          "\uFEFFpicture,lanes,unknown\r\none.png,A;B;X,X\r\ntwo.png\r\n"
        })
    void eachPictureHasItsOwnLanes(String table) throws IOException {
      CommandLineRun run = run(table, "--lanes=D,E,F");

      assertThat(run.exitCode()).as(run.err()).isEqualTo(ExitCode.DONE);
      assertThat(heard.get(0).laneNames()).containsExactly("A", "B", "X");
      assertThat(heard.get(0).unknowns()).containsExactly("X");
      assertThat(heard.get(1).laneNames()).containsExactly("D", "E", "F");
      assertThat(heard.get(1).unknowns()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "",
          "picture,lanes,unknown\n",
          "photo,lanes\none.png,A\n",
          "picture,lanes,dpi\none.png,A,300\n",
          "picture,lanes,unknown\none.png,\"A,B\",X\n",
          "picture,lanes,unknown\n,\"A,B\",A\n",
          "picture,lanes,unknown\none.png,\"A,B,A\n",
          "picture,lanes,unknown\none.png,A,A\none.png,B,B\n"
        })
    void whatMakesNoSenseIsSaidBeforeAnythingIsDone(String table) throws IOException {
      CommandLineRun run = run(table);

      assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
      assertThat(run.err()).doesNotContain("Exception").doesNotContain("\tat ");
      assertThat(heard).isEmpty();
    }

    @Test
    void noTableIsExit3() {
      CommandLineRun run = measure(SampleStrip.measuring(), "--list", folder.resolve("gone.csv"));

      assertThat(run.exitCode()).isEqualTo(ExitCode.UNREADABLE);
      assertThat(run.err()).contains("gone.csv cannot be read: there is no such file.");
    }
  }
}
