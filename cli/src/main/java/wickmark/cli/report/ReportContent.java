package wickmark.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wickmark.cli.table.HandWords;
import wickmark.cli.table.ResultText;
import wickmark.core.chromatogram.StripEvidence;
import wickmark.core.record.RunRecord;

/** Everything the report's template prints, worked out to the last digit. */
record ReportContent(
    String title,
    String pictureName,
    String overview,
    String centreNote,
    String handNote,
    List<String> warnings,
    Sketch photo,
    Sketch strip,
    List<LaneRows> lanes,
    List<Answer> unknowns,
    BudgetTable budget,
    String correctCommand,
    List<Fact> facts,
    List<Fact> settings) {

  private static final String CENTRE_AND_MIDDLE =
      "The centre is the point about which the dye balances; the middle is halfway along what the"
          + " eye sees. They part where a spot leaves a tail.";

  /** The rows of one lane. */
  record LaneRows(String name, String role, String reading, String front, List<SpotRow> spots) {}

  /** One row of the table. */
  record SpotRow(
      int number,
      String colour,
      String swatch,
      String distance,
      String middle,
      String rf,
      String flags) {}

  /** What explains one unknown. */
  record Answer(String lane, List<String> sentences) {}

  /** A name and a value. */
  record Fact(String name, String value) {}

  static ReportContent of(RunRecord record, StripEvidence evidence, Sketch photo, Sketch strip) {
    String title = String.valueOf(record.settings().getOrDefault("title", record.photo().file()));
    return new ReportContent(
        title,
        record.photo().file(),
        ResultText.overview(record),
        centreNote(record),
        HandWords.of(record).orElse(""),
        record.warnings().stream().map(RunRecord.Warning::message).toList(),
        photo,
        strip,
        record.lanes().stream().map(ReportContent::rows).toList(),
        record.unknowns().stream()
            .map(unknown -> new Answer(unknown.lane(), ResultText.answers(unknown)))
            .toList(),
        BudgetTable.of(record, evidence),
        "wickmark measure "
            + argument(record.photo().file())
            + " --corrections corrections.json --replace",
        facts(record),
        settings(record.settings()));
  }

  /** A file name as it is typed on a command line: between quotes unless it is plain. */
  private static String argument(String file) {
    return file.matches("[A-Za-z0-9][A-Za-z0-9._-]*") ? file : "\"" + file + "\"";
  }

  private static String centreNote(RunRecord record) {
    return CENTRE_AND_MIDDLE
        + ResultText.rfOfAnotherPoint(record).map(note -> " " + note).orElse("");
  }

  private static LaneRows rows(RunRecord.Lane lane) {
    return new LaneRows(
        lane.name(),
        lane.role(),
        lane.reading(),
        ResultText.front(lane),
        lane.spots().stream()
            .map(
                spot ->
                    new SpotRow(
                        spot.number(),
                        spot.colour(),
                        Swatch.hex(spot.lab()),
                        ResultText.distance(spot),
                        ResultText.middle(spot),
                        ResultText.rf(spot),
                        ResultText.flags(spot)))
            .toList());
  }

  private static List<Fact> facts(RunRecord record) {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("Picture", record.photo().file()));
    facts.add(
        new Fact("Size", record.photo().widthPx() + " × " + record.photo().heightPx() + " pixels"));
    facts.add(new Fact("SHA-256 of the picture", record.photo().sha256()));
    facts.add(new Fact("Scale", ResultText.scale(record)));
    Optional.ofNullable(record.card())
        .ifPresent(
            card -> {
              facts.add(new Fact("Light", ResultText.light(card)));
              facts.add(new Fact("Paper", ResultText.paper(card)));
            });
    facts.add(new Fact("Front", record.front().kind().replace('-', ' ')));
    facts.add(new Fact("Measured by", record.tool().name() + " " + record.tool().version()));
    return facts;
  }

  private static List<Fact> settings(Map<String, Object> settings) {
    return settings.entrySet().stream()
        .map(setting -> new Fact(words(setting.getKey()), value(setting.getValue())))
        .toList();
  }

  /** From "stripWidth" to "strip width". */
  private static String words(String name) {
    return name.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
  }

  private static String value(Object value) {
    return value instanceof List<?> list
        ? list.stream().map(String::valueOf).collect(Collectors.joining(", "))
        : String.valueOf(value);
  }
}
