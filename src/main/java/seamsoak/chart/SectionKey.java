package seamsoak.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import seamsoak.chart.figure.SectionFigure;
import seamsoak.chart.figure.Unit;
import seamsoak.unit.UnitSystem;

/**
 * The key of a {@link SectionDrawing}: steels, seams, and how long an inch is.
 *
 * @param scale how long a millimetre is drawn
 * @param height from its top to the end of the page
 */
record SectionKey(UnitSystem units, double scale, List<Swatch> swatches, double height) {
  static final double LEFT = 24;
  static final Color JACKET = new Color(0xF1D9C7);

  /** Fills of the steels, dark and light in turn, told apart in gray as well. */
  private static final List<Color> STEELS =
      List.of(new Color(0x5E6B76), new Color(0xDCE2E7), new Color(0x97A3AD), new Color(0xBBA98F));

  private static final List<BasicStroke> SEAMS =
      List.of(
          Ink.solid(1.8),
          Ink.dashed(1.8, 7, 3),
          Ink.dashed(1.8, 7, 2.5f, 2, 2.5f),
          Ink.dashed(1.8, 2.5f, 2.5f));

  /**
   * What a fill or a seam means.
   *
   * @param style of a seam; without a stroke it is a fill
   * @param x where it stands
   * @param y the same, from the top of the key
   */
  private record Swatch(String name, Ink.Style style, double x, double y) {
    double width() {
      return style.stroke() == null ? 22 : 34;
    }

    double right() {
      return x + width() + 6 + Ink.SAID.width(name) + 20;
    }
  }

  static SectionKey of(SectionFigure figure, double scale) {
    List<Swatch> all = new ArrayList<>();
    for (int i = 0; i < figure.steels().size(); i++) {
      add(all, figure.steels().get(i), new Ink.Style(steel(i), null));
    }
    if (figure.panels().stream().flatMap(p -> p.views().stream()).anyMatch(v -> v.jacketUp() > 0)) {
      add(all, "jacket", new Ink.Style(JACKET, null));
    }
    for (int i = 0; i < figure.seams().size(); i++) {
      add(all, figure.seams().get(i).name(), seam(i));
    }
    return new SectionKey(figure.units(), scale, all, all.get(all.size() - 1).y() + 48);
  }

  /** Beside the last if there is room, else on a line below. */
  private static void add(List<Swatch> all, String name, Ink.Style style) {
    String shown = Ink.SAID.wrap(name, 260, 1).get(0);
    Swatch last = all.isEmpty() ? null : all.get(all.size() - 1);
    Swatch beside =
        last == null
            ? new Swatch(shown, style, LEFT, 19)
            : new Swatch(shown, style, last.right(), last.y());
    boolean room = last == null || beside.right() <= Drawing.WIDTH - LEFT;
    all.add(room ? beside : new Swatch(shown, style, LEFT, last.y() + 20));
  }

  static Color steel(int i) {
    return STEELS.get(i % STEELS.size());
  }

  static Ink.Style seam(int set) {
    Color color = Ink.STYLES.get(set % Ink.STYLES.size()).color();
    return new Ink.Style(color, SEAMS.get(set % SEAMS.size()));
  }

  void draw(Canvas canvas, double top) {
    for (Swatch s : swatches) {
      double y = top + s.y();
      if (s.style().stroke() == null) {
        Rectangle2D box = new Rectangle2D.Double(s.x(), y - 11, s.width(), 13);
        canvas.fill(box, s.style().color());
        canvas.outline(box, Ink.DARK, Ink.solid(1));
      } else {
        canvas.line(s.x(), y - 4, s.x() + s.width(), y - 4, s.style().color(), s.style().stroke());
      }
      canvas.text(s.name(), s.x() + s.width() + 6, y, Ink.SAID);
    }
    double right = LEFT + (units == UnitSystem.METRIC ? 20 : 25.4) * scale;
    double y = top + height - 22;
    canvas.line(LEFT, y, right, y, Ink.DARK, Ink.solid(1.6));
    canvas.line(LEFT, y - 4, LEFT, y + 4, Ink.DARK, Ink.solid(1.6));
    canvas.line(right, y - 4, right, y + 4, Ink.DARK, Ink.solid(1.6));
    String length = units == UnitSystem.METRIC ? "20 mm" : Unit.both(units, "1 in", "25.4 mm");
    canvas.text(length + ", the same in every panel", right + 10, y + 4, Ink.SAID);
  }
}
