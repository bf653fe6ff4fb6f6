package wickmark.cli.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A process that does nothing but replace one record, again and again, so that it can be killed in
 * the middle of it, or run beside another. Arguments: the output folder, a mark to put into every
 * file, how many times (0: until it is killed). Of a limited number of times it looks after each
 * whether another process has mixed its files in.
 */
public final class WriteLoop {
  private static final int FILLING = 30_000;

  private WriteLoop() {}

  public static void main(String[] arguments) throws IOException {
    RecordFolder folder = new RecordFolder(Path.of(arguments[0]), "strip");
    int times = Integer.parseInt(arguments[2]);
    for (int i = 0; times == 0 || i < times; i++) {
      folder.write(files(arguments[1] + i), true);
      if (times > 0) {
        FolderLock lock = FolderLock.of(Path.of(arguments[0]));
        try {
          if (marksIn(Path.of(arguments[0])).size() != 1) {
            throw new IllegalStateException("mixed after " + i);
          }
        } finally {
          lock.close();
        }
      }
      if (i == 0) {
        System.out.println("writing");
      }
    }
  }

  private static Map<String, byte[]> files(String mark) {
    byte[] content = (mark + "\n").repeat(FILLING).getBytes(StandardCharsets.UTF_8);
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (String name : List.of("record.json", "spots.csv", "straightened.png", "report.html")) {
      files.put(name, content);
    }
    return files;
  }

  /**
   * Returns the marks in the files of the folder: one, if every file there belongs to the record
   * that is there. A file that is not whole counts as a mark of its own.
   */
  public static Set<String> marksIn(Path out) throws IOException {
    Set<String> marks = new TreeSet<>();
    for (String name : List.of("record.json", "spots.csv", "straightened.png", "report.html")) {
      Path file = out.resolve("strip").resolve(name);
      if (Files.exists(file)) {
        String text = Files.readString(file);
        String mark = text.substring(0, Math.max(0, text.indexOf('\n')));
        marks.add(text.equals((mark + "\n").repeat(FILLING)) ? mark : "torn " + name);
      }
    }
    return marks;
  }
}
