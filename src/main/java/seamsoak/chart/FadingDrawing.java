package seamsoak.chart;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import seamsoak.chart.figure.FadingFigure;
import seamsoak.chart.figure.Unit;
import seamsoak.unit.Length;

/** Draws a {@link FadingFigure}: contrast above, width of the line below, steps across. */
final class FadingDrawing implements Drawing {
  private static final double LEFT = 66;
  private static final double RIGHT = 314;
  private static final double ROW = 15;
  private static final double LEAST_WIDEST_MM = 0.2;

  private final FadingFigure figure;
  private final Heading heading;
  private final Rectangle2D upper;
  private final Rectangle2D lower;
  private final int rows;

  FadingDrawing(FadingFigure figure) {
    this.figure = figure;
    heading = Heading.of(figure);
    double width = WIDTH - LEFT - RIGHT;
    upper = new Rectangle2D.Double(LEFT, heading.bottom() + 36, width, 250);
    lower = new Rectangle2D.Double(LEFT, upper.getMaxY() + 46, width, 190);
    double longest =
        figure.steps().stream().mapToDouble(s -> print(s).width(words(s))).max().orElse(0);
    rows = (int) Math.max(1, Math.ceil((longest + 8) / (width / figure.steps().size())));
  }

  private static String words(FadingFigure.Column step) {
    return (step.number() + " " + step.name()).strip();
  }

  /** Advised steps have no number and are set bold. */
  private static Print print(FadingFigure.Column step) {
    return new Print(12, step.number().isEmpty(), Ink.DARK);
  }

  @Override
  public double height() {
    return lower.getMaxY() + 19 + rows * ROW + 24;
  }

  @Override
  public void draw(Canvas canvas) {
    heading.draw(canvas);
    Function<FadingFigure.State, OptionalDouble> contrast = FadingFigure.State::contrast;
    Function<FadingFigure.State, OptionalDouble> wide = FadingFigure.State::widthMm;
    Axes contrasts = Axes.plain(0, Math.max(1.15 * values(contrast).max().orElse(0), 1.3));
    Frame above = frame(canvas, upper, contrasts);
    List<SideLabels.Side> sides = new ArrayList<>();
    Block shows = Block.of("a line shows from here", RIGHT - 130, 2, Ink.SAID);
    sides.add(new SideLabels.Side(above.level(1, Ink.LEVEL), shows, Ink.SOFT, Ink.LEVEL));
    plot(canvas, above, sides, contrast, v -> String.format(Locale.ROOT, "%.1f", v));
    above.name(canvas, "contrast of the line, from 1 on it shows");

    double widest = Math.max(1.15 * values(wide).max().orElse(0), LEAST_WIDEST_MM);
    Axes widths = Axes.of(0, widest, figure.units(), Unit.INCH, Unit.MILLIMETRE);
    Frame below = frame(canvas, lower, widths);
    if (values(wide).findAny().isEmpty()) {
      below.say("no line shows after any step");
    }
    plot(
        canvas,
        below,
        new ArrayList<>(),
        wide,
        mm -> Length.ofMillimetres(mm).format(figure.units()));
    below.name(canvas, "width of the line on the face, where it shows, " + widths.firstName());
    steps(canvas, below);
  }

  private DoubleStream values(Function<FadingFigure.State, OptionalDouble> value) {
    return figure.sets().stream()
        .flatMap(s -> s.at().stream())
        .map(value)
        .flatMapToDouble(OptionalDouble::stream);
  }

  /** What is still to be done stands on white. */
  private Frame frame(Canvas canvas, Rectangle2D area, Axes up) {
    int n = figure.steps().size();
    Frame frame = new Frame(area, Axes.unseen(0, n), up);
    double width = frame.x(n - figure.planned()) - area.getMinX();
    canvas.fill(
        new Rectangle2D.Double(area.getMinX(), area.getMinY(), width, area.getHeight()), Ink.PANEL);
    if (figure.planned() > 0) {
      frame.upright(n - figure.planned(), new Ink.Style(Ink.SOFT, Ink.dashed(1.2, 4, 3)));
    }
    return frame;
  }

  private void plot(
      Canvas canvas,
      Frame frame,
      List<SideLabels.Side> sides,
      Function<FadingFigure.State, OptionalDouble> value,
      DoubleFunction<String> said) {
    for (int i = 0; i < figure.sets().size(); i++) {
      FadingFigure.Trail set = figure.sets().get(i);
      double[] at = set.at().stream().mapToDouble(s -> value.apply(s).orElse(Double.NaN)).toArray();
      List<Point2D> points = new ArrayList<>();
      OptionalDouble last = OptionalDouble.empty();
      for (int k = 0; k < at.length; k++) {
        points.add(new Point2D.Double(k + 0.5, at[k]));
        last = Double.isNaN(at[k]) ? last : OptionalDouble.of(at[k]);
      }
      Ink.Style style = Ink.STYLES.get(i);
      frame.curve(points, style, k -> set.at().get(k).shows());
      if (last.isPresent()) {
        String end = Double.isNaN(at[at.length - 1]) ? "last seen " : "at the end ";
        Block block =
            Block.of(set.name(), RIGHT - 130, 2, Ink.NAME.in(style.color()))
                .and(end + said.apply(last.getAsDouble()), RIGHT - 130, 2, Ink.NOTE);
        double y = frame.y(last.getAsDouble());
        sides.add(new SideLabels.Side(y, block, style.color(), style));
      }
    }
    frame.draw(canvas);
    SideLabels.draw(canvas, sides, frame);
  }

  private void steps(Canvas canvas, Frame frame) {
    double y = lower.getMaxY();
    for (int i = 0; i < figure.steps().size(); i++) {
      FadingFigure.Column step = figure.steps().get(i);
      double x = frame.x(i + 0.5);
      double low = y + 19 + i % rows * ROW;
      canvas.line(x, y, x, y + 5, Ink.SOFT, Ink.solid(1.2));
      if (i % rows > 0) {
        canvas.line(x, y + 6, x, low - 11, Ink.GRID, Ink.solid(1));
      }
      canvas.text(words(step), x, low, Letters.Anchor.MIDDLE, print(step));
    }
    String legend = "Full marks: the line shows. Empty marks: it does not.";
    String still = figure.planned() > 0 ? " On white: the advised steps to come." : "";
    canvas.text(legend + still, LEFT, y + 29 + rows * ROW, Ink.NOTE);
  }
}
