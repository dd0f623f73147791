package auricle.report.drawing;

import java.io.IOException;
import java.io.StringWriter;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * A page as an SVG file in mm. Letters stay text, in the font that their places were measured with
 * or one of the same widths; a reader without any of these takes its own.
 */
public final class SvgPicture {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String FONTS = "'Liberation Sans', Arimo, Arial, Helvetica, sans-serif";

  private SvgPicture() {}

  /**
   * The file.
   *
   * @param note what the picture may be used for, for readers of the file
   */
  public static String write(Page page, String note) throws IOException {
    Document document = document();
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setComment(null);
    context.setPrecision(2);
    context.setImageHandler(new InlineImages());
    SVGGraphics2D svg = new SVGGraphics2D(context, false);
    page.marks().forEach(m -> m.draw(svg));
    Element root = svg.getRoot();
    size(root, page);
    root.insertBefore(element(document, "desc", note), root.getFirstChild());
    root.insertBefore(element(document, "title", page.title()), root.getFirstChild());
    root.appendChild(letters(document, page));
    StringWriter text = new StringWriter(1 << 16);
    svg.stream(root, text, false, false);
    return withoutDoctype(text.toString());
  }

  private static Document document() {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(SVG, "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("every Java platform makes XML documents", e);
    }
  }

  private static void size(Element root, Page page) {
    root.setAttribute("width", number(page.width_mm()) + "mm");
    root.setAttribute("height", number(page.height_mm()) + "mm");
    root.setAttribute("viewBox", "0 0 " + number(page.width_mm()) + " " + number(page.height_mm()));
  }

  private static Element letters(Document document, Page page) {
    Element group = document.createElementNS(SVG, "g");
    group.setAttribute("font-family", FONTS);
    group.setAttribute("stroke", "none");
    page.labels().forEach(l -> group.appendChild(letter(document, l)));
    return group;
  }

  private static Element letter(Document document, Mark.Label label) {
    Style style = label.style();
    Element text = element(document, "text", label.text());
    String place = number(label.x()) + " " + number(label.y());
    text.setAttribute("x", number(label.x()));
    text.setAttribute("y", number(label.y()));
    text.setAttribute("font-size", number(style.size_mm()));
    text.setAttribute("text-anchor", style.anchor().svg());
    text.setAttribute("fill", rgb(style.ink()));
    if (style.bold()) {
      text.setAttribute("font-weight", "bold");
    }
    if (style.turned()) {
      text.setAttribute("transform", "rotate(-90 " + place + ")");
    }
    if (style.haloed()) {
      text.setAttribute("stroke", "white");
      text.setAttribute("stroke-width", number(Mark.Label.HALO * style.size_mm()));
      text.setAttribute("stroke-linejoin", "round");
      text.setAttribute("paint-order", "stroke");
    }
    return text;
  }

  private static Element element(Document document, String name, String content) {
    Element element = document.createElementNS(SVG, name);
    element.appendChild(document.createTextNode(content));
    return element;
  }

  private static String rgb(Ink ink) {
    return String.format(Locale.ROOT, "#%02x%02x%02x", ink.red(), ink.green(), ink.blue());
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.3f", value);
    return text.replaceAll("\\.?0+$", "");
  }

  /** A reader that follows the document type would go to the net for it. */
  private static String withoutDoctype(String xml) {
    int start = xml.indexOf("<!DOCTYPE");
    return start < 0 ? xml : xml.substring(0, start) + xml.substring(xml.indexOf('>', start) + 2);
  }
}
