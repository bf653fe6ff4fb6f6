package wickmark.core.check;

import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import wickmark.core.check.MeasuredSheet.MeasuredLane;
import wickmark.core.check.MeasuredSheet.MeasuredSpot;

/**
 * Prints how often slips are named on invented sheets: how often the right one, and how often one
 * where there is none. Not run with the tests.
 */
final class SlipRates {
  private static final int CAREFUL_READERS = 4000;
  private static final int READERS = 1000;
  private static final int SINGLE = 1500;
  private static final long SEED = 12345;

  private final Random random = new Random(SEED);
  private final PrintStream out;

  private SlipRates(PrintStream out) {
    this.out = out;
  }

  /** One reading gone wrong. */
  private interface Change {
    BigDecimal of(MeasuredLane lane, int spot, BigDecimal written);
  }

  public static void main(String[] arguments) {
    SlipRates rates = new SlipRates(new PrintStream(System.out, true, StandardCharsets.UTF_8));
    rates.careful();
    rates.inEverything();
    rates.inOneReading();
  }

  private ReaderReport check(MeasuredSheet sheet, List<HandReading> rows) {
    return HandCheck.of(sheet, rows, CheckSettings.defaults()).readers().get(0);
  }

  private void careful() {
    int readings = 0;
    int accused = 0;
    int readersAccused = 0;
    for (int i = 0; i < CAREFUL_READERS; i++) {
      MeasuredSheet sheet = RandomSheet.of(random);
      List<HandReading> rows =
          RandomSheet.read(sheet, (s, l, k) -> RandomSheet.truth(l, k), 1, random);
      ReaderReport report = check(sheet, rows);
      readings += rows.size();
      accused += report.slips().stream().mapToInt(slip -> slip.rows().size()).sum();
      readersAccused += report.slips().isEmpty() ? 0 : 1;
    }
    out.println("| readers without a slip | number | a slip is named | share |");
    out.println("| --- | ---: | ---: | ---: |");
    line("readers", CAREFUL_READERS, readersAccused);
    line("spots read", readings, accused);
    out.println();
  }

  private void line(String what, int number, int accused) {
    out.printf(
        Locale.ROOT,
        "| %s | %d | %d | %.2f %% |%n",
        what,
        number,
        accused,
        100.0 * accused / number);
  }

  private void inEverything() {
    out.println("| slip in everything that it touches | named | named first | another too |");
    out.println("| --- | ---: | ---: | ---: |");
    rate("centimetres", Slip.CENTIMETRES, (s, l, k) -> RandomSheet.truth(l, k), 10);
    rate("inches", Slip.INCHES, (s, l, k) -> RandomSheet.truth(l, k), 25.4);
    rate(
        "all from the paper's edge",
        Slip.FROM_PAPER_EDGE,
        (s, l, k) -> RandomSheet.truth(l, k) + l.margin(),
        1);
    rate(
        "spots from the paper's edge",
        Slip.FROM_PAPER_EDGE,
        (s, l, k) -> RandomSheet.truth(l, k) + (k > 0 ? l.margin() : 0),
        1);
    rate(
        "fronts from the paper's edge",
        Slip.FROM_PAPER_EDGE,
        (s, l, k) -> RandomSheet.truth(l, k) + (k == 0 ? l.margin() : 0),
        1);
    rate("upper rim", Slip.UPPER_RIM, (s, l, k) -> k == 0 ? l.front() : spot(l, k).top(), 1);
    rate("lower rim", Slip.LOWER_RIM, (s, l, k) -> k == 0 ? l.front() : spot(l, k).bottom(), 1);
    rate(
        "front at the paper's top",
        Slip.FRONT_AT_PAPER_TOP,
        (s, l, k) -> k == 0 ? l.paperTop() : RandomSheet.truth(l, k),
        1);
    for (double blank : new double[] {3, 5, 8}) {
      rate(
          String.format(Locale.ROOT, "ruler's end, %.0f mm blank", blank),
          Slip.RULER_END,
          (s, l, k) -> RandomSheet.truth(l, k) - blank,
          1);
    }
    rate(
        "spots of all lanes reversed (many lanes have one spot)",
        Slip.SPOT_ORDER,
        (s, l, k) -> RandomSheet.truth(l, k == 0 ? 0 : l.spots().size() + 1 - k),
        1);
    rate("first two lanes exchanged", Slip.LANES_SWAPPED, SlipRates::firstTwoExchanged, 1);
    out.println();
  }

  private static MeasuredSpot spot(MeasuredLane lane, int number) {
    return lane.spots().get(number - 1);
  }

