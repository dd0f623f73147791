package auricle.meshfile;

import auricle.diagnostics.BadInputException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;
import java.util.StringTokenizer;

/** The numbers of a PLY file behind its header, one after the other. */
interface PlyNumbers {
  /**
   * The next number.
   *
   * @throws BadInputException if the file ends before it or it is no number
   */
  double next(Scalar type) throws BadInputException;

  /** Bytes that are left. */
  long left();

  /** Numbers as the header says. */
  static PlyNumbers of(byte[] bytes, PlyHeader header, String where) {
    return switch (header.encoding()) {
      case ASCII -> new Ascii(bytes, header.end(), where);
      case BINARY_LITTLE_ENDIAN -> new Binary(bytes, header.end(), ByteOrder.LITTLE_ENDIAN, where);
      case BINARY_BIG_ENDIAN -> new Binary(bytes, header.end(), ByteOrder.BIG_ENDIAN, where);
    };
  }

  /** The file ended too early. */
  static BadInputException ended(String where) {
    return MeshFiles.bad(
        where,
        "an end before the elements that the header names",
        "all of them",
        "The file is cut off: write it again.");
  }

  /** Numbers in words. */
  final class Ascii implements PlyNumbers {
    private final StringTokenizer words;
    private final long size;
    private final String where;
    private long used;

    Ascii(byte[] bytes, int from, String where) {
      this.size = (long) bytes.length - from;
      this.words =
          new StringTokenizer(new String(bytes, from, (int) size, StandardCharsets.ISO_8859_1));
      this.where = where;
    }

    @Override
    public double next(Scalar type) throws BadInputException {
      if (!words.hasMoreTokens()) {
        throw ended(where);
      }
      String word = words.nextToken();
      used += word.length() + 1;
      OptionalDouble value = Words.number(word);
      if (value.isEmpty()) {
        throw MeshFiles.bad(where, Words.quoted(word) + " among the elements", "a number", "");
      }
      return value.getAsDouble();
    }

    @Override
    public long left() {
      return size - used + 1;
    }
  }

  /** Numbers in bytes. */
  final class Binary implements PlyNumbers {
    private final ByteBuffer data;
    private final String where;
    private int at;

    Binary(byte[] bytes, int from, ByteOrder order, String where) {
      this.data = ByteBuffer.wrap(bytes).order(order);
      this.at = from;
      this.where = where;
    }

    @Override
    public double next(Scalar type) throws BadInputException {
      if (data.capacity() - at < type.bytes()) {
        throw ended(where);
      }
      at += type.bytes();
      return type.get(data, at - type.bytes());
    }

    @Override
    public long left() {
      return (long) data.capacity() - at;
    }
  }
}
