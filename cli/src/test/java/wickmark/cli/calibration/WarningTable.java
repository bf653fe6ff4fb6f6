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
import wickmark.imaging.photo.Photo;
import wickmark.testdata.noise.Dice;

/**
 * Measures folders of pictures with truths and tells how often a warning stands where something is
 * wrong, and where nothing is, and how far the confidences of findings tell right from wrong. Run
 * it with the folders as its arguments. Before them, {@code --spoil} has each picture measured once
 * more, spoilt in one of several ways and with no lanes' names said; {@code --spoil-only} only so.
 */
public final class WarningTable {
  /** What a picture without any scale must be warned of: no needless warning. */
  private static final String NO_SCALE = "no-scale";

  private final Tally drawn = new Tally();
  private final Tally spoilt = new Tally();
  private final FindingTable findings = new FindingTable();
  private final PrintStream out;

  private WarningTable(PrintStream out) {
    this.out = out;
  }

  /** Strips that were right and wrong, and the warnings on them. */
  private static final class Tally {
    private final Map<String, int[]> byCode = new TreeMap<>();
    private final int[] strips = new int[2];
    private final int[] warned = new int[2];
    private int refused;
  }

  /** Prints what was wrong or warned of in each picture, then the tables. */
  public static void main(String[] arguments) throws IOException {
    List<String> folders = new ArrayList<>(List.of(arguments));
    boolean only = folders.remove("--spoil-only");
    boolean spoil = folders.remove("--spoil") || only;
    if (folders.isEmpty()) {
      throw new IllegalArgumentException("name folders of pictures with their truths");
    }
    WarningTable table =
        new WarningTable(new PrintStream(System.out, true, StandardCharsets.UTF_8));
    for (String folder : folders) {
      table.measure(Path.of(folder), !only, spoil);
    }
    table.print();
  }

  private void measure(Path folder, boolean asDrawn, boolean spoil) throws IOException {
    Map<String, List<TruthFile>> byPicture = new TreeMap<>();
    List<Path> truths;
    try (Stream<Path> files = Files.list(folder)) {
      truths = files.filter(f -> f.toString().endsWith(".truth.json")).sorted().toList();
    }
    for (Path path : truths) {
      TruthFile truth = TruthFile.read(path);
      byPicture.computeIfAbsent(truth.file(), name -> new ArrayList<>()).add(truth);
    }
    int number = 0;
    for (Map.Entry<String, List<TruthFile>> entry : byPicture.entrySet()) {
      number++;
      Photo photo;
      try {
        photo = PhotoFile.read(folder.resolve(entry.getKey())).photo();
      } catch (UnreadablePictureException e) {
        out.println(entry.getKey() + ": not a picture");
        continue;
      }
      List<TruthFile> strips = entry.getValue();
      if (asDrawn) {
        count(entry.getKey(), strips, measured(photo, named(strips)), drawn);
      }
      if (spoil && strips.stream().noneMatch(s -> s.expected().equals("refuse"))) {
        Spoiling way = Spoiling.values()[number % Spoiling.values().length];
        Spoiling.Spoilt bad =
            way.of(photo, strips, new Dice(31L * folder.toString().hashCode() + number));
        String name = entry.getKey() + " " + way.name().toLowerCase(Locale.ROOT);
        count(name, bad.strips(), measured(bad.photo(), ReadingRequest.nothing()), spoilt);
      }
    }
  }

  private static List<MeasuredStrip> measured(Photo photo, ReadingRequest said) {
    return new PictureMeasuring().measure(photo, MeasuringRequest.of(said));
  }

  private static ReadingRequest named(List<TruthFile> strips) {
    ReadingRequest nothing = ReadingRequest.nothing();
    List<TruthFile.Lane> lanes = strips.size() == 1 ? strips.get(0).lanes() : List.of();
    Set<String> unknowns =
        lanes.stream()
            .filter(lane -> lane.role().equals("unknown"))
            .map(TruthFile.Lane::name)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return new ReadingRequest(
        lanes.stream().map(TruthFile.Lane::name).toList(),
        unknowns,
        OptionalInt.empty(),
        nothing.scale(),
        nothing.strip(),
        nothing.lines());
  }

  private void count(
      String picture, List<TruthFile> strips, List<MeasuredStrip> outcomes, Tally tally) {
    if (strips.size() != outcomes.size()) {
      out.println(picture + ": " + outcomes.size() + " strips for " + strips.size());
      return;
    }
    for (int i = 0; i < strips.size(); i++) {
      TruthFile truth = strips.get(i);
      boolean refuse = truth.expected().equals("refuse");
      if (outcomes.get(i) instanceof MeasuredStrip.Done done) {
        List<String> wrong =
            refuse ? List.of("should be refused") : StripScore.wrong(truth, done.record());
        List<FindingTable.Finding> found =
            refuse ? List.of() : FindingTable.of(truth, done.record());
        findings.add(found);
        boolean scaleless = truth.expected().equals("rf-only");
        count(picture, wrong, done.record().warnings(), scaleless, tally);
        found.forEach(f -> out.println("  " + picture + ": " + f));
      } else if (!refuse) {
        tally.refused++;
        out.println(picture + ": refused, should be measured");
      }
    }
  }

  private void count(
      String picture,
      List<String> wrong,
      List<RunRecord.Warning> warnings,
      boolean scaleless,
      Tally tally) {
    int kind = wrong.isEmpty() ? 0 : 1;
    Set<String> codes = new TreeSet<>(warnings.stream().map(RunRecord.Warning::code).toList());
    if (scaleless) {
      codes.remove(NO_SCALE);
    }
    tally.strips[kind]++;
    tally.warned[kind] += codes.isEmpty() ? 0 : 1;
    codes.forEach(code -> tally.byCode.computeIfAbsent(code, c -> new int[2])[kind]++);
    if (!wrong.isEmpty()) {
      out.println(picture + ": " + String.join(", ", wrong) + "; warned of " + codes);
    } else if (!codes.isEmpty()) {
      out.println(picture + ": right; warned of " + codes);
    }
  }

  private void print() {
    out.println();
    out.println("| strips | number | warned | share |");
    out.println("| --- | ---: | ---: | ---: |");
    print("as drawn", drawn);
    print("spoilt", spoilt);
    out.println();
    out.println("| warning | as drawn, right | wrong | spoilt, right | wrong |");
    out.println("| --- | ---: | ---: | ---: | ---: |");
    Set<String> codes = new TreeSet<>(drawn.byCode.keySet());
    codes.addAll(spoilt.byCode.keySet());
    for (String code : codes) {
      int[] n = drawn.byCode.getOrDefault(code, new int[2]);
      int[] m = spoilt.byCode.getOrDefault(code, new int[2]);
      out.printf(Locale.ROOT, "| %s | %d | %d | %d | %d |%n", code, n[0], n[1], m[0], m[1]);
    }
    out.println();
    findings.print(out);
  }

  private void print(String name, Tally tally) {
    String[] kinds = {"right", "wrong"};
    for (int k = 0; k < 2; k++) {
      if (tally.strips[k] > 0) {
        out.printf(
            Locale.ROOT,
            "| %s, %s | %d | %d | %.0f %% |%n",
            name,
            kinds[k],
            tally.strips[k],
            tally.warned[k],
            100.0 * tally.warned[k] / tally.strips[k]);
      }
    }
    if (tally.refused > 0) {
      out.printf(Locale.ROOT, "| %s, refused | %d | | |%n", name, tally.refused);
    }
  }
}
