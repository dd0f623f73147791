package auricle.meshfile;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** Bytes that are taken from the front, raw or as base64. */
interface ByteSource {
  /** The next bytes, or empty if there are not that many or they are not base64. */
  Optional<byte[]> take(long count);

  /** At most so many bytes are left. */
  long left();

  /** The bytes themselves from a place on. */
  static ByteSource raw(byte[] bytes, long from) {
    return new ByteSource() {
      private long at = from;

      @Override
      public Optional<byte[]> take(long count) {
        if (at < 0 || count < 0 || count > left()) {
          return Optional.empty();
        }
        at += count;
        return Optional.of(Arrays.copyOfRange(bytes, (int) (at - count), (int) at));
      }

      @Override
      public long left() {
        return bytes.length - at;
      }
    };
  }

  /**
   * Base64 from a place on. It may be padded in the middle: the format lets the length before an
   * array be encoded by itself.
   */
  static ByteSource base64(byte[] text, long from) {
    return new Base64Source(text, from);
  }

  /** Decodes four letters at a time, each four by themselves. */
  final class Base64Source implements ByteSource {
    private static final byte[] DIGITS = digits();

    private final byte[] text;
    private long at;
    private int held;
    private final byte[] group = new byte[3];
    private int next = 3;

    Base64Source(byte[] text, long from) {
      this.text = text;
      this.at = from;
      this.held = 3;
    }

    private static byte[] digits() {
      byte[] digits = new byte[256];
      Arrays.fill(digits, (byte) -1);
      byte[] letters =
          "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/"
              .getBytes(StandardCharsets.US_ASCII);
      for (int i = 0; i < letters.length; i++) {
        digits[letters[i]] = (byte) i;
      }
      return digits;
    }

    @Override
    public long left() {
      return Math.max(0, text.length - at) / 4 * 3 + held - next;
    }

    @Override
    public Optional<byte[]> take(long count) {
      if (at < 0 || count < 0 || count > left()) {
        return Optional.empty();
      }
      byte[] out = new byte[(int) count];
      for (int i = 0; i < out.length; i++) {
        if (next >= held && !decode()) {
          return Optional.empty();
        }
        out[i] = group[next++];
      }
      return Optional.of(out);
    }

    private boolean decode() {
      int bits = 0;
      int letters = 0;
      while (letters < 4 && at < text.length && text[(int) at] != '=') {
        byte b = text[(int) at++];
        if (b != ' ' && b != '\n' && b != '\r' && b != '\t') {
          int digit = DIGITS[b & 0xff];
          if (digit < 0) {
            return false;
          }
          bits = bits << 6 | digit;
          letters++;
        }
      }
      while (letters > 0 && at < text.length && text[(int) at] == '=') {
        at++;
      }
      bits <<= 6 * (4 - letters);
      for (int k = 0; k < 3; k++) {
        group[k] = (byte) (bits >> (16 - 8 * k));
      }
      held = letters - 1;
      next = 0;
      return held > 0;
    }
  }
}
