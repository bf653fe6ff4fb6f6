package wickmark.cli.plot;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.w3c.dom.Text;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import wickmark.core.uncertainty.Decimals;

/**
 * Makes of the library's drawing one for a page: the same bytes each time (the library names its
 * parts by chance and writes all digits that a machine has), no style of its own (the page's
 * security policy lets in one style sheet, and that knows dark pages and paper), a title and a
 * description for those who do not see it, and nothing but the few elements and attributes that
 * draw.
 */
final class PageSvg {
  private static final Set<String> ELEMENTS =
      Set.of("g", "path", "line", "polyline", "polygon", "circle", "rect", "text", "tspan");

  private static final Set<String> ATTRIBUTES =
      Set.of(
          "transform",
          "d",
          "x",
          "y",
          "x1",
          "x2",
          "y1",
          "y2",
          "cx",
          "cy",
          "r",
          "width",
          "height",
          "dx",
          "dy",
          "points",
          "stroke",
          "stroke-width",
          "stroke-dasharray",
          "stroke-opacity",
          "fill",
          "fill-opacity",
          "font-size",
          "text-anchor");

  private static final Set<String> COLOURS = Set.of("stroke", "fill");
  private static final Pattern NUMBER = Pattern.compile("-?\\d+\\.\\d+(?:E-?\\d+)?");
  private static final Pattern RGB = Pattern.compile("rgb\\((\\d+),(\\d+),(\\d+)\\)");

  /** A hundredth of a pixel is not seen. */
  private static final int DECIMALS = 2;

  private final int widthPx;
  private final int heightPx;
  private final double letterPx;

  PageSvg(int widthPx, int heightPx, double letterPx) {
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.letterPx = letterPx;
  }

  String of(String drawn, String id, String title, String description) {
    StringBuilder svg = new StringBuilder();
    svg.append("<svg class=\"plot\" viewBox=\"0 0 ").append(widthPx).append(' ').append(heightPx);
    svg.append("\" role=\"img\" font-size=\"").append(number(letterPx));
    svg.append("\" aria-labelledby=\"").append(id).append("-title\" aria-describedby=\"");
    svg.append(id).append("-description\"><title id=\"").append(id).append("-title\">");
    svg.append(escaped(title)).append("</title><desc id=\"").append(id).append("-description\">");
    svg.append(escaped(description)).append("</desc>\n");
    appendChildren(parsed(drawn), svg);
    return svg.append("</svg>\n").toString();
  }

  private static Element parsed(String drawn) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      DocumentBuilder builder = factory.newDocumentBuilder();
      return builder.parse(new InputSource(new StringReader(drawn))).getDocumentElement();
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new IllegalStateException("the plot that was drawn is no SVG", e);
    }
  }

  /** Returns whether anything was drawn. */
  private boolean appendChildren(Element parent, StringBuilder svg) {
    boolean any = false;
    NodeList children = parent.getChildNodes();
    for (int i = 0; i < children.getLength(); i++) {
      Node child = children.item(i);
      if (child instanceof Element element && ELEMENTS.contains(element.getTagName())) {
        any |= append(element, svg);
      } else if (child instanceof Text text && isLetters(parent)) {
        String letters = text.getData().strip();
        svg.append(escaped(letters));
        any |= !letters.isEmpty();
      }
    }
    return any;
  }

  private static boolean isLetters(Element element) {
    return element.getTagName().equals("text") || element.getTagName().equals("tspan");
  }

  private boolean append(Element element, StringBuilder svg) {
    Map<String, String> attributes = attributes(element);
    boolean holdsOthers = element.getTagName().equals("g") || isLetters(element);
    if (!holdsOthers && !isSeen(attributes)) {
      return false;
    }
    StringBuilder inner = new StringBuilder();
    boolean any = appendChildren(element, inner);
    if (holdsOthers && !any) {
      return false;
    }
    svg.append('<').append(element.getTagName());
    attributes.forEach(
        (name, value) ->
            svg.append(' ').append(name).append("=\"").append(escaped(value)).append('"'));
    if (inner.isEmpty()) {
      svg.append("/>");
    } else {
      svg.append('>').append(element.getTagName().equals("g") ? "\n" : "").append(inner);
      svg.append("</").append(element.getTagName()).append('>');
    }
    svg.append('\n');
    return true;
  }

  /** The library draws grounds and borders that are blank, too. */
  private static boolean isSeen(Map<String, String> attributes) {
    boolean stroked =
        !attributes.getOrDefault("stroke", "none").equals("none")
            && !attributes.getOrDefault("stroke-width", "1").equals("0");
    boolean filled =
        !attributes.getOrDefault("fill", "none").equals("none")
            && !attributes.getOrDefault("fill-opacity", "1").equals("0");
    return stroked || filled;
  }

  private static Map<String, String> attributes(Element element) {
    Map<String, String> found = new TreeMap<>();
    NamedNodeMap written = element.getAttributes();
    for (int i = 0; i < written.getLength(); i++) {
      Attr attribute = (Attr) written.item(i);
      if (ATTRIBUTES.contains(attribute.getName())) {
        found.put(attribute.getName(), rounded(attribute.getValue()));
      } else if (attribute.getName().equals("style")) {
        takeStyle(attribute.getValue(), found);
      }
    }
    if (element.getTagName().equals("text")) {
      found.putIfAbsent("fill", Ink.MAIN.hex());
      found.remove("fill-opacity");
    }
    if (found.getOrDefault("fill-opacity", "").equals("0") || element.getTagName().equals("line")) {
      found.put("fill", "none");
      found.remove("fill-opacity");
    }
    List<String> classes = new ArrayList<>();
    for (String name : COLOURS.stream().sorted().toList()) {
      Optional.ofNullable(found.get(name)).map(PageSvg::hex).ifPresent(c -> found.put(name, c));
      Optional.ofNullable(found.get(name))
          .flatMap(Ink::of)
          .ifPresent(ink -> classes.add(ink.styleClass(name)));
    }
    found.remove("stroke-opacity", "1");
    if (!classes.isEmpty()) {
      found.put("class", String.join(" ", classes));
    }
    return found;
  }

  /** An attribute in place of a style, which the page's policy does not let in. */
  private static void takeStyle(String style, Map<String, String> found) {
    for (String declaration : style.split(";")) {
      int colon = declaration.indexOf(':');
      if (colon > 0 && ATTRIBUTES.contains(declaration.substring(0, colon).strip())) {
        String value = declaration.substring(colon + 1).strip().replaceAll("px$", "");
        found.put(declaration.substring(0, colon).strip(), rounded(value));
      }
    }
  }

  private static String hex(String colour) {
    Matcher rgb = RGB.matcher(colour);
    return rgb.matches()
        ? String.format(
            Locale.ROOT,
            "#%02x%02x%02x",
            Integer.parseInt(rgb.group(1)),
            Integer.parseInt(rgb.group(2)),
            Integer.parseInt(rgb.group(3)))
        : colour;
  }

  private static String rounded(String value) {
    return NUMBER
        .matcher(value)
        .replaceAll(match -> number(Double.parseDouble(match.group())))
        .strip();
  }

  private static String number(double value) {
    String text = Decimals.text(value, DECIMALS);
    return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
