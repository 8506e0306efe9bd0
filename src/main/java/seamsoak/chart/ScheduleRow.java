package seamsoak.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import seamsoak.chart.figure.ScheduleFigure;
import seamsoak.chart.figure.Unit;

/**
 * One row of a schedule chart: a few steps beside each other, each a plot of its own, with the same
 * bands in all of them.
 *
 * @param figure the whole chart
 * @param panels where its steps stand
 * @param texts what they are called
 * @param area all the plots together
 * @param low lowest temperature of the chart
 * @param high highest temperature of the chart
 */
record ScheduleRow(
    ScheduleFigure figure,
    List<Panels.Panel> panels,
    PanelTexts texts,
    Rectangle2D area,
    double low,
    double high) {
  private static final double LEFT = 66;
  private static final double RIGHT = 258;

  /** Below the plot: minutes, totals, and what the time axis is. */
  private static final double BELOW = 74;

  private static final Print TOTAL = new Print(12, true, Ink.DARK);
  private static final Ink.Style CORE = new Ink.Style(Ink.DARK, Ink.solid(3.2));
  private static final Ink.Style FACE = new Ink.Style(Ink.EMBER, Ink.dashed(1.6, 5, 3));

  /** A step of one moment has no line, so its point is marked. */
  private static final Ink.Style MOMENT = new Ink.Style(Ink.DARK, null, Ink.STYLES.get(0).marker());

  /**
   * @param top where its texts begin
   * @param plotHeight of the plots alone
   */
  static ScheduleRow of(
      ScheduleFigure figure,
      List<ScheduleFigure.Treatment> steps,
      double top,
      double plotHeight,
      double low,
      double high) {
    double width = Drawing.WIDTH - LEFT - RIGHT;
    List<Panels.Panel> panels = Panels.of(steps, LEFT, width);
    PanelTexts texts = PanelTexts.of(panels, figure.steps().indexOf(steps.get(0)) + 1);
    Rectangle2D area = new Rectangle2D.Double(LEFT, top + texts.topHeight() + 4, width, plotHeight);
    return new ScheduleRow(figure, panels, texts, area, low, high);
  }

  double bottom() {
    return area.getMaxY() + BELOW + texts.keyHeight();
  }

  void draw(Canvas canvas) {
    Frame last = null;
    Point2D end = null;
    for (var panel : panels) {
      Frame frame = frame(panel);
      List<Point2D> core = curves(frame, panel.step());
      canvas.fill(frame.area, Ink.PANEL);
      if (last != null) {
        Line2D between = new Line2D.Double(end, core.get(0));
        canvas.outline(between, Ink.SOFT, Ink.dashed(1.5, 2, 3));
        double middle = (last.area.getMaxX() + panel.left()) / 2;
        slash(canvas, middle - 2.5);
        slash(canvas, middle + 2.5);
      }
      frame.draw(canvas);
      end = core.get(core.size() - 1);
      last = frame;
    }
    double y = area.getMinY() - 6;
    canvas.text(temperatures().firstName(), LEFT - 9, y, Letters.Anchor.END, Ink.NAME);
    canvas.text(temperatures().ownName(), area.getMaxX() + 9, y, Ink.NAME);
    texts.draw(canvas, area.getMinY() - 4, area.getMaxY() + BELOW);
    canvas.text(legend(), LEFT, area.getMaxY() + 59, Ink.NOTE);
    List<SideLabels.Side> sides = sides(last, true);
    boolean room = SideLabels.height(sides) <= area.getHeight() + 8;
    SideLabels.draw(canvas, room ? sides : sides(last, false), last);
  }

  private void slash(Canvas canvas, double x) {
    double y = area.getMaxY();
    canvas.line(x - 2, y + 6, x + 2, y - 6, Ink.SOFT, Ink.solid(1.2));
  }

  private String legend() {
    boolean faces = panels.stream().anyMatch(panel -> !panel.step().face().isEmpty());
    return (panels.size() > 1
            ? "Minutes within each step. Each panel has its own time scale (marked //)."
            : "Minutes from the start.")
        + (faces ? " Solid: the core. Dashed: the face." : "");
  }

  private Axes temperatures() {
    return Axes.of(low, high, figure.units(), Unit.FAHRENHEIT, Unit.CELSIUS);
  }

  private Frame frame(Panels.Panel panel) {
    double minutes = panel.step().minutes();
    Axes times = Axes.plain(0, minutes == 0 ? 1 : minutes);
    Axes up = temperatures();
    Frame frame =
        new Frame(
            new Rectangle2D.Double(panel.left(), area.getMinY(), panel.width(), area.getHeight()),
            times,
            up);
    String total = DurationAxis.words(minutes);
    boolean told = minutes > 0 && TOTAL.width(total) <= panel.width() + 4;
    times.first().setTickLabelsVisible(told);
    times.first().setTickMarksVisible(told);
    times.first().setLabel(told ? total : null);
    times.first().setLabelFont(new Lettering(TOTAL, Letters.Anchor.MIDDLE));
    up.first().setVisible(panel.equals(panels.get(0)));
    up.own().setVisible(up.own().isVisible() && panel.equals(panels.get(panels.size() - 1)));
    figure.bands().forEach(band -> band(frame, band));
    return frame;
  }

  /** Draws a step's curves; returns where that of the core runs on the page. */
  private static List<Point2D> curves(Frame frame, ScheduleFigure.Treatment step) {
    if (!step.face().isEmpty()) {
      frame.curve(points(step, step.face()), FACE);
    }
    return frame.curve(points(step, step.curve()), step.minutes() == 0 ? MOMENT : CORE);
  }

  private static List<Point2D> points(
      ScheduleFigure.Treatment step, List<ScheduleFigure.Corner> corners) {
    List<Point2D> points = new ArrayList<>();
    for (var corner : corners) {
      double minutes = step.minutes() == 0 ? 0.5 : corner.minutes() - step.start();
      points.add(new Point2D.Double(minutes, corner.celsius()));
    }
    return points;
  }

  private static Color color(ScheduleFigure.Meaning kind) {
    return switch (kind) {
      case CHANGE -> Ink.BLUE;
      case LIMIT -> Ink.EMBER;
      case GUIDE -> Ink.SOFT;
    };
  }

  private static void band(Frame frame, ScheduleFigure.Band band) {
    Color color = color(band.kind());
    if (band.highCelsius() > band.lowCelsius()) {
      frame.band(band.lowCelsius(), band.highCelsius(), Ink.pale(color, 46));
    }
    BasicStroke stroke =
        switch (band.kind()) {
          case CHANGE -> Ink.solid(1.4);
          case LIMIT -> Ink.dashed(2, 9, 4);
          case GUIDE -> Ink.dashed(1.4, 2, 3);
        };
    frame.level(band.middle(), new Ink.Style(color, stroke));
  }

  private List<SideLabels.Side> sides(Frame frame, boolean numbers) {
    double room = RIGHT - 82;
    List<SideLabels.Side> sides = new ArrayList<>();
    for (var band : figure.bands()) {
      Color color = color(band.kind());
      String range =
          numbers ? Unit.temperature(figure.units(), band.lowCelsius(), band.highCelsius()) : "";
      Block block =
          Block.of(band.label(), room, 1, Ink.WORD.in(color)).and(range, room, 1, Ink.NOTE);
      sides.add(new SideLabels.Side(frame.y(band.middle()), block, color, null));
    }
    return sides;
  }
}
