package seamsoak.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import seamsoak.unit.UnitSystem;

/** The key of a {@link SectionDrawing}: steels, seams, and how long an inch is. */
final class SectionKey {
  static final double LEFT = 24;
  static final Color JACKET = new Color(0xF1D9C7);

  /** Fills of the steels, dark and light in turn, told apart in gray as well. */
  private static final List<Color> STEELS =
      List.of(new Color(0x5E6B76), new Color(0xDCE2E7), new Color(0x97A3AD), new Color(0xBBA98F));

  private final UnitSystem units;
  private final Type type;
  private final double scale;
  private final List<Entry> entries;
  private final List<Point2D> places;

  /**
   * @param scale how long a millimetre is drawn
   */
  SectionKey(SectionFigure figure, Type type, double scale) {
    this.units = figure.units();
    this.type = type;
    this.scale = scale;
    this.entries = entries(figure);
    this.places = places();
  }

  static Color steel(int i) {
    return STEELS.get(i % STEELS.size());
  }

  static BasicStroke stroke(int set) {
    return switch (set % 4) {
      case 0 -> Ink.solid(1.8);
      case 1 -> Ink.dashed(1.8, 7, 3);
      case 2 -> Ink.dashed(1.8, 7, 2.5f, 2, 2.5f);
      default -> Ink.dashed(1.8, 2.5f, 2.5f);
    };
  }

  /** One entry of the key: what it draws at a place, and its words. */
  private record Entry(String name, double swatch, BiConsumer<Canvas, Point2D> draw) {}

  private static List<Entry> entries(SectionFigure figure) {
    List<Entry> all = new ArrayList<>();
    for (int i = 0; i < figure.steels().size(); i++) {
      all.add(box(figure.steels().get(i), steel(i)));
    }
    if (figure.panels().stream().flatMap(p -> p.views().stream()).anyMatch(v -> v.jacketUp() > 0)) {
      all.add(box("jacket", JACKET));
    }
    for (int i = 0; i < figure.seams().size(); i++) {
      Color color = Ink.STYLES.get(i % Ink.STYLES.size()).color();
      BasicStroke stroke = stroke(i);
      all.add(
          new Entry(
              "seams of " + figure.seams().get(i).name(),
              34,
              (canvas, at) ->
                  canvas.line(
                      at.getX(), at.getY() - 4, at.getX() + 34, at.getY() - 4, color, stroke)));
    }
    return all;
  }

  private static Entry box(String name, Color color) {
    return new Entry(
        name,
        22,
        (canvas, at) -> {
          Rectangle2D box = new Rectangle2D.Double(at.getX(), at.getY() - 11, 22, 13);
          canvas.fill(box, color);
          canvas.outline(box, Ink.DARK, Ink.solid(1));
        });
  }

  /** Where each entry of the key stands, from the top of the key. */
  private List<Point2D> places() {
    List<Point2D> places = new ArrayList<>();
    double x = LEFT;
    double y = 19;
    for (Entry e : entries) {
      double width = e.swatch() + 6 + type.width(shown(e), Ink.NOTE, false) + 20;
      if (x > LEFT && x + width > Drawing.WIDTH - LEFT) {
        x = LEFT;
        y += 20;
      }
      places.add(new Point2D.Double(x, y));
      x += width;
    }
    return places;
  }

  private String shown(Entry e) {
    return type.wrap(e.name(), 260, 1, Ink.NOTE, false).get(0);
  }

  double height() {
    return places.get(places.size() - 1).getY() + 48;
  }

  void draw(Canvas canvas, double top) {
    for (int i = 0; i < entries.size(); i++) {
      Entry e = entries.get(i);
      Point2D at = new Point2D.Double(places.get(i).getX(), top + places.get(i).getY());
      e.draw().accept(canvas, at);
      word(canvas, shown(e), at.getX() + e.swatch() + 6, at.getY());
    }
    boolean metric = units == UnitSystem.METRIC;
    double bar = (metric ? 20 : 25.4) * scale;
    double y = top + places.get(places.size() - 1).getY() + 26;
    canvas.line(LEFT, y, LEFT + bar, y, Ink.DARK, Ink.solid(1.6));
    canvas.line(LEFT, y - 4, LEFT, y + 4, Ink.DARK, Ink.solid(1.6));
    canvas.line(LEFT + bar, y - 4, LEFT + bar, y + 4, Ink.DARK, Ink.solid(1.6));
    String length =
        switch (units) {
          case US -> "1 in";
          case METRIC -> "20 mm";
          case BOTH -> "1 in (25.4 mm)";
        };
    word(canvas, length + ", the same in every panel", LEFT + bar + 10, y + 4);
  }

  private static void word(Canvas canvas, String text, double x, double y) {
    canvas.text(new Letters(text, x, y, Letters.Anchor.START, Ink.NOTE, false, Ink.DARK));
  }
}
