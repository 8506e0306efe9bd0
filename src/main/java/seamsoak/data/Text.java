package seamsoak.data;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.OptionalInt;

/**
 * A text file read whole, which tells the line and column of any character in it.
 *
 * @param file file name as the user wrote it
 * @param content the characters, without a byte order mark
 */
record Text(String file, String content) {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  /** Reads UTF-8; {@link Fault} for other encodings and for zero bytes. */
  static Text read(String file, InputStream in) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(TextFile.bytes(file, in));
    CharBuffer chars = CharBuffer.allocate(bytes.remaining());
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    boolean broken = decoder.decode(bytes, chars, true).isError();
    String content = chars.flip().toString();
    if (!content.isEmpty() && content.charAt(0) == BYTE_ORDER_MARK) {
      content = content.substring(1);
    }
    Text text = new Text(file, content);
    if (broken) {
      throw new Fault(text.place(content.length()), "this is not UTF-8 text", "save it as UTF-8");
    }
    int nul = content.indexOf('\0');
    if (nul >= 0) {
      throw new Fault(text.place(nul), "a zero byte stands here", "give plain text");
    }
    return text;
  }

  /** Line and column of the character at that offset; lines end with LF, CRLF or CR. */
  Place place(int offset) {
    int line = 1;
    int start = 0;
    for (int i = 0; i < offset; i++) {
      if (endsLine(i)) {
        line++;
        start = i + 1;
      }
    }
    return new Place(file, line, offset - start + 1);
  }

  /** The offset of a place, or none where the text does not reach so far. */
  OptionalInt offset(Place place) {
    int line = 1;
    int start = 0;
    for (int i = 0; i < content.length() && line < place.line(); i++) {
      if (endsLine(i)) {
        line++;
        start = i + 1;
      }
    }
    int at = start + Math.max(0, place.column() - 1);
    return line == place.line() && at <= content.length()
        ? OptionalInt.of(at)
        : OptionalInt.empty();
  }

  private boolean endsLine(int i) {
    char c = content.charAt(i);
    return c == '\n' || c == '\r' && !content.startsWith("\n", i + 1);
  }
}
