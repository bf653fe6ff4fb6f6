package wickmark.cli.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

@DisabledOnOs(value = OS.WINDOWS, disabledReason = "tests the launcher for Unix shells")
class PackagedProgramIT {
  private static final String LAUNCHER = ProgramRun.PROGRAM.resolve("bin/wickmark").toString();

  @TempDir Path folder;

  private ProgramRun run(String... command) {
    return ProgramRun.in(folder, Map.of(), List.of(command));
  }

  @Test
  void startsThroughASymbolicLinkFromAnotherFolder() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("wm"), Path.of(LAUNCHER));
    Path second = Files.createSymbolicLink(folder.resolve("again"), link.getFileName());

    assertThat(run(second.toString(), "--version").said()).startsWith("wickmark ");
  }

  @Test
  void startsFromAFolderWithSpacesInItsName() throws IOException {
    Path copy = copyOfTheProgram(folder.resolve("My programs").resolve("wick mark"));

    ProgramRun run = run(copy.resolve("bin/wickmark").toString(), "--version");

    assertThat(run.said()).startsWith("wickmark ");
    assertThat(run.exitCode()).isZero();
  }

  @Test
  void passesOnArgumentsAsTheyAre() {
    String name = "no such *picture* $HOME, ü.jpg";

    ProgramRun run = run(LAUNCHER, "measure", name);

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.said()).contains(name);
  }

  @Test
  void measuresAPictureWithSpacesAndUmlautsInItsNameWhateverTheLocale() throws IOException {
    assertThat(run(LAUNCHER, "example", "examples").exitCode()).isZero();
    Path picture = Path.of("examples", "Süße Probe 1.jpg");
    Files.move(folder.resolve("examples/icing-scan.jpg"), folder.resolve(picture));

    ProgramRun run =
        ProgramRun.in(
            folder,
            Map.of("LC_ALL", "C", "LANG", "C"),
            List.of(LAUNCHER, "measure", picture.toString()));

    assertThat(run.exitCode()).isZero();
    assertThat(folder.resolve("wickmark-records/Süße Probe 1/record.json")).isNotEmptyFile();
  }

  @Test
  void saysThatJavaIsMissing() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    Path tools = Files.createDirectory(folder.resolve("tools"));
    for (String tool : List.of("dirname", "readlink")) {
      Path script = tools.resolve(tool);
      Files.writeString(script, "#!/bin/sh\nexec /usr/bin/" + tool + " \"$@\"\n");
      assertThat(script.toFile().setExecutable(true)).isTrue();
    }

    ProgramRun run =
        ProgramRun.in(
            empty,
            Map.of("PATH", tools.toString(), "JAVA_HOME", ""),
            List.of("/bin/sh", LAUNCHER, "--version"));

    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.said()).startsWith("wickmark: Java 17 or newer is needed");
  }

  @Test
  void everyLibraryOfTheManifestIsThere() throws IOException {
    try (Stream<Path> files = Files.list(ProgramRun.PROGRAM.resolve("lib"))) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .contains("wickmark.jar")
          .noneMatch(name -> name.contains("junit") || name.contains("testdata"));
    }
  }

  /** Each with its version and its licence, as the build knows them. */
  @Test
  void theBillOfMaterialsNamesEveryLibrary() throws IOException {
    Path written = ProgramRun.PROGRAM.resolve("wickmark-bom.json");
    assumeTrue(Files.exists(written), "not made by a build that is told to be offline");
    Set<String> named = new TreeSet<>();
    JsonNode bill = new ObjectMapper().readTree(written.toFile());
    for (JsonNode part : bill.path("components")) {
      assertThat(part.path("licenses")).as(part.path("name").asText()).isNotEmpty();
      named.add(part.path("name").asText() + "-" + part.path("version").asText() + ".jar");
    }

    try (Stream<Path> files = Files.list(ProgramRun.PROGRAM.resolve("lib"))) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .filteredOn(name -> !name.equals("wickmark.jar"))
          .containsExactlyInAnyOrderElementsOf(named);
    }
  }

  private static Path copyOfTheProgram(Path target) throws IOException {
    Files.createDirectories(target);
    try (Stream<Path> files = Files.walk(ProgramRun.PROGRAM)) {
      for (Path file : files.toList()) {
        Path to = target.resolve(ProgramRun.PROGRAM.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(to);
        } else {
          Files.copy(file, to, java.nio.file.StandardCopyOption.COPY_ATTRIBUTES);
        }
      }
    }
    return target;
  }

  @Test
  void carriesTheExamplesThatAreInTheRepository() throws IOException {
    run(LAUNCHER, "example", "examples");

    try (Stream<Path> stored = Files.list(Path.of("..", "testdata", "example"))) {
      for (Path file : stored.toList()) {
        assertThat(folder.resolve("examples").resolve(file.getFileName().toString()))
            .hasBinaryContent(Files.readAllBytes(file));
      }
    }
    assertThat(Files.readString(folder.resolve("examples/README.md"), StandardCharsets.UTF_8))
        .contains("invented");
  }
}
