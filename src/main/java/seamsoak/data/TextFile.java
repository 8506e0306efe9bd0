package seamsoak.data;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads a small UTF-8 file whole, or says in one sentence why it cannot. */
public final class TextFile {
  static final int MOST_BYTES = 1 << 20;

  private TextFile() {}

  /** The text of a file of at most 1 MB. */
  public static String read(String file, Path path) {
    return text(file, bytes(file, path));
  }

  /** The content of a file of at most 1 MB. */
  static byte[] bytes(String file, Path path) {
    return bytes(file, path, MOST_BYTES);
  }

  /** The content of a file of at most so many bytes. */
  static byte[] bytes(String file, Path path, int most) {
    if (Files.isDirectory(path)) {
      throw new Fault(Place.of(file), "it is a folder", "give the file itself");
    }
    try (InputStream in = Files.newInputStream(path)) {
      return bytes(file, in, most);
    } catch (NoSuchFileException e) {
      throw new Fault(Place.of(file), "there is no such file", "check its name and folder");
    } catch (AccessDeniedException e) {
      throw new Fault(Place.of(file), "it may not be read", "check its permissions");
    } catch (IOException e) {
      String reason = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
      throw new Fault(Place.of(file), "it cannot be read (" + reason + ")", "give a readable file");
    }
  }

  static byte[] bytes(String file, InputStream in) throws IOException {
    return bytes(file, in, MOST_BYTES);
  }

  /** Reads no more than the limit, however much there is. */
  private static byte[] bytes(String file, InputStream in, int most) throws IOException {
    byte[] bytes = in.readNBytes(most + 1);
    if (bytes.length > most) {
      throw new Fault(
          Place.of(file),
          "it is larger than " + most / MOST_BYTES + " MB",
          "a file for this program is "
              + (most == MOST_BYTES ? "a few kB of text" : "the log of one heat"));
    }
    return bytes;
  }

  static String text(String file, byte[] bytes) {
    String text = decode(file, bytes);
    if (text.isBlank()) {
      throw new Fault(Place.of(file), "it is empty", "write JSON between braces");
    }
    int nul = text.indexOf('\0');
    if (nul >= 0) {
      int line = 1 + (int) text.substring(0, nul).chars().filter(c -> c == '\n').count();
      throw new Fault(
          new Place(file, line, 0), "a zero byte stands here, so it is not text", "give JSON");
    }
    return text;
  }

  private static String decode(String file, byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer text = CharBuffer.allocate(bytes.length);
    if (StandardCharsets.UTF_8.newDecoder().decode(in, text, true).isError()) {
      int line = 1;
      for (int i = 0; i < in.position(); i++) {
        line += bytes[i] == '\n' ? 1 : 0;
      }
      throw new Fault(new Place(file, line, 0), "this is not UTF-8 text", "save it as UTF-8");
    }
    String decoded = text.flip().toString();
    return decoded.startsWith("\uFEFF") ? decoded.substring(1) : decoded;
  }
}
