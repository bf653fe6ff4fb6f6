package wickmark.cli.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import wickmark.cli.measuring.SampleStrip;
import wickmark.cli.photo.FuzzSeeds;
import wickmark.cli.record.RecordJson;

/** What the guided search begins with. Arguments: a picture of a strip, the folder to write to. */
public final class Seeds {
  private Seeds() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[1]);
    for (Map.Entry<String, byte[]> file : FuzzSeeds.ofStrip(Path.of(arguments[0]), 40).entrySet()) {
      write(folder.resolve("pictures").resolve(file.getKey()), file.getValue());
    }
    write(folder.resolve("records/sample"), record());
    write(folder.resolve("corrections/sample"), corrections());
    write(folder.resolve("options/sample"), options());
    write(folder.resolve("readings/sample"), readings());
  }

  private static void write(Path file, byte[] content) throws IOException {
    Files.createDirectories(file.getParent());
    Files.write(file, content);
  }

  static byte[] record() {
    return RecordJson.text(RecordJson.rounded(SampleStrip.record()))
        .getBytes(StandardCharsets.UTF_8);
  }

  static byte[] corrections() {
    return """
        {"format": "wickmark-corrections/1",
         "photo": {"file": "a.jpg", "sha256": "%s"},
         "strip": {"number": 1, "of": 1, "cornersPx": [[0, 0], [9, 0], [9, 9], [0, 9]]},
         "settings": {"title": "Icing", "lanes": ["A", "X"], "unknown": ["X"], "bottom": "down",
           "corners": [[0, 0], [9, 0], [9, 9], [0, 9]], "baseline": [1, 8, 8, 8],
           "front": [1, 1, 8, 1.5], "ignore": [[0, 0, 1, 1]], "origin": [["A", 2, 8]],
           "span": [1, 2, 3, 4], "spanMillimetres": 10, "spotCentre": "middle",
           "toleranceRf": 0.05, "toleranceColour": 12,
           "spots": [["add", "A", 3, 4], ["move", "X", 5, 6, 5, 6.5], ["remove", 7, 7]]}}
        """
        .formatted("0".repeat(64))
        .getBytes(StandardCharsets.UTF_8);
  }

  /** Letters whose number, divided by that of the options, leaves the option's place. */
  static byte[] options() {
    return "LA,B,X\nMX\nQ300\nb0,0,9,0=4.5\nW1,2,3,4\n^picture,lanes|a.png,A;B"
        .getBytes(StandardCharsets.UTF_8);
  }

  static byte[] readings() {
    return "reader;lane;spot;distance_mm;rf\np1;Yolk;1;52,5 mm;0,56\n"
        .getBytes(StandardCharsets.UTF_8);
  }
}
