package seamsoak.chart;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * The typeface that the program brings. Widths and outlines are read from the font file itself, not
 * asked of the machine's text engine, so that the same input is laid out alike everywhere, also
 * where no font is installed. File format: OpenType specification, tables head, hhea, hmtx and cmap
 * (format 4).
 */
final class Typeface {
  private final byte[] file;
  private final ByteBuffer data;
  private final int unitsPerEm;
  private final int advances;
  private final int hmtx;
  private final int cmap;
  private final Glyphs glyphs;

  private Typeface(byte[] file) {
    this.file = file;
    data = ByteBuffer.wrap(file);
    unitsPerEm = unsigned(table("head") + 18);
    advances = unsigned(table("hhea") + 34);
    hmtx = table("hmtx");
    cmap = unicodeMap(table("cmap"));
    glyphs = new Glyphs(data, table("loca"), table("glyf"));
  }

  /** Read from the program once, when the first chart is drawn. */
  private static final class Packed {
    private static final Typeface REGULAR = read("DejaVuSans.ttf");
    private static final Typeface BOLD = read("DejaVuSans-Bold.ttf");
  }

  static Typeface of(boolean bold) {
    return bold ? Packed.BOLD : Packed.REGULAR;
  }

  private static Typeface read(String name) {
    String path = "/net/sf/jasperreports/fonts/dejavu/" + name;
    try (InputStream in = Typeface.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("font missing from the program: " + name);
      }
      return new Typeface(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Width of a line of text, in the unit of {@code size}. */
  double width(String text, double size) {
    long units = text.codePoints().mapToLong(this::advance).sum();
    return units * size / unitsPerEm;
  }

  /** A line of text as a shape, its left end and baseline at x, y, for pictures made of dots. */
  Path2D outline(String text, double size, double x, double y) {
    double scale = size / unitsPerEm;
    Path2D path = new Path2D.Double();
    double pen = 0;
    for (int codePoint : text.codePoints().toArray()) {
      AffineTransform place = new AffineTransform(scale, 0, 0, -scale, x + pen * scale, y);
      path.append(glyphs.outline(glyph(codePoint)).getPathIterator(place), false);
      pen += advance(codePoint);
    }
    return path;
  }

  private int advance(int codePoint) {
    return unsigned(hmtx + 4 * Math.min(glyph(codePoint), advances - 1));
  }

  private int glyph(int character) {
    if (character > 0xFFFF) {
      return 0;
    }
    int twiceSegments = unsigned(cmap + 6);
    int ends = cmap + 14;
    int segment = 0;
    while (unsigned(ends + segment) < character) {
      segment += 2;
    }
    int start = unsigned(ends + twiceSegments + 2 + segment);
    if (character < start) {
      return 0;
    }
    int delta = unsigned(ends + 2 * twiceSegments + 2 + segment);
    int offsetAt = ends + 3 * twiceSegments + 2 + segment;
    int offset = unsigned(offsetAt);
    if (offset == 0) {
      return character + delta & 0xFFFF;
    }
    int glyph = unsigned(offsetAt + offset + 2 * (character - start));
    return glyph == 0 ? 0 : glyph + delta & 0xFFFF;
  }

  private int table(String tag) {
    int count = unsigned(4);
    for (int i = 0; i < count; i++) {
      int at = 12 + 16 * i;
      if (new String(file, at, 4, StandardCharsets.US_ASCII).equals(tag)) {
        return data.getInt(at + 8);
      }
    }
    throw new IllegalStateException("font has no table " + tag);
  }

  private int unicodeMap(int table) {
    int count = unsigned(table + 2);
    for (int i = 0; i < count; i++) {
      int at = table + data.getInt(table + 8 + 8 * i);
      if (unsigned(at) == 4) {
        return at;
      }
    }
    throw new IllegalStateException("font has no Unicode map");
  }

  private int unsigned(int at) {
    return data.getShort(at) & 0xFFFF;
  }
}
