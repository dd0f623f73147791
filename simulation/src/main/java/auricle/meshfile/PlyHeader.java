package auricle.meshfile;

import auricle.diagnostics.BadInputException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/** What the head of a PLY file says: its encoding, and its elements with their properties. */
final class PlyHeader {
  /** How the numbers are written. */
  enum Encoding {
    ASCII,
    BINARY_LITTLE_ENDIAN,
    BINARY_BIG_ENDIAN
  }

  /**
   * A property; a list if it has a type for its length.
   *
   * @param length type of the number of members, for a list
   */
  record Property(String name, Scalar type, Optional<Scalar> length) {}

  /** A kind of element, how many there are, and the properties of each. */
  record Element(String name, int count, List<Property> properties) {
    /** Place of a property among the element's, or -1. */
    int indexOf(String property) {
      for (int i = 0; i < properties.size(); i++) {
        if (properties.get(i).name().equals(property)) {
          return i;
        }
      }
      return -1;
    }
  }

  private final String where;
  private final List<Element> elements = new ArrayList<>();
  private Optional<Encoding> encoding = Optional.empty();
  private int line;
  private int end;

  PlyHeader(byte[] bytes, String where) throws BadInputException {
    this.where = where;
    if (!next(bytes).equals("ply")) {
      throw bad("no 'ply' in the first line", "a PLY file");
    }
    String text = next(bytes);
    while (!text.equals("end_header")) {
      read(text.split("\\s+"), text);
      text = next(bytes);
    }
    if (encoding.isEmpty()) {
      throw bad("no format", "'format ascii 1.0' or a binary one in the header");
    }
  }

  /** How the numbers are written. */
  Encoding encoding() {
    return encoding.orElseThrow();
  }

  /** Elements in the order of the file. */
  List<Element> elements() {
    return List.copyOf(elements);
  }

  /** Place of the first byte behind the header. */
  int end() {
    return end;
  }

  /** Number of lines of the header. */
  int lines() {
    return line;
  }

  private String next(byte[] bytes) throws BadInputException {
    int from = end;
    while (end < bytes.length && bytes[end] != '\n' && end - from < 4096) {
      end++;
    }
    if (end == bytes.length || bytes[end] != '\n') {
      throw bad("a header without an end", "'end_header'");
    }
    line++;
    return new String(bytes, from, end++ - from, StandardCharsets.UTF_8).strip();
  }

  private void read(String[] words, String text) throws BadInputException {
    switch (words[0]) {
      case "format" -> encoding = Optional.of(encoding(words, text));
      case "element" -> elements.add(element(words, text));
      case "property" -> {
        if (elements.isEmpty()) {
          throw bad(Words.quoted(text), "an element before its properties");
        }
        elements.get(elements.size() - 1).properties().add(property(words, text));
      }
      case "comment", "obj_info", "" -> {}
      default -> throw bad(Words.quoted(text), "a line of a PLY header");
    }
  }

  private Encoding encoding(String[] words, String text) throws BadInputException {
    for (Encoding e : Encoding.values()) {
      if (words.length > 1 && e.name().toLowerCase(Locale.ROOT).equals(words[1])) {
        return e;
      }
    }
    throw bad(
        Words.quoted(text), "format ascii, binary_little_endian or binary_big_endian, then 1.0");
  }

  private Element element(String[] words, String text) throws BadInputException {
    OptionalInt count = words.length == 3 ? Words.whole(words[2]) : OptionalInt.empty();
    if (count.isEmpty() || count.getAsInt() < 0) {
      throw bad(Words.quoted(text), "'element', a name and a number");
    }
    return new Element(words[1], count.getAsInt(), new ArrayList<>());
  }

  private Property property(String[] words, String text) throws BadInputException {
    boolean list = words.length == 5 && words[1].equals("list");
    Optional<Scalar> length = list ? Scalar.of(words[2]) : Optional.empty();
    Optional<Scalar> type = list || words.length == 3 ? Scalar.of(words[words.length - 2]) : length;
    boolean lengthFits = !list || length.filter(Scalar::isWhole).isPresent();
    if (type.isEmpty() || !lengthFits) {
      throw bad(Words.quoted(text), "'property', a number type and a name");
    }
    return new Property(words[words.length - 1], type.get(), length);
  }

  private BadInputException bad(String found, String expected) {
    return MeshFiles.bad(where + ", line " + Math.max(line, 1), found, expected, "");
  }
}
