package seamsoak.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.ui.Layer;
import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;

/** Draws a {@link FadingFigure}: contrast above, width of the line below, steps across. */
final class FadingDrawing implements Drawing {
  private static final double LEFT = 66;
  private static final double RIGHT = 258;
  private static final double DIP = 250;
  private static final double WIDTHS = 190;
  private static final double BETWEEN = 46;
  private static final double LEAST_WIDEST_MM = 0.2;
  private static final Ink.Style LEVEL = new Ink.Style(Ink.SOFT, Ink.dashed(1.5, 2, 4), null);

  private final FadingFigure figure;
  private final Type type;
  private final Heading heading;
  private final Rectangle2D upper;
  private final Rectangle2D lower;
  private final int rows;

  FadingDrawing(FadingFigure figure, Type type) {
    this.figure = figure;
    this.type = type;
    heading = Heading.of(figure, type, WIDTH);
    double width = WIDTH - LEFT - RIGHT;
    upper = new Rectangle2D.Double(LEFT, heading.bottom() + 36, width, DIP);
    lower = new Rectangle2D.Double(LEFT, upper.getMaxY() + BETWEEN, width, WIDTHS);
    double longest =
        figure.steps().stream()
            .mapToDouble(s -> type.width(words(s), Ink.NOTE, s.number().isEmpty()))
            .max()
            .orElse(0);
    rows = (int) Math.max(1, Math.ceil((longest + 8) / spacing()));
  }

  private static String words(FadingFigure.Step step) {
    return (step.number() + " " + step.name()).strip();
  }

  private double spacing() {
    return (WIDTH - LEFT - RIGHT) / figure.steps().size();
  }

  private double x(int step) {
    return LEFT + (step + 0.5) * spacing();
  }

  @Override
  public double height() {
    return lower.getMaxY() + 19 + rows * 15 + 24;
  }

  @Override
  public void draw(Canvas canvas) {
    heading.draw(canvas);
    boolean us = figure.units() != UnitSystem.METRIC;
    Function<FadingFigure.State, OptionalDouble> contrast = FadingFigure.State::contrast;
    Function<FadingFigure.State, OptionalDouble> wide = FadingFigure.State::widthMm;
    double most = Math.max(1.15 * most(contrast), 1.3);
    double widest = Math.max(1.15 * most(wide), LEAST_WIDEST_MM);
    List<Tick> times = Tick.round(0, most, 6, Tick.Unit.OWN);
    List<Tick> metric = Tick.round(0, widest, 5, Tick.Unit.OWN);
    List<Tick> inch = Tick.round(0, widest, 5, Tick.Unit.INCH);
    name(canvas, "contrast of the line, from 1 on it shows", 24, upper.getMinY() - 12);
    plot(
        canvas,
        upper,
        most,
        times,
        List.of(),
        contrast,
        OptionalDouble.of(1),
        v -> String.format(Locale.ROOT, "%.1f", v));
    name(
        canvas,
        "width of the line on the face, where it shows, " + (us ? "in" : "mm"),
        24,
        lower.getMinY() - 12);
    if (figure.units() == UnitSystem.BOTH) {
      name(canvas, "mm", lower.getMaxX() + 10, lower.getMinY() - 12);
    }
    plot(
        canvas,
        lower,
        widest,
        us ? inch : metric,
        figure.units() == UnitSystem.BOTH ? metric : List.of(),
        wide,
        OptionalDouble.empty(),
        this::length);
    steps(canvas);
  }

  private String length(double millimetres) {
    return Length.ofMillimetres(millimetres).format(figure.units());
  }

  private double most(Function<FadingFigure.State, OptionalDouble> value) {
    return figure.sets().stream()
        .flatMap(s -> s.at().stream())
        .map(value)
        .flatMapToDouble(OptionalDouble::stream)
        .max()
        .orElse(0);
  }

  private void plot(
      Canvas canvas,
      Rectangle2D area,
      double most,
      List<Tick> left,
      List<Tick> right,
      Function<FadingFigure.State, OptionalDouble> value,
      OptionalDouble level,
      DoubleFunction<String> said) {
    canvas.fill(area, Ink.PANEL);
    planned(canvas, area);
    ValueAxis across = TickedAxis.linear(area.getMinX(), area.getMaxX(), List.of());
    across.setVisible(false);
    Frame frame = new Frame(area, across, TickedAxis.linear(0, most, left));
    if (!right.isEmpty()) {
      frame.plot.setRangeAxis(1, TickedAxis.linear(0, most, right));
      frame.letterRight(canvas, right);
    }
    frame.letterLeft(canvas, left);
    List<SideLabels.Side> sides = new ArrayList<>();
    level.ifPresent(at -> sides.add(showsFrom(frame, at)));
    frame.draw(canvas);
    if (figure.sets().stream()
        .flatMap(s -> s.at().stream())
        .map(value)
        .allMatch(OptionalDouble::isEmpty)) {
      middle(canvas, "no line shows after any step", area.getCenterX(), area.getCenterY(), false);
    }
    for (int i = 0; i < figure.sets().size(); i++) {
      double end = curve(canvas, frame, figure.sets().get(i), Ink.STYLES.get(i), value);
      if (Double.isFinite(end)) {
        double room = RIGHT - (right.isEmpty() ? 100 : 130);
        sides.add(side(figure.sets().get(i), Ink.STYLES.get(i), end, value, said, room));
      }
    }
    double edge = right.isEmpty() ? area.getMaxX() + 3 : area.getMaxX() + 42;
    SideLabels.draw(canvas, sides, edge, area.getMinY() - 10, area.getMaxY() + 10);
  }

