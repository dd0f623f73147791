package auricle.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.testing.Check;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A page of one square, one line and two labels, as both kinds of file. */
class PageFilesTest {
  private static final String SCALED = "by the scale of the page";

  private static Page page() {
    Page page = new Page("A square & a line", 100, 50);
    page.box(10, 10, 20, 20, Ink.BLUE);
    page.line(30, 5, 30, 45, new Pen(Ink.VERMILION, 1, 2));
    page.label("17.4 mm < 20 mm", 50, 25, Style.of(4).centred());
    page.label("upwards", 90, 40, Style.of(4).inBold().upwards().overLines());
    return page;
  }

  private static Document svg() throws Exception {
    byte[] text = SvgPicture.write(page(), "a note").getBytes(StandardCharsets.UTF_8);
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(text));
  }

  @Test
  void theRasterHasTheSizeAndTheColoursAtTheirPlaces() throws Exception {
    byte[] png = PngPicture.write(page(), 254);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
    assertEquals(1000, image.getWidth());
    assertEquals(500, image.getHeight());
    assertEquals(Ink.BLUE.awt().getRGB(), image.getRGB(150, 150));
    assertEquals(Ink.WHITE.awt().getRGB(), image.getRGB(250, 150));
    assertEquals(Ink.VERMILION.awt().getRGB(), image.getRGB(300, 60));
  }

  @Test
  void theRasterSaysItsResolution() throws Exception {
    byte[] png = PngPicture.write(page(), 254);
    String text = new String(png, StandardCharsets.ISO_8859_1);
    int at = text.indexOf("pHYs") + 4;
    int dotsPerMetre = java.nio.ByteBuffer.wrap(png).getInt(at);
    assertEquals(10_000, dotsPerMetre);
  }

  @Test
  void theVectorFileIsWellFormedAndInMillimetres() throws Exception {
    Element root = svg().getDocumentElement();
    assertEquals("svg", root.getLocalName() == null ? root.getTagName() : root.getLocalName());
    assertEquals("100mm", root.getAttribute("width"));
    assertEquals("0 0 100 50", root.getAttribute("viewBox"));
    assertEquals("A square & a line", first(root, "title"));
    assertEquals("a note", first(root, "desc"));
  }

  private static String first(Element root, String tag) {
    return root.getElementsByTagName(tag).item(0).getTextContent();
  }

  @Test
  void lettersStayTextInTheVectorFile() throws Exception {
    Element root = svg().getDocumentElement();
    assertEquals("17.4 mm < 20 mm", first(root, "text"));
    Element second = (Element) root.getElementsByTagName("text").item(1);
    assertEquals("rotate(-90 90 40)", second.getAttribute("transform"));
    assertEquals("bold", second.getAttribute("font-weight"));
  }

  @Test
  void aLabelIsTextAloneAndNoOutlineBesideIt() throws Exception {
    assertEquals(2, page().marks().size(), "what lies under the labels");
    Element root = svg().getDocumentElement();
    assertEquals(2, root.getElementsByTagName("text").getLength());
    assertEquals(0, root.getElementsByTagName("path").getLength(), "outlines beside the text");
  }

  @Test
  void theBoxOfALabelHoldsItsLetters() {
    for (Mark.Label label : page().labels()) {
      Rectangle2D letters = Lettering.outline(label).getBounds2D();
      assertTrue(Page.box(label).contains(letters), label.text());
    }
  }

  @Test
  void aCentredLabelStandsAboutItsPlace() {
    Rectangle2D box = Page.box(page().labels().get(0));
    Check.close(box.getCenterX(), 50, 1e-9, SCALED);
    Rectangle2D turned = Page.box(page().labels().get(1));
    Check.close(turned.getMaxY(), 40, 1e-9, SCALED);
    assertTrue(turned.getHeight() > turned.getWidth());
  }

  @Test
  void theFontHasTheLettersThatPicturesUse() {
    String special = "äöüß°±×–—−→≤≥½²Δαβ…•";
    assertTrue(Lettering.canWrite(special, Style.of(3)));
    assertTrue(Lettering.canWrite(special, Style.of(3).inBold()));
    assertFalse(Lettering.canWrite("\uE000", Style.of(3)));
  }
}
