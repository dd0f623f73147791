package auricle.meshfile;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * What stands in the AppendedData element of a VTU file, behind an underscore: bytes as they are,
 * or base64. The bytes need not be XML, so they are cut out before the rest is parsed.
 */
final class VtuAppended {
  private static final byte[] END = "</VTKFile>".getBytes(StandardCharsets.US_ASCII);

  private final byte[] file;
  private final int tag;
  private final int mark;
  private final boolean raw;

  VtuAppended(byte[] file) {
    this.file = file;
    this.tag = indexOf(file, "<AppendedData", 0);
    int close = tag < 0 ? -1 : indexOf(file, ">", tag);
    this.mark = close < 0 ? -1 : indexOf(file, "_", close);
    this.raw =
        mark >= 0
            && new String(file, tag, close - tag, StandardCharsets.ISO_8859_1).contains("raw");
  }

  /** The XML before the element, closed again; the whole file if there is no such element. */
  byte[] before() {
    if (mark < 0) {
      return file;
    }
    byte[] xml = Arrays.copyOf(file, tag + END.length);
    System.arraycopy(END, 0, xml, tag, END.length);
    return xml;
  }

  /** The bytes from an offset on; empty if there are none at all. */
  Optional<ByteSource> from(long offset) {
    if (mark < 0) {
      return Optional.empty();
    }
    long at = mark + 1 + offset;
    return Optional.of(raw ? ByteSource.raw(file, at) : ByteSource.base64(file, at));
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
}
