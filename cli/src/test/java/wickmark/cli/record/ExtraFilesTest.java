package wickmark.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExtraFilesTest {
  @TempDir Path folder;

  private Path file(String name, Duration age) throws IOException {
    Path file = Files.writeString(folder.resolve(name), "half");
    return Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(age)));
  }

  @Test
  void whatAKilledRunLeftIsSweptByALaterOneAndNothingElse() throws IOException {
    Path left = file(".check.csv.4711.part", Duration.ofHours(2));
    Path beingWritten = file(".check.csv.4712.part", Duration.ofMinutes(1));
    Path anothers = file(".thesis.part", Duration.ofHours(2));
    Path alike = file(".check.csv.backup.part", Duration.ofHours(2));

    ExtraFiles.write(folder, Map.of("check.csv", new byte[] {'x'}));

    assertThat(left).doesNotExist();
    assertThat(beingWritten).exists();
    assertThat(anothers).exists();
    assertThat(alike).exists();
    assertThat(folder.resolve("check.csv")).hasContent("x");
  }
}
