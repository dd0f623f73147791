package auricle.yamlfile;

import auricle.diagnostics.Finding;
import java.util.HashMap;
import java.util.Map;

/**
 * Where every key and value of a text file stands, by JSON pointer (RFC 6901): {@code
 * /loads/0/point_force}.
 */
public final class Places {
  private record Place(int line, int column) {}

  private final String file;
  private final Map<String, Place> places = new HashMap<>();

  /**
   * @param file name of the file, for messages
   */
  public Places(String file) {
    this.file = file;
  }

  /** Notes a key, or an item of a list; what was noted first stays. */
  void note(String pointer, int line, int column) {
    places.putIfAbsent(pointer, new Place(line, column));
  }

  /** File, line, column and path of what a pointer names, or of the nearest thing around it. */
  String describe(String pointer) {
    String near = pointer;
    while (!places.containsKey(near) && near.contains("/")) {
      near = near.substring(0, near.lastIndexOf('/'));
    }
    Place place = places.getOrDefault(near, new Place(1, 1));
    String path = path(pointer);
    return at(place.line(), place.column()) + (path.isEmpty() ? "" : ", " + path);
  }

  /** File, line and column. */
  String at(int line, int column) {
    return file + " line " + line + " column " + column;
  }

  /** A finding whose place is a pointer, with the place in the file instead. */
  public Finding locate(Finding finding) {
    String where = finding.where();
    return where.isEmpty() || where.startsWith("/") ? finding.at(describe(where)) : finding;
  }

  /** {@code /loads/0/set} as {@code loads[0].set}. */
  static String path(String pointer) {
    StringBuilder path = new StringBuilder();
    for (String part : pointer.split("/", -1)) {
      String name = part.replace("~1", "/").replace("~0", "~");
      if (name.matches("\\d+")) {
        path.append('[').append(name).append(']');
      } else if (!name.isEmpty()) {
        path.append(path.isEmpty() ? "" : ".").append(name);
      }
    }
    return path.toString();
  }
}
