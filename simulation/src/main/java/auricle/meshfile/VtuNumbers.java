package auricle.meshfile;

import auricle.diagnostics.BadInputException;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.StringTokenizer;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** Decodes arrays of a VTU file: words, base64 or appended bytes, plain or in zlib blocks. */
final class VtuNumbers {
  private static final String ZLIB = "vtkZLibDataCompressor";

  private final VtuDocument document;
  private final ByteOrder order;
  private final int headerBytes;
  private final boolean compressed;

  VtuNumbers(VtuDocument document) throws BadInputException {
    this.document = document;
    String endian = document.head().getOrDefault("byte_order", "LittleEndian");
    this.order = endian.equals("BigEndian") ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN;
    String header = document.head().getOrDefault("header_type", "UInt32");
    this.headerBytes = header.equals("UInt64") ? 8 : 4;
    String compressor = document.head().getOrDefault("compressor", "");
    this.compressed = !compressor.isEmpty();
    if (compressed && !compressor.equals(ZLIB)) {
      throw MeshFiles.bad(
          document.where(),
          "arrays packed by " + compressor,
          "no compression, or " + ZLIB,
          "Write the file again without compression.");
    }
  }

  /**
   * The numbers of an array.
   *
   * @param most how many it may hold; packed arrays that claim more are not unpacked
   */
  double[] of(VtuDocument.Array array, String name, long most) throws BadInputException {
    Scalar type =
        Scalar.of(array.get("type"))
            .orElseThrow(() -> bad(name, "of type '" + array.get("type") + "'", "a number type"));
    if (array.get("format").equals("ascii")) {
      return words(array.text(), name);
    }
    byte[] bytes = bytes(array, name, most * type.bytes());
    if (bytes.length % type.bytes() != 0) {
      throw bad(name, "of " + bytes.length + " bytes", "whole numbers of " + type.bytes());
    }
    ByteBuffer data = ByteBuffer.wrap(bytes).order(order);
    double[] values = new double[bytes.length / type.bytes()];
    for (int i = 0; i < values.length; i++) {
      values[i] = type.get(data, i * type.bytes());
    }
    return values;
  }

  private double[] words(String text, String name) throws BadInputException {
    StringTokenizer words = new StringTokenizer(text);
    double[] values = new double[words.countTokens()];
    for (int i = 0; i < values.length; i++) {
      String word = words.nextToken();
      values[i] =
          Words.number(word).orElseThrow(() -> bad(name, "with " + Words.quoted(word), "numbers"));
    }
    return values;
  }

  private byte[] bytes(VtuDocument.Array array, String name, long most) throws BadInputException {
    ByteSource source = source(array, name);
    long size = size(source, name);
    if (!compressed) {
      String found = "that claims " + size + " bytes, where at most " + source.left() + " follow";
      return source.take(size).orElseThrow(() -> bad(name, found, "as many as it claims"));
    }
    return inflated(source, size, most, name);
  }

  private ByteSource source(VtuDocument.Array array, String name) throws BadInputException {
    switch (array.get("format")) {
      case "binary" -> {
        return ByteSource.base64(array.text().strip().getBytes(StandardCharsets.ISO_8859_1), 0);
      }
      case "appended" -> {
        Optional<ByteSource> source =
            Words.whole(array.get("offset")).stream()
                .filter(offset -> offset >= 0)
                .mapToObj(offset -> document.appended().from(offset))
                .findFirst()
                .flatMap(s -> s);
        String found = "appended at offset '" + array.get("offset") + "'";
        return source.orElseThrow(() -> bad(name, found, "an AppendedData element with it"));
      }
      default ->
          throw bad(name, "of format '" + array.get("format") + "'", "ascii, binary or appended");
    }
  }

  private long size(ByteSource source, String name) throws BadInputException {
    byte[] word =
        source.take(headerBytes).orElseThrow(() -> bad(name, "that is cut off", "all of it"));
    ByteBuffer data = ByteBuffer.wrap(word).order(order);
    return headerBytes == 8 ? data.getLong() : Integer.toUnsignedLong(data.getInt());
  }

  private byte[] inflated(ByteSource source, long blocks, long most, String name)
      throws BadInputException {
    if (blocks < 0 || blocks > source.left() / headerBytes) {
      throw bad(name, "that claims " + blocks + " packed blocks", "no more than the file holds");
    }
    long blockSize = blocks == 0 ? 0 : size(source, name);
    long lastSize = blocks == 0 ? 0 : size(source, name);
    double claimed = (double) blockSize * (lastSize > 0 ? blocks - 1 : blocks) + lastSize;
    double limit = Math.min(most, MeshFiles.LARGEST_BYTES);
    if (blockSize < 0 || lastSize < 0 || claimed > limit) {
      throw bad(
          name, "that unpacks to %.0f bytes".formatted(claimed), "at most %.0f".formatted(limit));
    }
    long[] packed = new long[(int) blocks];
    for (int i = 0; i < packed.length; i++) {
      packed[i] = size(source, name);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (int i = 0; i < packed.length; i++) {
      byte[] block =
          source.take(packed[i]).orElseThrow(() -> bad(name, "that is cut off", "all of it"));
      inflate(block, i == packed.length - 1 && lastSize > 0 ? lastSize : blockSize, out, name);
    }
    return out.toByteArray();
  }

  private void inflate(byte[] block, long size, ByteArrayOutputStream out, String name)
      throws BadInputException {
    Inflater inflater = new Inflater();
    try {
      inflater.setInput(block);
      byte[] part = new byte[1 << 15];
      long done = 0;
      int got = inflater.inflate(part);
      while (got > 0 && done <= size && out.size() < MeshFiles.LARGEST_BYTES) {
        out.write(part, 0, got);
        done += got;
        got = inflater.inflate(part);
      }
      if (done != size) {
        throw bad(name, "with a block that unpacks to " + done + " bytes", size + " bytes");
      }
    } catch (DataFormatException e) {
      throw bad(name, "with a damaged block (" + e.getMessage() + ")", "zlib blocks");
    } finally {
      inflater.end();
    }
  }

  private BadInputException bad(String name, String found, String expected) {
    return MeshFiles.bad(document.where(), "array '" + name + "' " + found, expected, "");
  }
}
