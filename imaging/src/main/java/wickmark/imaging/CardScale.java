package wickmark.imaging;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import wickmark.core.card.CardLayout;
import wickmark.imaging.ReadingRequest.SaidScale;
import wickmark.imaging.card.CardView;
import wickmark.imaging.card.SheetEdges;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.pose.PlaneEvidence;
import wickmark.imaging.pose.PlaneView;
import wickmark.imaging.scale.PixelScale;
import wickmark.imaging.scale.RulerEdge;

/** The plane and the scale that a printed card gives, compared with what else tells a scale. */
final class CardScale {
  /**
   * Printers that do not fit the page keep lengths within 1 % (common practice), rectangular; the
   * paper swells and shrinks by as much as half of that with its moisture.
   */
  private static final double PRINT_ERROR = 0.01 / 1.7320508;

  /** The bar is measured with a ruler to half a division, mm, rectangular. */
  private static final double BAR_READING_MM = 0.5 / 1.7320508;

  /** Along and across the sheet a printer's scale differs by 0.3 % (common practice). */
  private static final double ACROSS_ERROR = 0.003 / 1.7320508;

  /** A fitted page is printed at this or more: US Letter on A5 would be 0.69. */
  private static final double LEAST_PRINT = 0.65;

  private static final double MOST_PRINT = 1.5;

  private final CardView card;
  private final Optional<SheetEdges.PrintScale> sheet;
  private final Optional<SaidScale> said;
  private final OptionalDouble printedMm;

  /**
   * Takes the card.
   *
   * @param sheet how large the print is by the edges of its sheet
   * @param said what the person says of the scale, a measured print among it
   */
  CardScale(CardView card, Optional<SheetEdges.PrintScale> sheet, Optional<SaidScale> said) {
    this.card = card;
    this.sheet = sheet;
    this.said = said;
    this.printedMm =
        said.orElse(null) instanceof SaidScale.Print print
            ? OptionalDouble.of(print.barMm())
            : OptionalDouble.empty();
  }

  private double millimetresPerUnit(PlaneView view) {
    double print = printedMm.isPresent() ? printedMm.getAsDouble() / CardLayout.BAR_MM : 1;
    return print * card.millimetresPerUnit(view);
  }

  private double relativeUncertainty() {
    return printedMm.isPresent()
        ? Math.hypot(BAR_READING_MM / printedMm.getAsDouble(), ACROSS_ERROR)
        : PRINT_ERROR;
  }

  /** The plane of the card, with its scale, or that of a ruler where the print is not true. */
  PlaneScale plane(List<RulerEdge> edges) {
    List<RulerEdge> rulers = RulerRow.usable(edges);
    if (!rulers.isEmpty()) {
      return beside(rulers);
    }
    if (sheet.isPresent()) {
      return besideSheet(sheet.get());
    }
    return byCard(1, relativeUncertainty(), unchecked());
  }

  private List<Doubt> unchecked() {
    return said.isPresent()
        ? List.of()
        : List.of(
            new Doubt(
                "print-not-checked",
                "The card's print was taken as true to scale, within 1 %. Printers often shrink a"
                    + " page by some per cent to fit it. Measure the bar of 100 mm on the card"
                    + " with a ruler and say its length with --printed-length. Rf does not depend"
                    + " on it."));
  }

