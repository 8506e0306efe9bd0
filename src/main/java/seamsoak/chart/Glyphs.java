package seamsoak.chart;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.nio.ByteBuffer;

/**
 * Outlines of a TrueType font in font units, y up. File format: OpenType specification, tables loca
 * and glyf; hints are left out, since letters are drawn as shapes.
 *
 * @param loca where table loca starts
 * @param glyf where table glyf starts
 */
record Glyphs(ByteBuffer data, int loca, int glyf) {
  private static final int ON_CURVE = 1;
  private static final int REPEAT = 8;

  private static final int WORDS = 1;
  private static final int MORE = 0x20;
  private static final int SCALED = 8 | 0x40 | 0x80;

  Path2D outline(int glyph) {
    int from = offset(glyph);
    if (from == offset(glyph + 1)) {
      return new Path2D.Double();
    }
    ByteBuffer in = data.duplicate().position(glyf + from);
    int contours = in.getShort();
    in.position(in.position() + 8);
    return contours < 0 ? composed(in) : simple(in, contours);
  }

  private int offset(int glyph) {
    return data.getInt(loca + 4 * glyph);
  }

  private Path2D composed(ByteBuffer in) {
    Path2D path = new Path2D.Double();
    int flags;
    do {
      flags = in.getShort();
      int part = in.getShort() & 0xFFFF;
      boolean words = (flags & WORDS) != 0;
      double dx = words ? in.getShort() : in.get();
      double dy = words ? in.getShort() : in.get();
      if ((flags & SCALED) != 0) {
        throw new IllegalStateException("the font has scaled parts of glyphs");
      }
      AffineTransform shift = AffineTransform.getTranslateInstance(dx, dy);
      path.append(outline(part).getPathIterator(shift), false);
    } while ((flags & MORE) != 0);
    return path;
  }

  private static Path2D simple(ByteBuffer in, int contours) {
    int[] ends = new int[contours];
    for (int i = 0; i < contours; i++) {
      ends[i] = in.getShort() & 0xFFFF;
    }
    int points = contours == 0 ? 0 : ends[contours - 1] + 1;
    int hints = in.getShort() & 0xFFFF;
    in.position(in.position() + hints);
    int[] flags = new int[points];
    for (int i = 0; i < points; i++) {
      flags[i] = in.get();
      if ((flags[i] & REPEAT) != 0) {
        for (int again = in.get() & 0xFF; again > 0; again--, i++) {
          flags[i + 1] = flags[i];
        }
      }
    }
    int[] x = coordinates(in, flags, 2, 16);
    int[] y = coordinates(in, flags, 4, 32);
    Path2D path = new Path2D.Double();
    int first = 0;
    for (int end : ends) {
      contour(path, flags, x, y, first, end - first + 1);
      first = end + 1;
    }
    return path;
  }

  private static int[] coordinates(ByteBuffer in, int[] flags, int isShort, int sameOrPositive) {
    int[] values = new int[flags.length];
    int value = 0;
    for (int i = 0; i < flags.length; i++) {
      boolean bit = (flags[i] & sameOrPositive) != 0;
      if ((flags[i] & isShort) != 0) {
        int step = in.get() & 0xFF;
        value += bit ? step : -step;
      } else if (!bit) {
        value += in.getShort();
      }
      values[i] = value;
    }
    return values;
  }

  /**
   * Between two control points in a row lies a point of the curve, half-way, that is not stored.
   */
  private static void contour(Path2D path, int[] flags, int[] x, int[] y, int first, int count) {
    int start = 0;
    while (start < count && (flags[first + start] & ON_CURVE) == 0) {
      start++;
    }
    if (start == count) {
      return;
    }
    path.moveTo(x[first + start], y[first + start]);
    for (int i = 1; i <= count; i++) {
      int at = first + (start + i) % count;
      if ((flags[at] & ON_CURVE) != 0) {
        path.lineTo(x[at], y[at]);
        continue;
      }
      int next = first + (start + i + 1) % count;
      if ((flags[next] & ON_CURVE) != 0) {
        path.quadTo(x[at], y[at], x[next], y[next]);
        i++;
      } else {
        path.quadTo(x[at], y[at], (x[at] + x[next]) / 2.0, (y[at] + y[next]) / 2.0);
      }
    }
    path.closePath();
  }
}
