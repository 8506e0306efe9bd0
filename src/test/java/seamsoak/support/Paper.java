package seamsoak.support;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** What a browser made of a page for a printer. */
public final class Paper {
  private static final Pattern STREAM = Pattern.compile("/ObjStm\\b[^>]*>>\\s*stream\\r?\\n");

  private Paper() {}

  /** How many sheets of a size, in points; one of another size is a fault. */
  public static int sheets(byte[] pdf, double width, double height) {
    String text = new String(pdf, StandardCharsets.ISO_8859_1);
    StringBuilder all = new StringBuilder(text);
    // some keep what a page is among objects that are packed
    Matcher packed = STREAM.matcher(text);
    while (packed.find()) {
      all.append(unpacked(pdf, packed.end()));
    }
    Matcher box =
        Pattern.compile("/MediaBox\\s*\\[\\s*0 0 ([0-9.]+) ([0-9.]+)\\s*\\]").matcher(all);
    int sheets = 0;
    while (box.find()) {
      sheets++;
      if (Math.abs(Double.parseDouble(box.group(1)) - width) > 1
          || Math.abs(Double.parseDouble(box.group(2)) - height) > 1) {
        throw new AssertionError(box.group());
      }
    }
    return sheets;
  }

  private static String unpacked(byte[] pdf, int from) {
    Inflater inflater = new Inflater();
    try {
      inflater.setInput(pdf, from, pdf.length - from);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      byte[] piece = new byte[8192];
      for (int n = inflater.inflate(piece); n > 0; n = inflater.inflate(piece)) {
        out.write(piece, 0, n);
      }
      return out.toString(StandardCharsets.ISO_8859_1);
    } catch (DataFormatException e) {
      throw new AssertionError(e);
    } finally {
      inflater.end();
    }
  }
}
