package auricle.report.drawing;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** A page as a PNG file that prints at its true size. */
public final class PngPicture {
  private static final String NATIVE = "javax_imageio_png_1.0";
  private static final double MM_PER_INCH = 25.4;

  /** Packing less takes half the time and makes files a tenth larger. */
  private static final float QUICK = 0.8f;

  private PngPicture() {}

  /**
   * The file.
   *
   * @param dotsPerInch resolution
   */
  public static byte[] write(Page page, double dotsPerInch) throws IOException {
    double dotsPerMm = dotsPerInch / MM_PER_INCH;
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 17);
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      BufferedImage image = draw(page, dotsPerMm);
      ImageWriteParam quick = writer.getDefaultWriteParam();
      quick.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      quick.setCompressionQuality(QUICK);
      IIOMetadata size = writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), quick);
      size.mergeTree(NATIVE, resolution(dotsPerMm));
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, size), quick);
    } catch (IIOInvalidTreeException e) {
      throw new IllegalStateException("PNG keeps a resolution", e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** The raster picture. */
  static BufferedImage draw(Page page, double dotsPerMm) {
    int width = (int) Math.round(page.width_mm() * dotsPerMm);
    int height = (int) Math.round(page.height_mm() * dotsPerMm);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.setColor(Ink.WHITE.awt());
    g.fillRect(0, 0, width, height);
    g.scale(dotsPerMm, dotsPerMm);
    page.marks().forEach(m -> m.draw(g));
    page.labels().forEach(l -> l.draw(g)); // on top of all else
    g.dispose();
    return image;
  }

  /** In the format's own words: the neutral ones are converted wrongly by some versions of Java. */
  private static IIOMetadataNode resolution(double dotsPerMm) {
    IIOMetadataNode size = new IIOMetadataNode("pHYs");
    String dotsPerMetre = Long.toString(Math.round(1000 * dotsPerMm));
    size.setAttribute("pixelsPerUnitXAxis", dotsPerMetre);
    size.setAttribute("pixelsPerUnitYAxis", dotsPerMetre);
    size.setAttribute("unitSpecifier", "meter");
    IIOMetadataNode root = new IIOMetadataNode(NATIVE);
    root.appendChild(size);
    return root;
  }
}
