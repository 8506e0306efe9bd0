package seamsoak.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** The one visual language of all charts: colors, line weights and type sizes. */
final class Ink {
  static final Color PAPER = Color.WHITE;

  /** Main curve, answers, headings. */
  static final Color DARK = new Color(0x1C2730);

  /** Axis numbers and second lines. */
  static final Color SOFT = new Color(0x4C5863);

  static final Color EMBER = new Color(0xB2420C);
  static final Color BLUE = new Color(0x1F5F9E);
  static final Color MOSS = new Color(0x4A7A1E);
  static final Color PLUM = new Color(0x7A3C86);

  /** Every color that carries meaning as a line or a letter. */
  static final List<Color> LINES = List.of(DARK, SOFT, EMBER, BLUE, MOSS, PLUM);

  /** Helping lines that say nothing by themselves. */
  static final Color GRID = new Color(0xDDE2E6);

  static final Color PANEL = new Color(0xF5F7F8);

  static final Print TITLE = new Print(16, false, SOFT);

  /** Names of plots, axes and steps. */
  static final Print NAME = new Print(14, true, DARK);

  static final Print NUMBER = new Print(13, false, SOFT);
  static final Print WORD = new Print(13, true, DARK);
  static final Print NOTE = new Print(12, false, SOFT);
  static final Print SAID = new Print(12, false, DARK);

  private Ink() {}

  static Color pale(Color color, int alpha) {
    return new Color(color.getRed(), color.getGreen(), color.getBlue(), alpha);
  }

  static BasicStroke solid(double width) {
    return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
  }

  static BasicStroke dashed(double width, float... pattern) {
    return new BasicStroke(
        (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, pattern, 0);
  }

  /** How a curve is told from its neighbors by three means at once. */
  record Style(Color color, BasicStroke stroke, Shape marker) {
    Style(Color color, BasicStroke stroke) {
      this(color, stroke, null);
    }
  }

  /** A level to compare with. */
  static final Style LEVEL = new Style(SOFT, dashed(1.5, 2, 4));

  static final List<Style> STYLES =
      List.of(
          new Style(EMBER, solid(3), ring(6, 0, 0)),
          new Style(BLUE, dashed(3, 14, 5), new Rectangle2D.Double(-5.5, -5.5, 11, 11)),
          new Style(MOSS, dashed(3, 10, 4, 2.5f, 4), polygon(0, -7, 7, 6, -7, 6)),
          new Style(PLUM, dashed(3, 3, 3), polygon(0, -8, 7, 0, 0, 8, -7, 0)));

  static Shape ring(double radius, double x, double y) {
    return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
  }

  static Path2D polygon(double... xy) {
    Path2D path = new Path2D.Double();
    path.moveTo(xy[0], xy[1]);
    for (int i = 2; i < xy.length; i += 2) {
      path.lineTo(xy[i], xy[i + 1]);
    }
    path.closePath();
    return path;
  }
}
