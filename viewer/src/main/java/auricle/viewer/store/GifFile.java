package auricle.viewer.store;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** Pictures in a run as an animated GIF that begins again for ever. */
public final class GifFile {
  private static final String FORMAT = "javax_imageio_gif_image_1.0";
  private static final String WHOLE = "javax_imageio_gif_stream_1.0";

  private GifFile() {}

  /**
   * Writes a GIF.
   *
   * @param each_ms how long each picture stands
   * @throws IOException if there is no picture, or the file cannot be written
   */
  public static void write(Path file, List<BufferedImage> frames, int each_ms) throws IOException {
    if (frames.isEmpty()) {
      throw new IOException("there is no picture to write");
    }
    GifColours colours = GifColours.of(frames);
    ImageWriter writer = ImageIO.getImageWritersByFormatName("gif").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.prepareWriteSequence(palette(writer, colours.palette()));
      for (BufferedImage picture : frames) {
        BufferedImage frame = colours.drawn(picture);
        writer.writeToSequence(new IIOImage(frame, null, about(writer, frame, each_ms)), null);
      }
      writer.endWriteSequence();
    } finally {
      writer.dispose();
    }
    AtomicFile.write(file, bytes.toByteArray());
  }

  /** The colours of all pictures, once for the whole file. */
  private static IIOMetadata palette(ImageWriter writer, int[] colours) throws IOException {
    IIOMetadata about = writer.getDefaultStreamMetadata(writer.getDefaultWriteParam());
    IIOMetadataNode root = (IIOMetadataNode) about.getAsTree(WHOLE);
    IIOMetadataNode table = new IIOMetadataNode("GlobalColorTable");
    table.setAttribute("sizeOfGlobalColorTable", Integer.toString(colours.length));
    table.setAttribute("backgroundColorIndex", "0");
    table.setAttribute("sortFlag", "FALSE");
    for (int i = 0; i < colours.length; i++) {
      IIOMetadataNode entry = new IIOMetadataNode("ColorTableEntry");
      entry.setAttribute("index", Integer.toString(i));
      entry.setAttribute("red", Integer.toString(colours[i] >> 16 & 255));
      entry.setAttribute("green", Integer.toString(colours[i] >> 8 & 255));
      entry.setAttribute("blue", Integer.toString(colours[i] & 255));
      table.appendChild(entry);
    }
    root.appendChild(table);
    about.setFromTree(WHOLE, root);
    return about;
  }

  /** What stands with a picture: its time, and that the run begins again. */
  private static IIOMetadata about(ImageWriter writer, BufferedImage frame, int each_ms)
      throws IOException {
    IIOMetadata about =
        writer.getDefaultImageMetadata(
            new ImageTypeSpecifier(frame), writer.getDefaultWriteParam());
    IIOMetadataNode root = (IIOMetadataNode) about.getAsTree(FORMAT);
    root.removeChild(child(root, "LocalColorTable"));
    IIOMetadataNode control = child(root, "GraphicControlExtension");
    control.setAttribute("disposalMethod", "none");
    control.setAttribute("userInputFlag", "FALSE");
    control.setAttribute("transparentColorFlag", "FALSE");
    control.setAttribute("transparentColorIndex", "0");
    control.setAttribute("delayTime", Integer.toString(each_ms / 10));
    IIOMetadataNode again = new IIOMetadataNode("ApplicationExtension");
    again.setAttribute("applicationID", "NETSCAPE");
    again.setAttribute("authenticationCode", "2.0");
    again.setUserObject(new byte[] {1, 0, 0});
    child(root, "ApplicationExtensions").appendChild(again);
    about.setFromTree(FORMAT, root);
    return about;
  }

  private static IIOMetadataNode child(IIOMetadataNode root, String name) {
    for (int i = 0; i < root.getLength(); i++) {
      if (root.item(i) instanceof IIOMetadataNode node && node.getNodeName().equals(name)) {
        return node;
      }
    }
    IIOMetadataNode made = new IIOMetadataNode(name);
    root.appendChild(made);
    return made;
  }
}
