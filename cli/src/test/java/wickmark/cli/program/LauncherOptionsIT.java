package wickmark.cli.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** One photo starts quickly and stays small; many together are worth the thorough compiler. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "tests the launcher for Unix shells")
class LauncherOptionsIT {
  private static final String LAUNCHER = ProgramRun.PROGRAM.resolve("bin/wickmark").toString();
  private static final String FOR_ONE = "-XX:TieredStopAtLevel=1";
  private static final String FOR_MANY = "-XX:+UseParallelGC";

  @TempDir Path folder;

  /** What Java was told; the pictures cannot be read, which ends the run at once. */
  private String javaOptions(String... arguments) {
    List<String> command = new ArrayList<>(List.of(LAUNCHER));
    command.addAll(List.of(arguments));
    return ProgramRun.in(
            folder, Map.of("WICKMARK_JAVA_OPTIONS", "-XX:+PrintCommandLineFlags"), command)
        .said();
  }

  private String picture(String name) throws IOException {
    return Files.writeString(folder.resolve(name), "no picture").getFileName().toString();
  }

  @Test
  void onePhotoHasTheQuickCompilerWhateverFolderItIsMeasuredInto() throws IOException {
    Files.createDirectory(folder.resolve("records"));

    assertThat(javaOptions("measure", picture("a.jpg"), "--out", "records"))
        .contains(FOR_ONE)
        .doesNotContain(FOR_MANY);
    assertThat(javaOptions("measure", "--lanes", "A,?", "--unknown", "?", picture("b.jpg")))
        .contains(FOR_ONE);
  }

  @Test
  void aFolderAPatternAndAListHaveTheThoroughOne() throws IOException {
    Files.createDirectory(folder.resolve("class"));
    picture("class/a.jpg");

    assertThat(javaOptions("measure", "class")).contains(FOR_MANY).doesNotContain(FOR_ONE);
    assertThat(javaOptions("measure", "--replace", "class")).contains(FOR_MANY);
    assertThat(javaOptions("measure", "class/*.jpg")).contains(FOR_MANY);
    assertThat(javaOptions("measure", "--list", picture("list.csv"))).contains(FOR_MANY);
    assertThat(javaOptions("measure", "--json", "--list=list.csv")).contains(FOR_MANY);
  }

  @Test
  void manyFilesHaveTheThoroughOne() throws IOException {
    List<String> arguments = new ArrayList<>(List.of("measure"));
    for (int i = 0; i < 6; i++) {
      arguments.add(picture("p" + i + ".jpg"));
    }

    assertThat(javaOptions(arguments.toArray(String[]::new))).contains(FOR_MANY);
    assertThat(javaOptions(arguments.subList(0, 5).toArray(String[]::new))).contains(FOR_ONE);
  }

  @Test
  void otherCommandsHaveTheQuickOne() throws IOException {
    Files.createDirectory(folder.resolve("record"));

    assertThat(javaOptions("check", "record", picture("hand.csv"))).contains(FOR_ONE);
  }

  @Test
  void thePersonsOwnOptionsCountMost() throws IOException {
    Files.createDirectory(folder.resolve("class"));

    String said =
        ProgramRun.in(
                folder,
                Map.of("WICKMARK_JAVA_OPTIONS", "-XX:+PrintCommandLineFlags -Xmx700m"),
                List.of(LAUNCHER, "measure", "class"))
            .said();

    assertThat(said).contains("-XX:MaxHeapSize=734003200");
  }
}
