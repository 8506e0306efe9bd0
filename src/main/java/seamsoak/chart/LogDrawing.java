package seamsoak.chart;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import seamsoak.chart.figure.LogFigure;
import seamsoak.chart.figure.ScheduleFigure;
import seamsoak.chart.figure.Unit;

/** Draws a {@link LogFigure}: what counts on the panel, what does not on white. */
final class LogDrawing implements Drawing {
  private static final double LEFT = 70;
  private static final double RIGHT = 250;
  private static final double HEIGHT = 560;
  private static final double EDGE = 0.015;
  private static final Ink.Style LEFT_OUT =
      new Ink.Style(Ink.PLUM, null, Ink.polygon(0, -6, 6, 0, 0, 6, -6, 0));

  private final LogFigure figure;
  private final Heading heading;

  LogDrawing(LogFigure figure) {
    this.figure = figure;
    heading = Heading.of(figure);
  }

  @Override
  public double height() {
    return HEIGHT;
  }

  private Stream<ScheduleFigure.Corner> points() {
    return figure.curves().stream().flatMap(c -> c.pieces().stream()).flatMap(List::stream);
  }

  @Override
  public void draw(Canvas canvas) {
    heading.draw(canvas);
    Frame frame = frame();
    canvas.fill(frame.area, Ink.PANEL);
    figure.blank().forEach(s -> frame.strip(s.from(), s.to(), Ink.PAPER));
    List<SideLabels.Side> sides = new ArrayList<>();
    for (LogFigure.Level level : figure.levels()) {
      String words =
          level.name() + " " + Unit.temperature(figure.units(), level.celsius(), level.celsius());
      sides.add(
          new SideLabels.Side(
              frame.level(level.celsius(), Ink.LEVEL),
              Block.of(words, RIGHT - 130, 3, Ink.SAID),
              Ink.SOFT,
              Ink.LEVEL));
    }
    for (int i = 0; i < figure.curves().size(); i++) {
      LogFigure.Curve curve = figure.curves().get(i);
      Ink.Style style = Ink.STYLES.get(i);
      Ink.Style line = new Ink.Style(style.color(), style.stroke());
      double y = 0;
      for (List<ScheduleFigure.Corner> piece : curve.pieces()) {
        List<Point2D> on = frame.curve(piece.stream().map(LogDrawing::point).toList(), line);
        y = on.get(on.size() - 1).getY();
      }
      Block name = Block.of(curve.name(), RIGHT - 130, 3, Ink.NAME.in(style.color()));
      sides.add(new SideLabels.Side(y, name, style.color(), line));
    }
    // what lies beyond the plot is marked at its edge
    double edge = EDGE * (frame.highest() - frame.lowest());
    for (ScheduleFigure.Corner c : figure.leftOut()) {
      double at = Math.max(frame.lowest() + edge, Math.min(c.celsius(), frame.highest() - edge));
      frame.marked(new Point2D.Double(c.minutes(), at), LEFT_OUT, false);
    }
    frame.draw(canvas);
    frame.name(canvas, "temperature, " + frame.unit());
    SideLabels.draw(canvas, sides, frame);
    String legend = figure.blank().isEmpty() ? "" : "On white: not read, or the piece not in. ";
    legend += figure.leftOut().isEmpty() ? "" : "Diamonds: readings left out.";
    canvas.text(legend.strip(), LEFT, HEIGHT - 14, Ink.NOTE);
  }

  private static Point2D point(ScheduleFigure.Corner c) {
    return new Point2D.Double(c.minutes(), c.celsius());
  }

  private Frame frame() {
    double from = points().mapToDouble(ScheduleFigure.Corner::minutes).min().orElse(0);
    double to = points().mapToDouble(ScheduleFigure.Corner::minutes).max().orElse(1);
    for (LogFigure.Span s : figure.blank()) {
      from = Math.min(from, s.from());
      to = Math.max(to, s.to());
    }
    DoubleStream all =
        DoubleStream.concat(
            points().mapToDouble(ScheduleFigure.Corner::celsius),
            figure.levels().stream().mapToDouble(LogFigure.Level::celsius));
    double most = all.max().orElse(1000);
    double least =
        Math.min(0, points().mapToDouble(ScheduleFigure.Corner::celsius).min().orElse(0));
    Axes across = Axes.plain(from, Math.max(to, from + 0.1));
    across.name("minutes from the log's first row", "");
    double top = heading.bottom() + 44;
    return new Frame(
        new Rectangle2D.Double(LEFT, top, WIDTH - LEFT - RIGHT, HEIGHT - 76 - top),
        across,
        Axes.of(least, most + 60, figure.units(), Unit.FAHRENHEIT, Unit.CELSIUS));
  }
}
