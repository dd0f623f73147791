package auricle.report.drawing;

import java.awt.Image;
import java.awt.image.BufferedImage;
import java.awt.image.RenderedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import javax.imageio.ImageIO;
import org.apache.batik.svggen.DefaultImageHandler;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.w3c.dom.Element;

/** Puts raster pictures into a vector file itself, as PNG in base64, so that it stands alone. */
final class InlineImages extends DefaultImageHandler {
  private static final String LINK = "http://www.w3.org/1999/xlink";

  @Override
  protected void handleHREF(Image image, Element element, SVGGeneratorContext context) {
    if (!(image instanceof BufferedImage raster)) {
      throw new IllegalArgumentException("a raster picture has its dots in memory");
    }
    handleHREF((RenderedImage) raster, element, context);
  }

  @Override
  protected void handleHREF(RenderedImage image, Element element, SVGGeneratorContext context) {
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", png);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    String data = Base64.getEncoder().encodeToString(png.toByteArray());
    element.setAttributeNS(LINK, "xlink:href", "data:image/png;base64," + data);
  }
}
