package wickmark.cli.calibration;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.photo.PhotoFile;
import wickmark.cli.photo.UnreadablePictureException;
import wickmark.core.record.RunRecord;
import wickmark.imaging.ReadingRequest;
import wickmark.imaging.photo.Photo;
import wickmark.testdata.noise.Dice;

/**
 * Measures folders of pictures with truths and tells how often a warning stands where something is
 * wrong, and where nothing is, and how far the confidences of findings tell right from wrong. Run
 * it with the folders as its arguments, and how the pictures are to be measured before them: {@code
 * --named} as drawn, with the lanes' names said, {@code --unnamed} as drawn and nothing said,
 * {@code --spoilt} spoilt in one of several ways, with names for every second of each way.
 */
public final class WarningTable {
  /** What a picture without any scale must be warned of: no needless warning. */
  private static final String NO_SCALE = "no-scale";

  private final Map<Way, Tally> tallies = new EnumMap<>(Way.class);
  private final FindingTable findings = new FindingTable();
  private final PrintStream out;

  private WarningTable(PrintStream out) {
    this.out = out;
  }

  /** How pictures are measured. */
  private enum Way {
    NAMED,
    UNNAMED,
    SPOILT;

    private String option() {
      return "--" + name().toLowerCase(Locale.ROOT);
    }
  }

  /** Strips that were right and wrong, and the warnings on them. */
  private static final class Tally {
    private final Map<String, int[]> byCode = new TreeMap<>();
    private final int[] strips = new int[2];
    private final int[] warned = new int[2];
    private final int[] doubted = new int[2];
    private int refused;
  }

  /** Prints what was wrong or warned of in each picture, then the tables. */
  public static void main(String[] arguments) throws IOException {
    List<String> folders = new ArrayList<>(List.of(arguments));
    Set<Way> ways = EnumSet.noneOf(Way.class);
    for (Way way : Way.values()) {
      if (folders.remove(way.option())) {
        ways.add(way);
      }
    }
    if (folders.isEmpty() || ways.isEmpty()) {
      throw new IllegalArgumentException(
          "say --named, --unnamed or --spoilt, then folders of pictures with their truths");
    }
    WarningTable table =
        new WarningTable(new PrintStream(System.out, true, StandardCharsets.UTF_8));
    for (String folder : folders) {
      table.measure(Path.of(folder), ways);
    }
    table.print();
  }

  private void measure(Path folder, Set<Way> ways) throws IOException {
    int number = 0;
    for (Map.Entry<String, List<TruthFile>> entry : TruthSet.read(folder).entrySet()) {
      number++;
      Photo photo;
      try {
        photo = PhotoFile.read(folder.resolve(entry.getKey())).photo();
      } catch (UnreadablePictureException e) {
        out.println(entry.getKey() + ": not a picture");
        continue;
      }
      List<TruthFile> strips = entry.getValue();
      if (ways.contains(Way.NAMED)) {
        count(entry.getKey(), strips, TruthSet.measured(photo, TruthSet.named(strips)), Way.NAMED);
      }
      if (strips.stream().anyMatch(TruthFile::toRefuse)) {
        continue;
      }
      ReadingRequest nothing = ReadingRequest.nothing();
      if (ways.contains(Way.UNNAMED)) {
        count(entry.getKey() + " unnamed", strips, TruthSet.measured(photo, nothing), Way.UNNAMED);
      }
      if (ways.contains(Way.SPOILT)) {
        List<Spoiling> spoilings = List.of(Spoiling.values());
        int kinds = spoilings.size();
        Spoiling spoiling = spoilings.get(number % kinds);
        Spoiling.Spoilt bad = spoiling.of(photo, strips, new Dice(number));
        String name = entry.getKey() + " " + spoiling.name().toLowerCase(Locale.ROOT);
        ReadingRequest said = number / kinds % 2 == 0 ? TruthSet.named(strips) : nothing;
        count(name, bad.strips(), TruthSet.measured(bad.photo(), said), Way.SPOILT);
      }
    }
  }

  private void count(
      String picture, List<TruthFile> strips, List<MeasuredStrip> outcomes, Way way) {
    Tally tally = tallies.computeIfAbsent(way, w -> new Tally());
    if (strips.size() != outcomes.size()) {
      out.println(picture + ": " + outcomes.size() + " strips for " + strips.size());
      return;
    }
    for (int i = 0; i < strips.size(); i++) {
      TruthFile truth = strips.get(i);
      if (outcomes.get(i) instanceof MeasuredStrip.Done done) {
        List<String> wrong = StripScore.of(truth, done).wrong();
        List<FindingTable.Finding> found =
            truth.toRefuse() ? List.of() : FindingTable.of(truth, done.record());
        // As drawn, with and without names, all but the lanes is found alike.
        findings.add(
            found.stream()
                .filter(f -> way != Way.UNNAMED || f.kind() == FindingTable.Kind.LANES)
                .toList());
        count(picture, wrong, done.record().warnings(), !truth.hasScale(), tally);
        found.forEach(f -> out.println("  " + picture + ": " + f));
      } else if (!truth.toRefuse()) {
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
    tally.doubted[kind] += FindingTable.isDoubt(codes) ? 1 : 0;
    codes.forEach(code -> tally.byCode.computeIfAbsent(code, c -> new int[2])[kind]++);
    if (!wrong.isEmpty()) {
      out.println(picture + ": " + String.join(", ", wrong) + "; warned of " + codes);
    } else if (!codes.isEmpty()) {
      out.println(picture + ": right; warned of " + codes);
    }
  }

  private void print() {
    out.println();
    out.println("| strips | number | warned | share | a finding doubted | share |");
    out.println("| --- | ---: | ---: | ---: | ---: | ---: |");
    tallies.forEach((way, tally) -> print(way.name().toLowerCase(Locale.ROOT), tally));
    out.println();
    StringBuilder head = new StringBuilder("| warning |");
    StringBuilder rule = new StringBuilder("| --- |");
    Set<String> codes = new TreeSet<>();
    tallies.forEach(
        (way, tally) -> {
          head.append(' ').append(way.name().toLowerCase(Locale.ROOT)).append(", right | wrong |");
          rule.append(" ---: | ---: |");
          codes.addAll(tally.byCode.keySet());
        });
    out.println(head);
    out.println(rule);
    for (String code : codes) {
      StringBuilder row = new StringBuilder("| ").append(code).append(" |");
      for (Tally tally : tallies.values()) {
        int[] n = tally.byCode.getOrDefault(code, new int[2]);
        row.append(' ').append(n[0]).append(" | ").append(n[1]).append(" |");
      }
      out.println(row);
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
            "| %s, %s | %d | %d | %.0f %% | %d | %.0f %% |%n",
            name,
            kinds[k],
            tally.strips[k],
            tally.warned[k],
            100.0 * tally.warned[k] / tally.strips[k],
            tally.doubted[k],
            100.0 * tally.doubted[k] / tally.strips[k]);
      }
    }
    if (tally.refused > 0) {
      out.printf(Locale.ROOT, "| %s, refused | %d | | | | |%n", name, tally.refused);
    }
  }
}
