package seamsoak.chart;

import java.awt.geom.Rectangle2D;
import java.util.List;

/** The time axis under each panel, broken between panels. */
record TimeMarks(Panels panels, Rectangle2D area, Type type) {

  void draw(Canvas canvas) {
    double y = area.getMaxY();
    for (int i = 0; i < panels.list().size(); i++) {
      Panels.Panel panel = panels.list().get(i);
      double right = panel.left() + panel.width();
      canvas.line(panel.left(), y, right, y, Ink.SOFT, Ink.solid(1.2));
      marks(canvas, panel, y);
      total(canvas, panel, y + 38);
      if (i + 1 < panels.list().size()) {
        double middle = right + panels.gap() / 2;
        slash(canvas, middle - 2.5, y);
        slash(canvas, middle + 2.5, y);
      }
    }
    canvas.text(
        new Letters(
            (panels.list().size() > 1
                    ? "Minutes within each step. Each panel has its own time scale (marked //)."
                    : "Minutes from the start.")
                + (faces() ? " Solid: the core. Dashed: the face." : ""),
            area.getMinX(),
            y + 59,
            Letters.Anchor.START,
            Ink.NOTE,
            false,
            Ink.SOFT));
  }

  private boolean faces() {
    return panels.list().stream().anyMatch(panel -> !panel.step().face().isEmpty());
  }

  private static void slash(Canvas canvas, double x, double y) {
    canvas.line(x - 2, y + 6, x + 2, y - 6, Ink.SOFT, Ink.solid(1.2));
  }

  /** Round minutes, numbered as far as the panel is wide; beyond three hours in hours. */
  private void marks(Canvas canvas, Panels.Panel panel, double y) {
    double minutes = panel.step().minutes();
    if (minutes == 0 || !showsTotal(panel)) {
      return;
    }
    Tick.Unit unit = minutes > 180 ? new Tick.Unit(1 / 60.0, 0) : Tick.Unit.OWN;
    int most = (int) (panel.width() / 38);
    List<Tick> ticks = most < 1 ? List.of() : Tick.round(0, minutes, most, unit);
    double free = Double.NEGATIVE_INFINITY;
    double last = panel.left() + panel.width() + panels.gap() - 7;
    for (Tick tick : ticks) {
      double x = panel.x(tick.at());
      canvas.line(x, y, x, y + 5, Ink.SOFT, Ink.solid(1.2));
      String label = unit == Tick.Unit.OWN || tick.at() == 0 ? tick.label() : tick.label() + " h";
      double half = type.width(label, Ink.NOTE, false) / 2;
      if (x - half > free && x + half < last) {
        canvas.text(
            new Letters(label, x, y + 19, Letters.Anchor.MIDDLE, Ink.NOTE, false, Ink.SOFT));
        free = x + half + 4;
      }
    }
  }

  private boolean showsTotal(Panels.Panel panel) {
    String text = Tick.duration(panel.step().minutes());
    return type.width(text, Ink.NOTE, true) <= panel.width() + panels.gap() - 3;
  }

  private void total(Canvas canvas, Panels.Panel panel, double y) {
    String text = Tick.duration(panel.step().minutes());
    if (panel.step().minutes() > 0 && showsTotal(panel)) {
      canvas.text(
          new Letters(text, panel.middle(), y, Letters.Anchor.MIDDLE, Ink.NOTE, true, Ink.DARK));
    }
  }
}
