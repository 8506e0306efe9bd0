package seamsoak.chart;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.zip.Adler32;

/**
 * Bytes packed as RFC 1950 and 1951 have it, by how often each comes and nothing else. What the
 * machine's own packer makes of them depends on which it is, and a picture shall have the same
 * bytes everywhere.
 */
final class Deflated {
  private static final int LITERALS = 257;
  private static final int END = 256;
  private static final int MOST_BITS = 15;
  private static final int MOST_BITS_OF_LENGTHS = 7;

  /** The order in which the lengths of the words for lengths are told. */
  private static final int[] ORDER = {
    16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15
  };

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private long held;
  private int bits;

  private Deflated() {}

  static byte[] of(byte[] data) {
    return new Deflated().packed(data);
  }

  private byte[] packed(byte[] data) {
    out.write(0x78);
    out.write(0x01);
    long[] counts = new long[LITERALS];
    for (byte b : data) {
      counts[b & 0xFF]++;
    }
    counts[END] = 1;
    Huffman literals = Huffman.of(counts, MOST_BITS);
    put(1, 1); // the last block
    put(2, 2); // with words of its own
    put(0, 5); // for literals and the end
    put(0, 5); // one distance, never used
    lengths(literals.lengths());
    for (byte b : data) {
      put(literals.words()[b & 0xFF], literals.lengths()[b & 0xFF]);
    }
    put(literals.words()[END], literals.lengths()[END]);
    put(0, (Byte.SIZE - bits) % Byte.SIZE);
    Adler32 sum = new Adler32();
    sum.update(data);
    for (int shift = 24; shift >= 0; shift -= 8) {
      out.write((int) (sum.getValue() >>> shift));
    }
    return out.toByteArray();
  }

  private void lengths(int[] literals) {
    int[] all = Arrays.copyOf(literals, LITERALS + 1);
    long[] counts = new long[ORDER.length];
    for (int length : all) {
      counts[length]++;
    }
    Huffman words = Huffman.of(counts, MOST_BITS_OF_LENGTHS);
    put(ORDER.length - 4, 4);
    for (int symbol : ORDER) {
      put(words.lengths()[symbol], 3);
    }
    for (int length : all) {
      put(words.words()[length], words.lengths()[length]);
    }
  }

  private void put(int word, int length) {
    held |= (long) word << bits;
    bits += length;
    while (bits >= Byte.SIZE) {
      out.write((int) held);
      held >>>= Byte.SIZE;
      bits -= Byte.SIZE;
    }
  }
}
