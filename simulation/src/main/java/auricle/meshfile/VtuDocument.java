package auricle.meshfile;

import auricle.diagnostics.BadInputException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The XML of a VTU file: how its numbers are written, and the arrays of points and cells of every
 * piece. What stands in an AppendedData element need not be XML: it is cut out before.
 */
final class VtuDocument {
  /**
   * An array as it stands.
   *
   * @param attributes type, format, offset, NumberOfComponents …
   * @param text between its tags
   */
  record Array(Map<String, String> attributes, String text) {
    /** An attribute, or an empty word. */
    String get(String attribute) {
      return attributes.getOrDefault(attribute, "");
    }
  }

  /** Attributes of a piece and its arrays by name; the coordinates as {@code Points}. */
  record Piece(Map<String, String> attributes, Map<String, Array> arrays) {}

  private final String where;
  private final Map<String, String> head = new HashMap<>();
  private final List<Piece> pieces = new ArrayList<>();
  private Optional<byte[]> appended = Optional.empty();
  private boolean appendedRaw;

  VtuDocument(byte[] bytes, String where) throws BadInputException {
    this.where = where;
    try {
      parse(withoutAppended(bytes));
    } catch (XMLStreamException e) {
      String message = String.valueOf(e.getMessage());
      String reason = message.substring(message.indexOf('\n') + 1).replace("Message: ", "");
      throw MeshFiles.bad(
          where + ", line " + e.getLocation().getLineNumber(),
          "not well-formed XML (" + Words.printable(reason, 150) + ")",
          "a VTU file",
          "The file is cut off or damaged: write it again.");
    }
  }

  /** Attributes of the outermost element. */
  Map<String, String> head() {
    return head;
  }

  /** Pieces in the order of the file. */
  List<Piece> pieces() {
    return pieces;
  }

  /** The appended bytes from an offset on; empty if there are none. */
  Optional<ByteSource> appended(long offset) {
    return appended.map(
        data -> appendedRaw ? ByteSource.raw(data, offset) : ByteSource.base64(data, offset));
  }

  private byte[] withoutAppended(byte[] bytes) {
    int tag = indexOf(bytes, "<AppendedData", 0);
    int close = tag < 0 ? -1 : indexOf(bytes, ">", tag);
    int mark = close < 0 ? -1 : indexOf(bytes, "_", close);
    if (mark < 0) {
      return bytes;
    }
    String attributes = new String(bytes, tag, close - tag, StandardCharsets.ISO_8859_1);
    appendedRaw = attributes.contains("raw");
    appended = Optional.of(Arrays.copyOfRange(bytes, mark + 1, bytes.length));
    byte[] end = "</VTKFile>".getBytes(StandardCharsets.US_ASCII);
    byte[] xml = Arrays.copyOf(bytes, tag + end.length);
    System.arraycopy(end, 0, xml, tag, end.length);
    return xml;
  }

  private static int indexOf(byte[] bytes, String word, int from) {
    byte[] w = word.getBytes(StandardCharsets.US_ASCII);
    for (int i = from; i + w.length <= bytes.length; i++) {
      if (bytes[i] == w[0] && Arrays.equals(bytes, i, i + w.length, w, 0, w.length)) {
        return i;
      }
    }
    return -1;
  }

  private void parse(byte[] xml) throws XMLStreamException {
    XMLInputFactory factory = XMLInputFactory.newFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    // one letter a byte: what is needed is ascii, and names of fields may be in any encoding
    String text = new String(xml, StandardCharsets.ISO_8859_1);
    XMLStreamReader in = factory.createXMLStreamReader(new StringReader(text));
    Deque<String> path = new ArrayDeque<>();
    while (in.hasNext()) {
      int event = in.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        start(in, path);
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        path.pop();
      }
    }
  }

  private void start(XMLStreamReader in, Deque<String> path) throws XMLStreamException {
    String parent = path.isEmpty() ? "" : path.peek();
    String name = in.getLocalName();
    if (parent.isEmpty()) {
      head.putAll(attributes(in));
      head.put("element", name);
    } else if (name.equals("Piece")) {
      pieces.add(new Piece(attributes(in), new HashMap<>()));
    } else if (name.equals("DataArray") && !pieces.isEmpty() && isNeeded(parent)) {
      Map<String, String> attributes = attributes(in);
      String key = parent.equals("Points") ? parent : attributes.getOrDefault("Name", "");
      // reads up to the closing tag, which the loop then does not see
      Array array = new Array(attributes, in.getElementText());
      pieces.get(pieces.size() - 1).arrays().put(key, array);
      return;
    }
    path.push(name);
  }

  private static boolean isNeeded(String parent) {
    return parent.equals("Points") || parent.equals("Cells");
  }

  private static Map<String, String> attributes(XMLStreamReader in) {
    Map<String, String> attributes = new HashMap<>();
    for (int i = 0; i < in.getAttributeCount(); i++) {
      attributes.put(in.getAttributeLocalName(i), in.getAttributeValue(i));
    }
    return attributes;
  }

  /** Name of the file, for findings. */
  String where() {
    return where;
  }
}
