package auricle.meshfile;

import java.nio.ByteBuffer;
import java.util.Map;
import java.util.Optional;

/** A number type of binary files, with the names that PLY and VTK give it. */
enum Scalar {
  INT8(1),
  UINT8(1),
  INT16(2),
  UINT16(2),
  INT32(4),
  UINT32(4),
  INT64(8),
  UINT64(8),
  FLOAT32(4),
  FLOAT64(8);

  private static final Map<String, Scalar> NAMES =
      Map.ofEntries(
          Map.entry("char", INT8),
          Map.entry("uchar", UINT8),
          Map.entry("short", INT16),
          Map.entry("ushort", UINT16),
          Map.entry("int", INT32),
          Map.entry("uint", UINT32),
          Map.entry("float", FLOAT32),
          Map.entry("double", FLOAT64));

  private final int bytes;

  Scalar(int bytes) {
    this.bytes = bytes;
  }

  /** The type of a name, such as {@code float}, {@code uint8} or {@code Float64}. */
  static Optional<Scalar> of(String name) {
    for (Scalar s : values()) {
      if (s.name().equalsIgnoreCase(name)) {
        return Optional.of(s);
      }
    }
    return Optional.ofNullable(NAMES.get(name));
  }

  /** Size of one number. */
  int bytes() {
    return bytes;
  }

  /** Whether the type has whole numbers alone. */
  boolean isWhole() {
    return this != FLOAT32 && this != FLOAT64;
  }

  /** The number at a place; whole numbers beyond 2^53 lose their last digits. */
  double get(ByteBuffer data, int at) {
    return switch (this) {
      case INT8 -> data.get(at);
      case UINT8 -> data.get(at) & 0xff;
      case INT16 -> data.getShort(at);
      case UINT16 -> data.getShort(at) & 0xffff;
      case INT32 -> data.getInt(at);
      case UINT32 -> Integer.toUnsignedLong(data.getInt(at));
      case INT64 -> data.getLong(at);
      case UINT64 -> data.getLong(at) >= 0 ? data.getLong(at) : Double.MAX_VALUE;
      case FLOAT32 -> data.getFloat(at);
      case FLOAT64 -> data.getDouble(at);
    };
  }
}