  private SideLabels.Side showsFrom(Frame frame, double level) {
    ValueMarker line = new ValueMarker(level, LEVEL.color(), LEVEL.stroke());
    line.setAlpha(1);
    frame.plot.addRangeMarker(line, Layer.BACKGROUND);
    return new SideLabels.Side(
        frame.y(level),
        Block.of(
            type,
            Block.wrap(type, "a line shows from here", RIGHT - 130, 2, Ink.NOTE, false, Ink.DARK)),
        Ink.SOFT,
        LEVEL);
  }

  /** Draws a set's line with a mark at each step, full where it shows; gives its last height. */
  private double curve(
      Canvas canvas,
      Frame frame,
      FadingFigure.SeamSet set,
      Ink.Style style,
      Function<FadingFigure.State, OptionalDouble> value) {
    double end = Double.NaN;
    Point2D before = null;
    for (int i = 0; i < set.at().size(); i++) {
      OptionalDouble at = value.apply(set.at().get(i));
      Point2D here = at.isPresent() ? new Point2D.Double(x(i), frame.y(at.getAsDouble())) : null;
      if (before != null && here != null) {
        canvas.outline(new Line2D.Double(before, here), style.color(), style.stroke());
      }
      before = here;
      end = here == null ? end : here.getY();
    }
    for (int i = 0; i < set.at().size(); i++) {
      OptionalDouble at = value.apply(set.at().get(i));
      if (at.isPresent()) {
        canvas.marker(
            style.marker(),
            x(i),
            frame.y(at.getAsDouble()),
            style.color(),
            set.at().get(i).shows());
      }
    }
    return end;
  }

  private SideLabels.Side side(
      FadingFigure.SeamSet set,
      Ink.Style style,
      double y,
      Function<FadingFigure.State, OptionalDouble> value,
      DoubleFunction<String> said,
      double room) {
    double last = 0;
    for (FadingFigure.State s : set.at()) {
      last = value.apply(s).orElse(last);
    }
    boolean there = value.apply(set.at().get(set.at().size() - 1)).isPresent();
    String end = (there ? "at the end " : "last seen ") + said.apply(last);
    List<Block.Line> lines =
        new ArrayList<>(
            Block.wrap(type, set.name(), RIGHT - 130, 1, Ink.LABEL, true, style.color()));
    lines.addAll(Block.wrap(type, end, room, 2, Ink.NOTE, false, Ink.SOFT));
    return new SideLabels.Side(y, Block.of(type, lines), style.color(), style);
  }

  /** What is still to be done stands on white. */
  private void planned(Canvas canvas, Rectangle2D area) {
    if (figure.planned() == 0) {
      return;
    }
    double from = x(figure.steps().size() - figure.planned()) - spacing() / 2;
    canvas.fill(
        new Rectangle2D.Double(from, area.getMinY(), area.getMaxX() - from, area.getHeight()),
        Ink.PAPER);
    canvas.line(from, area.getMinY(), from, area.getMaxY(), Ink.SOFT, Ink.dashed(1.2f, 4, 3));
  }

  private void steps(Canvas canvas) {
    double y = lower.getMaxY();
    for (int i = 0; i < figure.steps().size(); i++) {
      FadingFigure.Step step = figure.steps().get(i);
      double low = y + 19 + i % rows * 15;
      canvas.line(x(i), y, x(i), y + 5, Ink.SOFT, Ink.solid(1.2));
      if (i % rows > 0) {
        canvas.line(x(i), y + 6, x(i), low - 11, Ink.GRID, Ink.solid(1));
      }
      middle(canvas, words(step), x(i), low, step.number().isEmpty());
    }
    double end = y + 19 + rows * 15 + 10;
    String legend = "Full marks: the line shows. Empty marks: it does not.";
    String still = figure.planned() > 0 ? " On white: the advised steps to come." : "";
    canvas.text(
        new Letters(legend + still, LEFT, end, Letters.Anchor.START, Ink.NOTE, false, Ink.SOFT));
  }

  private static void middle(Canvas canvas, String text, double x, double y, boolean bold) {
    canvas.text(new Letters(text, x, y, Letters.Anchor.MIDDLE, Ink.NOTE, bold, Ink.DARK));
  }

  private static void name(Canvas canvas, String text, double x, double y) {
    canvas.text(new Letters(text, x, y, Letters.Anchor.START, Ink.LABEL, true, Ink.DARK));
  }
}
