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

/** Draws a {@link ScheduleFigure}: one panel a step, bands across all of them. */
final class ScheduleDrawing implements Drawing {
  private static final double LEFT = 66;
  private static final double RIGHT = 258;
  private static final double PLOT_HEIGHT = 368;

  private final ScheduleFigure figure;
  private final Type type;
  private final Heading heading;
  private final Panels panels;
  private final PanelTexts texts;
  private final Rectangle2D area;
  private final double low;
  private final double high;

  ScheduleDrawing(ScheduleFigure figure, Type type) {
    this.figure = figure;
    this.type = type;
    heading = Heading.of(figure, type, WIDTH);
    panels = Panels.of(figure.steps(), LEFT, WIDTH - LEFT - RIGHT);
    texts = PanelTexts.of(figure.steps(), panels, type);
    double top = heading.bottom() + 14 + texts.topHeight();
    area = new Rectangle2D.Double(LEFT, top, WIDTH - LEFT - RIGHT, PLOT_HEIGHT);
    double least = 600;
    double most = 600;
    for (var step : figure.steps()) {
      for (var at : step.curve()) {
        least = Math.min(least, at.celsius());
        most = Math.max(most, at.celsius());
      }
    }
    for (var band : figure.bands()) {
      least = Math.min(least, band.lowCelsius());
      most = Math.max(most, band.highCelsius());
    }
    low = least - 50;
    high = most + 60;
  }

  @Override
  public double height() {
    return area.getMaxY() + 74 + texts.keyHeight();
  }

  @Override
  public void draw(Canvas canvas) {
    heading.draw(canvas);
    Temperatures temperatures = new Temperatures(figure.units());
    List<Tick> first = temperatures.first(low, high, 12);
    List<Tick> second = temperatures.second(low, high, 14);
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
    addCurve(frame);
    frame.draw(canvas);
    frame.letterLeft(canvas, first);
    frame.letterRight(canvas, second);
    unitNames(canvas, temperatures);
    new TimeMarks(panels, area, type).draw(canvas);
    texts.draw(canvas, heading.bottom() + 10, area.getMaxY() + 74);
    points(canvas, frame);
    double edge = second.isEmpty() ? area.getMaxX() : area.getMaxX() + 48;
    SideLabels.draw(
        canvas, sides(frame, temperatures), edge, area.getMinY() - 4, area.getMaxY() + 4);
  }

  private void unitNames(Canvas canvas, Temperatures temperatures) {
    double y = area.getMinY() - 6;
    canvas.text(
        new Letters(
            temperatures.firstName(),
            area.getMinX() - 9,
            y,
            Letters.Anchor.END,
            Ink.LABEL,
            true,
            Ink.DARK));
    canvas.text(
        new Letters(
            temperatures.secondName(),
            area.getMaxX() + 9,
            y,
            Letters.Anchor.START,
            Ink.LABEL,
            true,
            Ink.DARK));
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

  private void addCurve(Frame frame) {
    Point2D last = null;
    for (var panel : panels.list()) {
      List<Point2D> points = panel.points();
      if (last != null) {
        frame.curve(
            List.of(last, points.get(0)), new Ink.Style(Ink.SOFT, Ink.dashed(1.5, 2, 3), null));
      }
      frame.curve(points, new Ink.Style(Ink.DARK, Ink.solid(3.2), null));
      last = points.get(points.size() - 1);
    }
  }

  /** A step of one moment has no line, so its point is marked. */
  private void points(Canvas canvas, Frame frame) {
    for (var panel : panels.list()) {
      if (panel.step().minutes() == 0) {
        Point2D at = panel.points().get(0);
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
