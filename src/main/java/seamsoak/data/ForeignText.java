package seamsoak.data;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;

/**
 * A text that some other program wrote, in whatever encoding: a mark at its beginning says which,
 * else many zero bytes mean UTF-16; what is strictly UTF-8 is UTF-8, all else windows-1252.
 *
 * @param file file name as the user wrote it
 * @param content the characters, without a byte order mark
 * @param digest of its bytes, summed while it is read on
 */
public record ForeignText(String file, String content, CompletableFuture<String> digest) {
  private static final int MOST_BYTES = 64 << 20;
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  /** Stands for bytes that are no UTF-8, unless the file itself holds it. */
  private static final char REPLACED = '\uFFFD';

  private static final Charset WINDOWS = Charset.forName("windows-1252");

  /** Of so many bytes at the beginning every second is zero in UTF-16 of a western language. */
  private static final int LOOKED_AT = 4096;

  private static final double MANY_ZEROS = 0.3;

  /** Reads a file of at most 64 MB; {@link Fault} where it cannot, or where it holds no text. */
  public static ForeignText read(String file, Path path) {
    return of(file, TextFile.bytes(file, path, MOST_BYTES));
  }

  /** The text of these bytes; {@link Fault} where they are none. */
  public static ForeignText of(String file, byte[] bytes) {
    String text = decode(bytes);
    if (!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK) {
      text = text.substring(1);
    }
    if (text.isBlank()) {
      throw new Fault(Place.of(file), "it is empty", "give a log with a row for each reading");
    }
    if (text.indexOf('\0') >= 0) {
      throw new Fault(
          Place.of(file), "it holds zero bytes, so it is not text", "save the log as CSV");
    }
    return new ForeignText(file, text, CompletableFuture.supplyAsync(() -> Manifest.digest(bytes)));
  }

  /** SHA-256 of its bytes, in hexadecimal digits. */
  public String sha256() {
    return digest.join();
  }

  private static String decode(byte[] bytes) {
    if (starts(bytes, 0xFF, 0xFE)) {
      return new String(bytes, StandardCharsets.UTF_16LE);
    }
    if (starts(bytes, 0xFE, 0xFF)) {
      return new String(bytes, StandardCharsets.UTF_16BE);
    }
    int looked = Math.min(bytes.length, LOOKED_AT) & ~1;
    int[] zeros = new int[2];
    for (int i = 0; i < looked; i++) {
      zeros[i & 1] += bytes[i] == 0 ? 1 : 0;
    }
    if (Math.max(zeros[0], zeros[1]) > MANY_ZEROS * looked) {
      return new String(
          bytes, zeros[0] > zeros[1] ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_16LE);
    }
    String quick = new String(bytes, StandardCharsets.UTF_8);
    if (quick.indexOf(REPLACED) < 0) {
      return quick;
    }
    try {
      CharBuffer strict = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
      return strict.toString();
    } catch (CharacterCodingException e) {
      return new String(bytes, WINDOWS);
    }
  }

  private static boolean starts(byte[] bytes, int first, int second) {
    return bytes.length >= 2 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
  }
}