  /** Where the sheet's edges are seen, they check the print. */
  private PlaneScale besideSheet(SheetEdges.PrintScale seen) {
    double told = printedMm.isPresent() ? printedMm.getAsDouble() / CardLayout.BAR_MM : 1;
    double apart = seen.print() / told - 1;
    double u = Math.hypot(seen.relativeUncertainty(), relativeUncertainty());
    if (Math.abs(apart) <= 2 * u) {
      double checked = Math.hypot(seen.relativeUncertainty(), apart);
      return byCard(1, Math.min(relativeUncertainty(), checked), List.of());
    }
    String by =
        String.format(
            Locale.ROOT,
            "By the edges of its sheet the card's bar of 100 mm is %.1f mm long",
            CardLayout.BAR_MM * seen.print());
    if (printedMm.isPresent()) {
      return byCard(
          1,
          relativeUncertainty(),
          List.of(
              new Doubt(
                  "scales-disagree",
                  by
                      + String.format(
                          Locale.ROOT,
                          ", but %.1f mm were said. What was said was used; measure the bar again.",
                          printedMm.getAsDouble()))));
    }
    String advice = " Measure the bar with a ruler and say its length with --printed-length.";
    boolean fitted = seen.print() > LEAST_PRINT && seen.print() < MOST_PRINT;
    return seen.bothWays() && fitted
        ? byCard(
            seen.print(),
            seen.relativeUncertainty(),
            List.of(
                new Doubt(
                    "print-scaled",
                    by
                        + ": the page was fitted when it was printed. This was taken into account;"
                        + " the sheet's own size is less sure than a ruler."
                        + advice)))
        : byCard(
            1,
            relativeUncertainty(),
            List.of(
                new Doubt(
                    "print-scaled",
                    by
                        + ": it may have been fitted when it was printed, or the sheet was cut."
                        + " It was taken as printed true."
                        + advice)));
  }

  private PlaneScale byCard(double print, double relative, List<Doubt> doubts) {
    return new PlaneScale(
        card.view(),
        card.covariance(),
        OptionalDouble.of(print * millimetresPerUnit(card.view())),
        PixelScale.Source.CARD,
        relative,
        1,
        Optional.of(view -> print * millimetresPerUnit(view)),
        false,
        1,
        doubts);
  }

  private PlaneScale beside(List<RulerEdge> rulers) {
    PlaneEvidence.Division marks = RulerRow.division(rulers.get(0));
    double byRuler = PlaneScaleFinder.onPaper(card.view(), marks, RulerFace.USUAL);
    double rulerU = PlaneScaleFinder.rulerUncertainty(byRuler, RulerFace.USUAL);
    double print = byRuler / card.millimetresPerUnit(card.view());
    double apart = byRuler / millimetresPerUnit(card.view()) - 1;
    if (Math.abs(apart) <= 3 * Math.hypot(rulerU, relativeUncertainty())) {
      // The ruler has checked the print: it is as good as their agreement.
      double checked = Math.min(relativeUncertainty(), Math.hypot(rulerU, apart));
      return byCard(1, checked, List.of());
    }
    boolean fitted = print > LEAST_PRINT && print < MOST_PRINT;
    if (printedMm.isPresent() || !fitted) {
      return byCard(1, relativeUncertainty(), List.of(disagree(print, "The card was used.")));
    }
    return new PlaneScale(
        card.view(),
        card.covariance(),
        OptionalDouble.of(byRuler),
        PixelScale.Source.RULER,
        rulerU,
        RulerRow.confidence(rulers),
        Optional.of(view -> RulerRow.millimetresPerUnit(view, marks)),
        false,
        1,
        List.of(
            disagree(
                print,
                "It seems that the page was fitted when it was printed. The ruler was used; measure"
                    + " the card's bar and say --printed-length.")));
  }

  private Doubt disagree(double print, String used) {
    String told =
        printedMm.isPresent()
            ? String.format(Locale.ROOT, ", but %.1f mm were said", printedMm.getAsDouble())
            : ", if it was printed true";
    return new Doubt(
        "scales-disagree",
        String.format(
            Locale.ROOT,
            "By the ruler in the picture the card's bar of 100 mm is %.1f mm long%s. %s",
            CardLayout.BAR_MM * print,
            told,
            used));
  }

  /** A scan with its resolution's scale, and a doubt where the card in it says otherwise. */
  PlaneScale compared(PlaneScale scan) {
    double resolution = scan.millimetresPerUnit().orElse(Double.NaN);
    double print = resolution / card.millimetresPerUnit(scan.view());
    double apart = resolution / millimetresPerUnit(scan.view()) - 1;
    if (Math.abs(apart) <= 3 * Math.hypot(scan.relativeUncertainty(), relativeUncertainty())) {
      return scan;
    }
    return scan.with(
        new Doubt(
            "scales-disagree",
            String.format(
                Locale.ROOT,
                "By the scan's resolution the card's bar of 100 mm is %.1f mm long. The resolution"
                    + " was used; if the bar has another length, say --dpi or --span.",
                CardLayout.BAR_MM * print)));
  }
}
