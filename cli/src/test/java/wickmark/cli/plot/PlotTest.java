package wickmark.cli.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** What the plots are for pages. SVG 1.1 names the elements; the library draws what is plotted. */
class PlotTest {
  private static final List<String> HOSTILE =
      List.of(
          "<script>alert(1)</script>",
          "\\( x^2 \\)",
          "<a href=\"http://example.org\">k</a>",
          "\u0000\uD800]]>&amp;\"'",
          "plain");

  private static Plot rowsOfHostileNames() {
    Plot plot = new Plot(720, 300).across("<b>mm</b> & more").rows(HOSTILE);
    List<Plot.Place> values = new ArrayList<>();
    for (int i = 0; i < HOSTILE.size(); i++) {
      values.add(new Plot.Place(i, Plot.row(i)));
    }
    return plot.line(new Plot.Place(0, 0), new Plot.Place(4, -4), Plot.Stroke.DASHED, Ink.HEED, 2)
        .values(values.subList(0, 3), Plot.Shape.RING)
        .values(values.subList(3, 5), Plot.Shape.SQUARE);
  }

  private static Document parsed(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
  }

  private static List<Element> all(Document document, String name) {
    NodeList found = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  @Test
  void isTheSameEachTime() {
    assertThat(rowsOfHostileNames().svg("p", "t", "d"))
        .isEqualTo(rowsOfHostileNames().svg("p", "t", "d"));
  }

  @Test
  void holdsOnlyWhatDrawsWhateverTheNamesAre() throws Exception {
    Document plot = parsed(rowsOfHostileNames().svg("p", "<i>t</i>", "d & e"));

    TreeSet<String> elements = new TreeSet<>();
    TreeSet<String> attributes = new TreeSet<>();
    for (Element element : all(plot, "*")) {
      elements.add(element.getTagName());
      for (int i = 0; i < element.getAttributes().getLength(); i++) {
        attributes.add(element.getAttributes().item(i).getNodeName());
      }
    }
    assertThat(elements)
        .isSubsetOf("svg", "title", "desc", "g", "line", "circle", "rect", "text", "path");
    assertThat(attributes).doesNotContain("style", "href", "clip-path", "onload");
    assertThat(all(plot, "text").stream().map(Element::getTextContent))
        .anyMatch(text -> text.startsWith("<script>"))
        .anyMatch(text -> text.contains("x^2"))
        .contains("<b>mm</b> & more", "plain");
    assertThat(all(plot, "title").get(0).getTextContent()).isEqualTo("<i>t</i>");
  }

  @Test
  void hasANameAndADescriptionForThoseWhoDoNotSeeIt() throws Exception {
    Element svg = parsed(rowsOfHostileNames().svg("p", "t", "d")).getDocumentElement();

    assertThat(svg.getAttribute("role")).isEqualTo("img");
    assertThat(svg.getAttribute("aria-labelledby")).isEqualTo("p-title");
    assertThat(svg.getAttribute("aria-describedby")).isEqualTo("p-description");
  }

  @Test
  void drawsEachValueInItsShapeAndInItsPlace() throws Exception {
    Document plot = parsed(rowsOfHostileNames().svg("p", "t", "d"));

    List<Element> rings = all(plot, "circle");
    assertThat(rings).hasSize(3);
    assertThat(all(plot, "rect")).hasSize(2);
    double first = Double.parseDouble(rings.get(0).getAttribute("cx"));
    double second = Double.parseDouble(rings.get(1).getAttribute("cx"));
    double third = Double.parseDouble(rings.get(2).getAttribute("cx"));
    assertThat(third - second).isPositive().isCloseTo(second - first, within(0.02));
    assertThat(all(plot, "line"))
        .anyMatch(
            line ->
                line.hasAttribute("stroke-dasharray")
                    && line.getAttribute("class").equals("stroke-heed"));
  }

  @Test
  void everyInkHasItsColourInTheStyleSheet() throws IOException {
    String style;
    try (var in = Plot.class.getResourceAsStream("/wickmark/cli/report/report.css")) {
      style = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
    for (Ink ink : Ink.values()) {
      assertThat(style)
          .contains("." + ink.styleClass("fill") + " {")
          .contains("." + ink.styleClass("stroke") + " {")
          .contains(": " + ink.hex() + ";");
    }
  }
}
