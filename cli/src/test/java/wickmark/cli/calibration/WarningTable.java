package wickmark.cli.calibration;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.cli.measuring.PictureMeasuring;
import wickmark.cli.photo.PhotoFile;
import wickmark.cli.photo.UnreadablePictureException;
import wickmark.core.record.RunRecord;
import wickmark.imaging.ReadingRequest;

/**
 * Measures a folder of pictures with truths and tells how often a warning stands where something is
 * wrong, and where nothing is, and how far the confidences of findings tell right from wrong. Run
 * it with the folder as its only argument.
 */
public final class WarningTable {
  /** What a picture without any scale must be warned of: no needless warning. */
  private static final String NO_SCALE = "no-scale";

  private final Map<String, int[]> byCode = new TreeMap<>();
  private final int[] pictures = new int[2];
  private final int[] warned = new int[2];
  private final List<String> notes = new ArrayList<>();
  private final FindingTable findings = new FindingTable();

  private WarningTable() {}

  /** Prints the table. */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 1) {
      throw new IllegalArgumentException("name a folder of pictures with their truths");
    }
    WarningTable table = new WarningTable();
    table.measure(Path.of(arguments[0]));
    table.print(new PrintStream(System.out, true, StandardCharsets.UTF_8));
  }

  private void measure(Path folder) throws IOException {
    Map<String, List<TruthFile>> byPicture = new TreeMap<>();
    List<Path> truths;
    try (Stream<Path> files = Files.list(folder)) {
      truths = files.filter(f -> f.toString().endsWith(".truth.json")).sorted().toList();
    }
    for (Path path : truths) {
      TruthFile truth = TruthFile.read(path);
      byPicture.computeIfAbsent(truth.file(), name -> new ArrayList<>()).add(truth);
    }
    for (Map.Entry<String, List<TruthFile>> entry : byPicture.entrySet()) {
      try {
        PhotoFile file = PhotoFile.read(folder.resolve(entry.getKey()));
        List<TruthFile> strips = entry.getValue();
        count(entry.getKey(), strips, new PictureMeasuring().measure(file.photo(), said(strips)));
      } catch (UnreadablePictureException e) {
        notes.add(entry.getKey() + ": not a picture");
      }
    }
  }

  private static MeasuringRequest said(List<TruthFile> strips) {
    ReadingRequest nothing = ReadingRequest.nothing();
    List<TruthFile.Lane> lanes = strips.size() == 1 ? strips.get(0).lanes() : List.of();
    Set<String> unknowns =
        lanes.stream()
            .filter(lane -> lane.role().equals("unknown"))
            .map(TruthFile.Lane::name)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return MeasuringRequest.of(
        new ReadingRequest(
            lanes.stream().map(TruthFile.Lane::name).toList(),
            unknowns,
            OptionalInt.empty(),
            nothing.scale(),
            nothing.strip(),
            nothing.lines()));
  }

  private void count(String picture, List<TruthFile> strips, List<MeasuredStrip> outcomes) {
    if (strips.size() != outcomes.size()) {
      notes.add(picture + ": " + outcomes.size() + " strips for " + strips.size());
      return;
    }
    for (int i = 0; i < strips.size(); i++) {
      TruthFile truth = strips.get(i);
      boolean refuse = truth.expected().equals("refuse");
      if (outcomes.get(i) instanceof MeasuredStrip.Done done) {
        List<String> wrong =
            refuse ? List.of("should be refused") : StripScore.wrong(truth, done.record());
        if (!refuse) {
          findings.add(truth, done.record());
        }
        count(picture, wrong, done.record().warnings(), truth.expected().equals("rf-only"));
      } else if (!refuse) {
        notes.add(picture + ": refused, should be measured");
      }
    }
  }

  private void count(
      String picture, List<String> wrong, List<RunRecord.Warning> warnings, boolean scaleless) {
    int kind = wrong.isEmpty() ? 0 : 1;
    Set<String> codes = new TreeSet<>(warnings.stream().map(RunRecord.Warning::code).toList());
    if (scaleless) {
      codes.remove(NO_SCALE);
    }
    pictures[kind]++;
    warned[kind] += codes.isEmpty() ? 0 : 1;
    codes.forEach(code -> byCode.computeIfAbsent(code, c -> new int[2])[kind]++);
    if (!wrong.isEmpty()) {
      notes.add(picture + ": " + String.join(", ", wrong) + "; warned of " + codes);
    } else if (!codes.isEmpty()) {
      notes.add(picture + ": right; warned of " + codes);
    }
  }

  private void print(PrintStream out) {
    notes.forEach(out::println);
    out.println();
    out.println("| strips | number | warned | share |");
    out.println("| --- | ---: | ---: | ---: |");
    String[] names = {"right", "wrong"};
    for (int k = 0; k < 2; k++) {
      out.printf(
          Locale.ROOT,
          "| %s | %d | %d | %.0f %% |%n",
          names[k],
          pictures[k],
          warned[k],
          100.0 * warned[k] / Math.max(1, pictures[k]));
    }
    out.println();
    out.println("| warning | on right strips | on wrong strips |");
    out.println("| --- | ---: | ---: |");
    byCode.forEach((code, n) -> out.printf("| %s | %d | %d |%n", code, n[0], n[1]));
    out.println();
    findings.print(out);
  }
}
