package seamsoak.chart;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jfree.chart.annotations.XYPolygonAnnotation;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.ui.Layer;

/** Draws a {@link SoakFigure}: minutes above, cost below, on one temperature axis. */
final class SoakDrawing implements Drawing {
  private static final double LEFT = 84;
  private static final double RIGHT = 76;
  private static final double HEIGHT = 640;

  private final SoakFigure figure;
  private final Type type;
  private final Heading heading;
  private final Temperatures temperatures;
  private final Rectangle2D area;
  private final SoakCost cost;
  private final SoakScale scale;

  SoakDrawing(SoakFigure figure, Type type) {
    this.figure = figure;
    this.type = type;
    heading = Heading.of(figure, type, WIDTH);
    temperatures = new Temperatures(figure.units());
    scale = SoakScale.of(figure);
    double top = heading.bottom() + 56;
    SoakCost below = new SoakCost(figure, type);
    double plot = HEIGHT - 54 - below.height() - top;
    area = new Rectangle2D.Double(LEFT, top, WIDTH - LEFT - RIGHT, plot);
    cost = below;
  }

  @Override
  public double height() {
    return HEIGHT;
  }

  @Override
  public void draw(Canvas canvas) {
    heading.draw(canvas);
    List<Tick> first = temperatures.first(scale.from(), scale.to(), 10);
    List<Tick> second = temperatures.second(scale.from(), scale.to(), 10);
    List<Tick> times = scale.times();
    canvas.fill(area, Ink.PANEL);
    Frame frame =
        new Frame(
            area,
            TickedAxis.linear(scale.from(), scale.to(), first),
            TickedAxis.log(scale.least(), scale.most(), times));
    if (!second.isEmpty()) {
      frame.plot.setDomainAxis(1, TickedAxis.linear(scale.from(), scale.to(), second));
      frame.letterTop(canvas, second);
      canvas.text(
          new Letters(
              temperatures.secondName(),
              area.getMaxX() + 30,
              area.getMinY() - 10,
              Letters.Anchor.START,
              Ink.LABEL,
              true,
              Ink.DARK));
    }
    frame.letterLeft(canvas, times);
    canvas.text(
        new Letters(
            "time to clear the lines",
            24,
            area.getMinY() - (second.isEmpty() ? 12 : 30),
            Letters.Anchor.START,
            Ink.LABEL,
            true,
            Ink.DARK));
    Placer placer =
        new Placer(
            new Rectangle2D.Double(
                area.getX() + 6, area.getY() + 6, area.getWidth() - 12, area.getHeight() - 12));
    limits(frame, placer);
    band(frame, placer);
    curve(frame, placer);
    frame.draw(canvas);
    dots(canvas, frame, placer);
    new SoakLabels(figure, type, scale, frame, placer, canvas).draw();
    if (cost.height() > 0) {
      cost.draw(canvas, area, scale.from(), scale.to(), first);
    }
    double bottom = HEIGHT - 54;
    bottomAxis(canvas, frame, first, bottom);
  }

  private void bottomAxis(Canvas canvas, Frame frame, List<Tick> ticks, double y) {
    for (Tick tick : ticks) {
      canvas.text(
          new Letters(
              tick.label(),
              frame.x(tick.at()),
              y + 20,
              Letters.Anchor.MIDDLE,
              13,
              false,
              Ink.SOFT));
    }
    canvas.text(
        new Letters(
            "soak temperature, " + temperatures.firstName(),
            (area.getMinX() + area.getMaxX()) / 2,
            y + 42,
            Letters.Anchor.MIDDLE,
            Ink.LABEL,
            true,
            Ink.DARK));
  }

  static Color color(SoakFigure.Limit limit) {
    return limit.stop() ? Ink.EMBER : Ink.PLUM;
  }

