package wickmark.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickmark.cli.pool.PoolCsv;
import wickmark.cli.pool.PoolJson;
import wickmark.cli.pool.PoolPage;
import wickmark.cli.pool.PoolTable;
import wickmark.cli.record.ExtraFiles;
import wickmark.cli.record.RecordFile;
import wickmark.cli.record.RecordFolder;
import wickmark.cli.record.UnreadableRecordException;
import wickmark.core.pool.PooledStrips;
import wickmark.core.record.RunRecord;

/** Several records of the same samples together. */
@Command(
    name = "pool",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    customSynopsis = "wickmark pool RECORD... [OPTIONS]",
    description = {
      "Puts strips of the same samples together: mean, spread and outliers of each spot's Rf.",
      "Lanes of one name are repeats of one sample."
    })
final class PoolCommand implements Callable<Integer> {
  @Mixin private Screen screen = new Screen();

  @Parameters(
      paramLabel = "RECORD",
      arity = "1..*",
      hideParamSyntax = true,
      description = "Folders of records, their record.json, or folders with such folders in them.")
  private List<Path> named = List.of();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder for pool.csv and pool.html; without it none is written.")
  private @Nullable Path out;

  @Option(names = "--replace", description = "Replace these files if they are there already.")
  private boolean replace;

  @Option(names = "--json", description = "Print the result as JSON.")
  private boolean json;

  @Override
  public Integer call() {
    List<RunRecord> records = new ArrayList<>();
    int exitCode = readAll(records);
    try {
      if (records.isEmpty()) {
        screen.say("There is no record to pool.");
        return Math.max(exitCode, ExitCode.UNREADABLE);
      }
      PooledStrips pooled = PooledStrips.of(records);
      if (json) {
        screen.out().print(PoolJson.text(records, pooled));
      } else {
        PoolTable.lines(records, pooled).forEach(screen.out()::println);
      }
      screen.out().flush();
      return out == null ? exitCode : Math.max(exitCode, write(out, records, pooled));
    } catch (IOException e) {
      screen.say("The result cannot be written: " + e);
      return ExitCode.DEFECT;
    } finally {
      screen.flush();
    }
  }

  private int readAll(List<RunRecord> records) {
    int exitCode = ExitCode.DONE;
    Map<List<Object>, Path> seen = new HashMap<>();
    for (Path name : named) {
      for (Path file : recordsIn(name)) {
        try {
          RunRecord record = RecordFile.read(file);
          Path twin =
              seen.putIfAbsent(List.of(record.photo().sha256(), record.strip().cornersPx()), file);
          if (twin == null) {
            records.add(record);
          } else {
            screen.say(file + " is of the same strip as " + twin + "; it counts once.");
          }
        } catch (UnreadableRecordException e) {
          screen.say(e);
          exitCode = ExitCode.UNREADABLE;
        }
      }
    }
    return exitCode;
  }

  /** A folder that is no record stands for the records in it, in the order of their names. */
  private static List<Path> recordsIn(Path name) {
    if (!Files.isDirectory(name) || Files.exists(name.resolve(RecordFolder.RECORD))) {
      return List.of(name);
    }
    try (Stream<Path> inside = Files.list(name)) {
      List<Path> records =
          inside
              .filter(folder -> Files.isRegularFile(folder.resolve(RecordFolder.RECORD)))
              .sorted()
              .toList();
      return records.isEmpty() ? List.of(name) : records;
    } catch (IOException e) {
      return List.of(name); // reading it as a record says what is wrong
    }
  }

  private int write(Path folder, List<RunRecord> records, PooledStrips pooled) throws IOException {
    Map<String, byte[]> made = new LinkedHashMap<>();
    made.put("pool.csv", PoolCsv.text(records, pooled).getBytes(StandardCharsets.UTF_8));
    made.put("pool.html", PoolPage.html(records, pooled).getBytes(StandardCharsets.UTF_8));
    Optional<Path> inTheWay = replace ? Optional.empty() : ExtraFiles.inTheWay(folder, made);
    if (inTheWay.isPresent()) {
      screen.say(
          "There is another "
              + inTheWay.get()
              + " already, so nothing was written; use --replace or another --out.");
      return ExitCode.BAD_USAGE;
    }
    ExtraFiles.write(folder, made);
    screen.say("pool.csv and pool.html are in " + folder + ".");
    return ExitCode.DONE;
  }
}
