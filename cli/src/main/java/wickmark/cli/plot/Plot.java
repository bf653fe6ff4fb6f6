package wickmark.cli.plot;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jetbrains.letsPlot.commons.geometry.DoubleVector;
import org.jetbrains.letsPlot.core.util.PlotSvgExportCommon;

/**
 * A plot, put together layer by layer; later ones lie above. Values are in the units of the axes.
 *
 * <p>The library takes a plot as nested maps, in the words of the grammar of graphics (scales,
 * layers of geometries, a theme), and estimates how wide letters are, so that it needs no fonts of
 * the machine.
 */
public final class Plot {
  private static final double LETTER_PX = 13;

  /** How far the axis reaches beyond the outermost rows, in rows. */
  private static final double HALF_ROW = 0.6;

  /** The library counts sizes in units of this many pixels, about. */
  private static final double UNIT_PX = 1.1;

  private final int widthPx;
  private final int heightPx;
  private final List<Object> layers = new ArrayList<>();
  private final List<Object> scales = new ArrayList<>();
  private String linesToReadBy = "panel_grid_major_y";

  /** How a line is stroked; told apart in black and white too. */
  public enum Stroke {
    SOLID,
    DASHED,
    DOTTED
  }

  /** What marks a value; told apart in black and white too. */
  public enum Shape {
    RING(1),
    SQUARE(0);

    private final int number;

    Shape(int number) {
      this.number = number;
    }
  }

  /** A place. */
  public record Place(double x, double y) {}

  public Plot(int widthPx, int heightPx) {
    this.widthPx = widthPx;
    this.heightPx = heightPx;
  }

  /** Names the axis across; its ends follow from what is drawn. */
  public Plot across(String name) {
    scales.add(map("aesthetic", "x", "name", name));
    return this;
  }

  /** Names the axis across and sets its ends. */
  public Plot across(String name, double low, double high) {
    scales.add(map("aesthetic", "x", "name", name, "limits", List.of(low, high)));
    return this;
  }

  /** Names the axis that goes up; its ends follow from what is drawn. */
  public Plot up(String name) {
    scales.add(map("aesthetic", "y", "name", name));
    return this;
  }

  /** Rows with names in place of the axis that goes up, from the top down; see {@link #row}. */
  public Plot rows(List<String> names) {
    List<Double> places = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      places.add(row(i));
    }
    scales.add(
        map(
            "aesthetic",
            "y",
            "name",
            "",
            "limits",
            List.of(row(names.size() - 1) - HALF_ROW, HALF_ROW),
            "expand",
            List.of(0.0, 0.0),
            "breaks",
            places,
            "labels",
            names.stream().map(Plot::drawable).toList()));
    linesToReadBy = "panel_grid_major_x";
    return this;
  }

  /** Returns where the middle of a row lies. */
  public static double row(int index) {
    return index == 0 ? 0.0 : -index;
  }

  /** Adds a grey band. */
  public Plot band(Place low, Place high) {
    layers.add(
        map(
            "geom",
            "rect",
            "data",
            ends(low, high),
            "mapping",
            map("xmin", "x0", "xmax", "x1", "ymin", "y0", "ymax", "y1"),
            "fill",
            Ink.QUIET.hex(),
            "alpha",
            0.14,
            "size",
            0.0));
    return this;
  }

  /** Adds a straight line. */
  public Plot line(Place from, Place to, Stroke stroke, Ink ink, double widthPx) {
    layers.add(
        map(
            "geom",
            "segment",
            "data",
            ends(from, to),
            "mapping",
            map("x", "x0", "xend", "x1", "y", "y0", "yend", "y1"),
            "linetype",
            stroke.name().toLowerCase(Locale.ROOT),
            "color",
            ink.hex(),
            "size",
            widthPx / (2 * UNIT_PX)));
    return this;
  }

  /** Adds values. */
  public Plot values(List<Place> values, Shape shape) {
    layers.add(
        map(
            "geom",
            "point",
            "data",
            map(
                "x",
                values.stream().map(Place::x).toList(),
                "y",
                values.stream().map(Place::y).toList()),
            "mapping",
            map("x", "x", "y", "y"),
            "shape",
            shape.number,
            "size",
            3.0,
            "color",
            Ink.MAIN.hex()));
    return this;
  }

  /** Adds a text that ends at a place and stands on it. */
  public Plot text(Place end, String text) {
    layers.add(
        map(
            "geom",
            "text",
            "data",
            map("x", one(end.x), "y", one(end.y), "text", List.of(drawable(text))),
            "mapping",
            map("x", "x", "y", "y", "label", "text"),
            "hjust",
            "right",
            "vjust",
            "bottom",
            "color",
            Ink.MAIN.hex(),
            "size",
            LETTER_PX / (2 * UNIT_PX)));
    return this;
  }

  /**
   * Returns the plot as an SVG element for a page.
   *
   * @param id begins the identifiers in it, of which each is there once in a page
   * @param title what is plotted against what
   * @param description what is to be seen in it
   */
  public String svg(String id, String title, String description) {
    String drawn =
        PlotSvgExportCommon.INSTANCE.buildSvgImageFromRawSpecs(
            specification(),
            new DoubleVector(widthPx, heightPx),
            (width, height, pixels) -> {
              throw new IllegalStateException("there is no picture in these plots");
            },
            false);
    return new PageSvg(widthPx, heightPx, LETTER_PX).of(drawn, id, title, description);
  }

  private Map<String, Object> specification() {
    Map<String, Object> blank = map("name", "blank");
    Map<String, Object> theme =
        map(
            "name",
            "minimal",
            "plot_background",
            blank,
            "panel_background",
            blank,
            "panel_border",
            blank,
            "panel_grid",
            blank,
            linesToReadBy,
            map("name", "line", "color", Ink.RULE.hex(), "size", 1.0, "blank", false),
            "axis_line",
            map("name", "line", "color", Ink.QUIET.hex(), "size", 1.0),
            "axis_ticks",
            map("name", "line", "color", Ink.QUIET.hex(), "size", 1.0, "blank", false),
            "text",
            map("name", "text", "color", Ink.MAIN.hex(), "size", LETTER_PX),
            "title",
            map("name", "text", "color", Ink.MAIN.hex(), "size", LETTER_PX));
    return map("kind", "plot", "layers", layers, "scales", scales, "theme", theme);
  }

  /** The data of a layer with one thing in it that reaches from a place to another. */
  private static Map<String, Object> ends(Place a, Place b) {
    return map("x0", one(a.x), "x1", one(b.x), "y0", one(a.y), "y1", one(b.y));
  }

  private static List<Double> one(double value) {
    return List.of(value);
  }

  /** A map in the order given; the library may write into it. */
  private static Map<String, Object> map(Object... namesAndValues) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      map.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return map;
  }

  /** A text without what no XML can hold; a lane may be called anything. */
  private static String drawable(String text) {
    StringBuilder drawable = new StringBuilder();
    text.codePoints()
        .map(c -> c < ' ' || c == 0xFFFE || c == 0xFFFF || (c >= 0xD800 && c < 0xE000) ? 0xFFFD : c)
        .forEach(drawable::appendCodePoint);
    return drawable.toString();
  }
}