  private static double firstTwoExchanged(MeasuredSheet sheet, MeasuredLane lane, int spot) {
    int index = sheet.lanes().indexOf(lane);
    if (spot == 0 || index > 1) {
      return RandomSheet.truth(lane, spot);
    }
    MeasuredLane other = sheet.lanes().get(1 - index);
    return RandomSheet.truth(spot <= other.spots().size() ? other : lane, spot);
  }

  private void rate(String what, Slip wanted, RandomSheet.Aim aim, double unitMm) {
    int named = 0;
    int first = 0;
    int another = 0;
    for (int i = 0; i < READERS; i++) {
      MeasuredSheet sheet = RandomSheet.of(random);
      List<Slip> slips =
          check(sheet, RandomSheet.read(sheet, aim, unitMm, random)).slips().stream()
              .map(SlipFinding::slip)
              .toList();
      named += slips.contains(wanted) ? 1 : 0;
      first += !slips.isEmpty() && slips.get(0) == wanted ? 1 : 0;
      another += slips.stream().anyMatch(s -> s != wanted && s.isOfLength()) ? 1 : 0;
    }
    double percent = 100.0 / READERS;
    out.printf(
        Locale.ROOT,
        "| %s | %.1f %% | %.1f %% | %.1f %% |%n",
        what,
        percent * named,
        percent * first,
        percent * another);
  }

  private void inOneReading() {
    out.println("| slip in one reading of a sheet | number | named | another | none |");
    out.println("| --- | ---: | ---: | ---: | ---: |");
    single("centimetres", Slip.CENTIMETRES, (l, k, v) -> v.movePointLeft(1));
    single("from the paper's edge", Slip.FROM_PAPER_EDGE, (l, k, v) -> plus(v, l.margin()));
    single(
        "upper rim", Slip.UPPER_RIM, (l, k, v) -> plus(v, spot(l, k).top() - spot(l, k).middle()));
    single(
        "lower rim",
        Slip.LOWER_RIM,
        (l, k, v) -> plus(v, spot(l, k).bottom() - spot(l, k).middle()));
    single(
        "two digits exchanged, 18 mm off or more",
        Slip.DIGITS_TRANSPOSED,
        (l, k, v) -> exchanged(v));
    single("11 mm too long", Slip.READ_AGAIN, (l, k, v) -> plus(v, 11));
  }

  private static BigDecimal plus(BigDecimal value, double mm) {
    return value.add(BigDecimal.valueOf(Math.round(mm)));
  }

  private static BigDecimal exchanged(BigDecimal value) {
    String digits = value.toPlainString();
    if (digits.length() < 2
        || digits.charAt(1) == '0'
        || Math.abs(digits.charAt(0) - digits.charAt(1)) < 2) {
      return value;
    }
    return new BigDecimal("" + digits.charAt(1) + digits.charAt(0) + digits.substring(2));
  }

  private void single(String what, Slip wanted, Change change) {
    int number = 0;
    int named = 0;
    int another = 0;
    for (int i = 0; i < SINGLE; i++) {
      MeasuredSheet sheet = RandomSheet.of(random);
      List<HandReading> rows =
          RandomSheet.read(sheet, (s, l, k) -> RandomSheet.truth(l, k), 1, random);
      int index = random.nextInt(rows.size());
      HandReading right = rows.get(index);
      BigDecimal written = right.distance().orElseThrow();
      MeasuredLane lane = sheet.lane(right.lane()).orElseThrow();
      BigDecimal value = change.of(lane, right.spot(), written);
      if (value.compareTo(written) != 0 && value.signum() > 0) {
        HandReading wrong = withDistance(right, value);
        rows.set(index, wrong);
        Optional<Slip> found =
            check(sheet, rows).slips().stream()
                .filter(slip -> slip.rows().contains(wrong))
                .map(SlipFinding::slip)
                .findFirst();
        number++;
        named += found.filter(slip -> slip == wanted).isPresent() ? 1 : 0;
        another += found.filter(slip -> slip != wanted).isPresent() ? 1 : 0;
      }
    }
    double percent = 100.0 / number;
    out.printf(
        Locale.ROOT,
        "| %s | %d | %.1f %% | %.1f %% | %.1f %% |%n",
        what,
        number,
        percent * named,
        percent * another,
        percent * (number - named - another));
  }

  /** The same spot with another distance, and no Rf. */
  private static HandReading withDistance(HandReading reading, BigDecimal distance) {
    return new HandReading(
        reading.reader(),
        reading.lane(),
        reading.spot(),
        Optional.of(distance),
        reading.front(),
        Optional.empty(),
        Optional.empty(),
        reading.place());
  }
}
