package seamsoak.chart;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.ui.Layer;

/**
 * One row of a schedule chart: a few steps beside each other, the bands across all of them.
 *
 * @param figure the whole chart
 * @param panels where its steps stand
 * @param texts what they are called
 * @param area the plot
 * @param low lowest temperature of the chart
 * @param high highest temperature of the chart
 */
record ScheduleRow(
    ScheduleFigure figure,
    Type type,
    Panels panels,
    PanelTexts texts,
    Rectangle2D area,
    double low,
    double high) {
  static final double LEFT = 66;
  static final double RIGHT = 258;

  /** Below the plot: minutes, totals, and what the time axis is. */
  private static final double BELOW = 74;

  private static final Ink.Style CORE = new Ink.Style(Ink.DARK, Ink.solid(3.2), null);
  private static final Ink.Style FACE = new Ink.Style(Ink.EMBER, Ink.dashed(1.6f, 5, 3), null);
  private static final Ink.Style BETWEEN = new Ink.Style(Ink.SOFT, Ink.dashed(1.5, 2, 3), null);

  /**
   * @param top where its texts begin
   * @param plotHeight of the plot alone
   */
  static ScheduleRow of(
      ScheduleFigure figure,
      List<ScheduleFigure.Step> steps,
      Type type,
      double top,
      double plotHeight,
      double low,
      double high) {
    double width = Drawing.WIDTH - LEFT - RIGHT;
    Panels panels = Panels.of(steps, LEFT, width);
    int first = figure.steps().indexOf(steps.get(0)) + 1;
    PanelTexts texts = PanelTexts.of(steps, first, panels, type);
    Rectangle2D area = new Rectangle2D.Double(LEFT, top + texts.topHeight() + 4, width, plotHeight);
    return new ScheduleRow(figure, type, panels, texts, area, low, high);
  }

  double bottom() {
    return area.getMaxY() + BELOW + texts.keyHeight();
  }

  void draw(Canvas canvas) {
    Temperatures temperatures = new Temperatures(figure.units());
    int most = (int) (area.getHeight() / 30);
    List<Tick> first = temperatures.first(low, high, most);
    List<Tick> second = temperatures.second(low, high, most + 1);
    ValueAxis across = TickedAxis.linear(area.getMinX(), area.getMaxX(), List.of());
    across.setVisible(false);
    Frame frame = new Frame(area, across, TickedAxis.linear(low, high, first));
    if (!second.isEmpty()) {
      frame.plot.setRangeAxis(1, TickedAxis.linear(low, high, second));
    }
    for (var panel : panels.list()) {
      canvas.fill(
          new Rectangle2D.Double(panel.left(), area.getMinY(), panel.width(), area.getHeight()),
          Ink.PANEL);
    }
    figure.bands().forEach(band -> addBand(frame, band));
    addCurves(frame);
    frame.draw(canvas);
    frame.letterLeft(canvas, first);
    frame.letterRight(canvas, second);
    unitNames(canvas, temperatures);
    new TimeMarks(panels, area, type).draw(canvas);
    texts.draw(canvas, area.getMinY() - 4 - texts.topHeight(), area.getMaxY() + BELOW);
    points(canvas, frame);
    double edge = second.isEmpty() ? area.getMaxX() : area.getMaxX() + 48;
    SideLabels.draw(
        canvas, sides(frame, temperatures), edge, area.getMinY() - 4, area.getMaxY() + 4);
  }

  private void unitNames(Canvas canvas, Temperatures temperatures) {
    double y = area.getMinY() - 6;
    bold(canvas, temperatures.firstName(), area.getMinX() - 9, y, Letters.Anchor.END);
    bold(canvas, temperatures.secondName(), area.getMaxX() + 9, y, Letters.Anchor.START);
  }

  private static void bold(Canvas canvas, String text, double x, double y, Letters.Anchor anchor) {
    canvas.text(new Letters(text, x, y, anchor, Ink.LABEL, true, Ink.DARK));
  }

  private static Color color(ScheduleFigure.Kind kind) {
    return switch (kind) {
      case CHANGE -> Ink.BLUE;
      case LIMIT -> Ink.EMBER;
      case GUIDE -> Ink.SOFT;
    };
  }

  private static void addBand(Frame frame, ScheduleFigure.Band band) {
    Color color = color(band.kind());
    if (band.highCelsius() > band.lowCelsius()) {
      IntervalMarker marker = new IntervalMarker(band.lowCelsius(), band.highCelsius());
      marker.setPaint(Ink.pale(color, 46));
      marker.setAlpha(1);
      marker.setOutlinePaint(null);
      frame.plot.addRangeMarker(marker, Layer.BACKGROUND);
    }
    ValueMarker line =
        new ValueMarker(
            band.middle(),
            color,
            switch (band.kind()) {
              case CHANGE -> Ink.solid(1.4);
              case LIMIT -> Ink.dashed(2, 9, 4);
              case GUIDE -> Ink.dashed(1.4, 2, 3);
            });
    line.setAlpha(1);
    frame.plot.addRangeMarker(line, Layer.BACKGROUND);
  }

  private void addCurves(Frame frame) {
    Point2D last = null;
    for (var panel : panels.list()) {
      List<Point2D> points = panel.points(panel.step().curve());
      if (last != null) {
        frame.curve(List.of(last, points.get(0)), BETWEEN);
      }
      if (!panel.step().face().isEmpty()) {
        frame.curve(panel.points(panel.step().face()), FACE);
      }
      frame.curve(points, CORE);
      last = points.get(points.size() - 1);
    }
  }

  /** A step of one moment has no line, so its point is marked. */
  private void points(Canvas canvas, Frame frame) {
    for (var panel : panels.list()) {
      if (panel.step().minutes() == 0) {
        Point2D at = panel.points(panel.step().curve()).get(0);
        canvas.marker(
            Ink.STYLES.get(0).marker(), frame.x(at.getX()), frame.y(at.getY()), Ink.DARK, true);
      }
    }
  }

  private List<SideLabels.Side> sides(Frame frame, Temperatures temperatures) {
    List<SideLabels.Side> sides = sides(frame, temperatures, true);
    return SideLabels.height(sides) <= area.getHeight() + 8
        ? sides
        : sides(frame, temperatures, false);
  }

  private List<SideLabels.Side> sides(Frame frame, Temperatures temperatures, boolean numbers) {
    double room = RIGHT - 82;
    List<SideLabels.Side> sides = new ArrayList<>();
    for (var band : figure.bands()) {
      Color color = color(band.kind());
      List<Block.Line> lines =
          new ArrayList<>(Block.wrap(type, band.label(), room, 1, 13, true, color));
      if (numbers) {
        String range = temperatures.text(band.lowCelsius(), band.highCelsius());
        lines.addAll(Block.wrap(type, range, room, 1, Ink.NOTE, false, Ink.SOFT));
      }
      sides.add(new SideLabels.Side(frame.y(band.middle()), Block.of(type, lines), color, null));
    }
    return sides;
  }
}
