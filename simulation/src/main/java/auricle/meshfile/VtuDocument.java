package auricle.meshfile;

import auricle.diagnostics.BadInputException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The XML of a VTU file: how its numbers are written, and the arrays of points and cells of every
 * piece.
 */
final class VtuDocument {
  /**
   * An array as it stands.
   *
   * @param attributes type, format, offset, NumberOfComponents …
   * @param content what stands between its tags, but not in elements inside
   */
  record Array(Map<String, String> attributes, StringBuilder content) {
    /** The words or letters of its numbers. */
    String text() {
      return content.toString();
    }

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
  private final VtuAppended appended;

  /** The array that is being read, if one is. */
  private final Deque<Array> open = new ArrayDeque<>();

  VtuDocument(byte[] bytes, String where) throws BadInputException {
    this.where = where;
    this.appended = new VtuAppended(bytes);
    try {
      parse(appended.before());
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

  /** What stands in the AppendedData element. */
  VtuAppended appended() {
    return appended;
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
        start(in, path.isEmpty() ? "" : path.peek());
        path.push(in.getLocalName());
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        if (path.pop().equals("DataArray")) {
          open.pop();
        }
      } else if (event == XMLStreamConstants.CHARACTERS && "DataArray".equals(path.peek())) {
        StringBuilder content = open.element().content();
        content.append(in.getTextCharacters(), in.getTextStart(), in.getTextLength());
      }
    }
  }

  private void start(XMLStreamReader in, String parent) {
    String name = in.getLocalName();
    if (head.isEmpty()) {
      head.putAll(attributes(in));
      head.put("element", name);
    } else if (name.equals("Piece")) {
      pieces.add(new Piece(attributes(in), new HashMap<>()));
    } else if (name.equals("DataArray")) {
      Array array = new Array(attributes(in), new StringBuilder());
      open.push(array);
      if (!pieces.isEmpty() && isNeeded(parent)) {
        String key = parent.equals("Points") ? parent : array.get("Name");
        pieces.get(pieces.size() - 1).arrays().put(key, array);
      }
    }
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