  private void limits(Frame frame, Placer placer) {
    for (var limit : figure.limits()) {
      ValueMarker line =
          new ValueMarker(
              limit.celsius(), color(limit), limit.stop() ? Ink.solid(2.5) : Ink.dashed(2, 9, 4));
      line.setAlpha(1);
      if (limit.stop()) {
        IntervalMarker beyond = new IntervalMarker(limit.celsius(), scale.to());
        beyond.setPaint(Ink.pale(Ink.EMBER, 40));
        beyond.setAlpha(1);
        beyond.setOutlinePaint(null);
        frame.plot.addDomainMarker(beyond, Layer.BACKGROUND);
      }
      frame.plot.addDomainMarker(line, Layer.BACKGROUND);
      double x = frame.x(limit.celsius());
      placer.avoid(x, area.getMinY(), x, area.getMaxY());
    }
    if (figure.most().isPresent()) {
      double minutes = scale.clip(figure.most().getAsDouble());
      ValueMarker line = new ValueMarker(minutes, Ink.DARK, Ink.dashed(1.8, 3, 3));
      line.setAlpha(1);
      frame.plot.addRangeMarker(line, Layer.BACKGROUND);
      placer.avoid(area.getMinX(), frame.y(minutes), area.getMaxX(), frame.y(minutes));
    }
  }

  /** From the low to the high estimate; what has no high estimate runs off the top. */
  private void band(Frame frame, Placer placer) {
    List<SoakFigure.Option> banded =
        figure.options().stream().filter(o -> o.minutesLow().isPresent()).toList();
    if (banded.isEmpty()) {
      return;
    }
    List<Point2D> upper = new ArrayList<>();
    List<Point2D> lower = new ArrayList<>();
    for (var option : banded) {
      double low = scale.clip(option.minutesLow().getAsDouble());
      double high = scale.clip(option.minutesHigh().orElse(scale.most()));
      lower.add(0, new Point2D.Double(option.celsius(), low));
      upper.add(new Point2D.Double(option.celsius(), high));
    }
    if (banded.size() == 1) {
      Ink.Style bar = new Ink.Style(Ink.BLUE, Ink.solid(2), null);
      placer.avoid(frame.curve(List.of(lower.get(0), upper.get(0)), bar));
      return;
    }
    List<Point2D> outline = new ArrayList<>(upper);
    outline.addAll(lower);
    double[] polygon =
        outline.stream().flatMapToDouble(p -> DoubleStream.of(p.getX(), p.getY())).toArray();
    frame.plot.addAnnotation(new XYPolygonAnnotation(polygon, null, null, Ink.pale(Ink.BLUE, 48)));
    Ink.Style edge = new Ink.Style(Ink.BLUE, Ink.solid(1), null);
    placer.avoid(frame.curve(upper, edge));
    placer.avoid(frame.curve(lower, edge));
  }

  private void curve(Frame frame, Placer placer) {
    List<Point2D> run = new ArrayList<>();
    for (var option : figure.options()) {
      if (option.minutes().isPresent()) {
        run.add(new Point2D.Double(option.celsius(), scale.clip(option.minutes().getAsDouble())));
      } else {
        flush(frame, placer, run);
      }
    }
    flush(frame, placer, run);
  }

  private static void flush(Frame frame, Placer placer, List<Point2D> run) {
    if (run.size() > 1) {
      placer.avoid(frame.curve(run, new Ink.Style(Ink.BLUE, Ink.solid(3.2), null)));
    }
    run.clear();
  }

  /** Full dots are within the longest soak, empty ones beyond it, triangles beyond a day. */
  private void dots(Canvas canvas, Frame frame, Placer placer) {
    for (var option : figure.options()) {
      double x = frame.x(option.celsius());
      double minutes = option.minutes().orElse(Double.POSITIVE_INFINITY);
      double y = option.minutes().isEmpty() ? area.getMinY() + 12 : frame.y(scale.clip(minutes));
      boolean within = minutes <= figure.most().orElse(SoakScale.DAY);
      canvas.marker(
          Ink.STYLES.get(option.minutes().isEmpty() ? 2 : 0).marker(), x, y, Ink.BLUE, within);
      placer.avoid(new Rectangle2D.Double(x - 7, y - 7, 14, 14));
    }
  }
}
