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
