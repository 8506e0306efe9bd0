package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.ByteBuffer;
import java.util.zip.CRC32;

/** Reads a PNG chunk by chunk, as ISO/IEC 15948 has them: length, type, data, check sum. */
final class PngChunks {
  private static final int SIGNATURE = 8;

  private PngChunks() {}

  /** Every check sum is right and the last chunk ends the file. */
  static void check(byte[] png) {
    ByteBuffer in = ByteBuffer.wrap(png).position(SIGNATURE);
    String type = "";
    while (in.hasRemaining()) {
      byte[] typed = new byte[in.getInt() + Integer.BYTES];
      in.get(typed);
      CRC32 sum = new CRC32();
      sum.update(typed);
      type = new String(typed, 0, Integer.BYTES, java.nio.charset.StandardCharsets.US_ASCII);
      assertEquals((int) sum.getValue(), in.getInt(), type);
    }
    assertEquals("IEND", type);
  }
}
