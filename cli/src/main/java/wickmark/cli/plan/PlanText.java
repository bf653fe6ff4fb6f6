package wickmark.cli.plan;

import java.util.ArrayList;
import java.util.List;
import wickmark.cli.table.TextTable;
import wickmark.core.plan.Solvent;
import wickmark.core.plan.StripLayout;
import wickmark.core.sheet.Size;

/** A plan in words. */
public final class PlanText {
  private PlanText() {}

  /** Returns the lines. */
  public static List<String> lines(StripLayout layout, String solvent) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Strip of "
            + layout.paper().text()
            + " for "
            + layout.samples().size()
            + (layout.samples().size() == 1 ? " sample" : " samples"));
    places(layout).lines().forEach(lines::add);
    lines.add("");
    lines.add(
        layout.samples().size() == 1
            ? "Origin on the baseline, from the paper's left edge:"
            : "Origins on the baseline, "
                + Size.millimetres(layout.apart())
                + " mm apart, from the paper's left edge:");
    TextTable table = new TextTable("lr", List.of("sample", "mm"));
    for (int i = 0; i < layout.samples().size(); i++) {
      table.add(List.of(layout.samples().get(i), Size.millimetres(layout.origins().get(i))));
    }
    table.lines().forEach(line -> lines.add("  " + line));
    lines.add("");
    lines.add("Before and during the run:");
    checks(layout).forEach(check -> lines.add("- " + check));
    lines.add("");
    Solvent.cautions(solvent).forEach(caution -> lines.add(TextTable.printable(caution)));
    return lines;
  }

  private static TextTable places(StripLayout layout) {
    TextTable table = new TextTable("lrl", List.of("from the paper's lower edge", "mm", ""));
    table.add(
        List.of(
            "front, stop here at the latest",
            Size.millimetres(layout.front()),
            Size.millimetres(layout.run()) + " mm above the baseline"));
    table.add(List.of("baseline, in pencil", Size.millimetres(layout.baseline()), ""));
    table.add(
        List.of(
            "solvent stands",
            Size.millimetres(layout.solvent()),
            Size.millimetres(layout.baseline() - layout.solvent()) + " mm below the baseline"));
    return table;
  }

  /** What practice has taught; common practice of school and pharmacopoeia sheets. */
  static List<String> checks(StripLayout layout) {
    return List.of(
        "Draw the baseline and write the names below it in pencil: ink runs.",
        "Touch the paper only at its edges and its top.",
        "Put each sample on small, at most "
            + Size.millimetres(layout.spot())
            + " mm wide; let it dry before you put on more.",
        "Fill the solvent in first; it stays below the spots.",
        "The paper hangs straight and touches neither wall nor bottom; the lid is on.",
        "Do not move the vessel while the solvent climbs.",
        "Take the strip out before the front reaches the top, and mark the front with pencil at"
            + " once, while it is wet.",
        "Let it dry, then scan it, or photograph it on the printed card (wickmark card) or with a"
            + " ruler beside it.");
  }
}
