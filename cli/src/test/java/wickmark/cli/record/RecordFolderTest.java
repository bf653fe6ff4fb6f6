package wickmark.cli.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordFolderTest {
  @TempDir Path out;

  private static Map<String, byte[]> files(String content) {
    byte[] bytes = content.getBytes(StandardCharsets.UTF_8);
    return Map.of("record.json", bytes, "spots.csv", bytes, "report.html", bytes);
  }

  private static List<String> namesIn(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> String.valueOf(file.getFileName())).sorted().toList();
    }
  }

  @Test
  void appearsWholeAndAlone() throws Exception {
    RecordFolder folder = new RecordFolder(out.resolve("deep/er"), "strip");

    folder.write(files("new"), false);

    assertThat(folder.holdsRecord()).isTrue();
    assertThat(namesIn(folder.path())).containsExactly("record.json", "report.html", "spots.csv");
    assertThat(namesIn(out.resolve("deep/er"))).containsExactly("strip");
  }

  @Test
  void keepsARecordThatIsThere() throws Exception {
    RecordFolder folder = new RecordFolder(out, "strip");
    folder.write(files("old"), false);

    assertThatThrownBy(() -> folder.write(files("new"), false))
        .isInstanceOf(RecordExistsException.class);
    assertThat(folder.path().resolve("record.json")).hasContent("old");
    assertThat(namesIn(out)).containsExactly(".wickmark-lock", "strip");
  }

  @Test
  void replacesItsOwnFilesAndNoOthers() throws Exception {
    RecordFolder folder = new RecordFolder(out, "strip");
    folder.write(files("old"), false);
    Files.writeString(folder.path().resolve("notes.txt"), "mine");

    folder.write(files("new"), true);

    assertThat(folder.path().resolve("record.json")).hasContent("new");
    assertThat(folder.path().resolve("report.html")).hasContent("new");
    assertThat(folder.path().resolve("notes.txt")).hasContent("mine");
    assertThat(namesIn(out)).containsExactly(".wickmark-lock", "strip");
  }

  @Test
  void fillsAFolderThatHoldsNoRecord() throws Exception {
    Files.createDirectories(out.resolve("strip"));
    Files.writeString(out.resolve("strip/notes.txt"), "mine");

    new RecordFolder(out, "strip").write(files("new"), false);

    assertThat(namesIn(out.resolve("strip")))
        .containsExactly("notes.txt", "record.json", "report.html", "spots.csv");
  }

  @Test
  void leavesItsPlaceToARunThatWasFaster() throws Exception {
    RecordFolder folder = new RecordFolder(out, "strip");
    folder.write(files("of the faster"), false);
    Path beside = Files.createDirectory(out.resolve("beside"));
    Files.writeString(beside.resolve("record.json"), "of the slower");

    assertThat(folder.movedWhole(beside)).isFalse();

    assertThat(folder.path().resolve("record.json")).hasContent("of the faster");
    assertThat(beside.resolve("record.json")).hasContent("of the slower");
  }

  @Test
  void saysWhyItCouldNotBeMoved() {
    RecordFolder folder = new RecordFolder(out.resolve("not/there"), "strip");

    assertThatThrownBy(() -> folder.movedWhole(out.resolve("nothing")))
        .isInstanceOf(NoSuchFileException.class);
  }
}
