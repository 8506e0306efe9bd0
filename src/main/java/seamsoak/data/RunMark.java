package seamsoak.data;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;

/**
 * Names the run that a file came from. The same program, inputs and options give the same name,
 * whatever the day or the machine.
 *
 * @param value twelve hexadecimal digits
 */
public record RunMark(String value) {
  private static final int DIGITS = 12;
  private static final int MOST_BYTES = 8 << 20;

  /** Length, type and check sum of the last chunk of every PNG, which is empty. */
  private static final int PNG_END = 12;

  private static final Pattern WRITTEN =
      Pattern.compile("run\\W{1,6}([0-9a-f]{" + DIGITS + "})(?![0-9a-f])");

  /**
   * The mark of a run.
   *
   * @param inputs whatever sways what is written: version, options, the text of each file read
   */
  public static RunMark of(Collection<String> inputs) {
    MessageDigest digest = sha256();
    for (String input : inputs) {
      byte[] bytes = input.getBytes(StandardCharsets.UTF_8);
      digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(0, bytes.length));
      digest.update(bytes);
    }
    return new RunMark(HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS));
  }

  /** The mark of the run that wrote a file; none when the file is not of our writing. */
  public static Optional<RunMark> of(Path file) {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      Matcher m =
          WRITTEN.matcher(new String(in.readNBytes(MOST_BYTES), StandardCharsets.ISO_8859_1));
      return m.find() ? Optional.of(new RunMark(m.group(1))) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Whether a file is there that some other hand has put there. */
  public static boolean isStranger(Path file) {
    return Files.exists(file) && of(file).isEmpty();
  }

  /**
   * A file's content with the mark where its kind has room for it. JSON and CSV have none: whoever
   * writes those gives the mark a member or a column.
   */
  byte[] in(String name, byte[] content) {
    return switch (name.substring(name.lastIndexOf('.') + 1)) {
      case "svg", "html" -> join(content, utf8("<!-- Seamsoak run " + value + " -->\n"));
      case "txt" -> join(content, utf8("\nSeamsoak run " + value + "\n"));
      case "png" -> inPng(content);
      default -> content;
    };
  }

  private byte[] inPng(byte[] content) {
    byte[] typed = utf8("tEXtSeamsoak run\0" + value);
    CRC32 sum = new CRC32();
    sum.update(typed);
    ByteBuffer png = ByteBuffer.allocate(content.length + typed.length + 2 * Integer.BYTES);
    int end = content.length - PNG_END;
    png.put(content, 0, end).putInt(typed.length - Integer.BYTES).put(typed);
    png.putInt((int) sum.getValue()).put(content, end, PNG_END);
    return png.array();
  }

  private static byte[] join(byte[] a, byte[] b) {
    ByteArrayOutputStream both = new ByteArrayOutputStream();
    both.writeBytes(a);
    both.writeBytes(b);
    return both.toByteArray();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java has it
    }
  }
}
