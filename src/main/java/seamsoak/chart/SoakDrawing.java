package seamsoak.chart;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import seamsoak.chart.figure.SoakFigure;
import seamsoak.chart.figure.Unit;

/** Draws a {@link SoakFigure}: minutes above, cost below, on one temperature axis. */
final class SoakDrawing implements Drawing {
  private static final double LEFT = 84;
  private static final double RIGHT = 76;
  private static final double HEIGHT = 640;
  private static final double LOSS = 92;
  private static final double LOSS_ABOVE = 40;
  private static final double GRAIN = 30;

  /** Below the lowest plot: numbers and name of its axis. */
  private static final double BELOW = 54;

  private final SoakFigure figure;
  private final Heading heading;
  private final SoakScale scale;
  private final List<Point2D> losses = new ArrayList<>();
  private final Rectangle2D area;

  SoakDrawing(SoakFigure figure) {
    this.figure = figure;
    heading = Heading.of(figure);
    scale = SoakScale.of(figure);
    for (var option : figure.options()) {
      option.metalLossMm().ifPresent(mm -> losses.add(new Point2D.Double(option.celsius(), mm)));
    }
    boolean grain = figure.options().stream().anyMatch(o -> o.grainAstm().isPresent());
    double top = heading.bottom() + 56;
    double cost = (losses.isEmpty() ? 0 : LOSS_ABOVE + LOSS) + (grain ? GRAIN : 0);
    area = new Rectangle2D.Double(LEFT, top, WIDTH - LEFT - RIGHT, HEIGHT - BELOW - cost - top);
  }

  @Override
  public double height() {
    return HEIGHT;
  }

  /** Where each option stands on the page, and between which heights. */
  Charts.Uprights uprights() {
    double share = area.getWidth() / (scale.to() - scale.from());
    return new Charts.Uprights(
        figure.options().stream().map(o -> LEFT + (o.celsius() - scale.from()) * share).toList(),
        area.getMinY(),
        area.getMaxY(),
        WIDTH);
  }

  static Color color(SoakFigure.Limit limit) {
    return limit.stop() ? Ink.EMBER : Ink.PLUM;
  }

  private Axes temperatures() {
    return Axes.of(scale.from(), scale.to(), figure.units(), Unit.FAHRENHEIT, Unit.CELSIUS);
  }

  @Override
  public void draw(Canvas canvas) {
    heading.draw(canvas);
    canvas.fill(area, Ink.PANEL);
    Axes across = temperatures();
    Frame frame = new Frame(area, across, scale.times());
    Placer placer = new Placer(area);
    limits(frame, placer);
    band(frame, placer);
    curve(frame, placer);
    if (losses.isEmpty()) {
      across.first().setLabel("soak temperature, " + across.firstName());
    } else {
      across.first().setTickLabelsVisible(false);
      loss(canvas);
    }
    frame.draw(canvas);
    frame.name(canvas, "time to clear the lines");
    canvas.text(across.ownName(), area.getMaxX() + 30, area.getMinY() - 10, Ink.NAME);
    grain(canvas, frame);
    new SoakLabels(figure, scale, frame, placer, canvas).draw();
  }

  private void limits(Frame frame, Placer placer) {
    for (var limit : figure.limits()) {
      if (limit.stop()) {
        frame.strip(limit.celsius(), scale.to(), Ink.pale(Ink.EMBER, 40));
      }
      var stroke = limit.stop() ? Ink.solid(2.5) : Ink.dashed(2, 9, 4);
      double x = frame.upright(limit.celsius(), new Ink.Style(color(limit), stroke));
      placer.avoid(x, area.getMinY(), x, area.getMaxY());
    }
    figure
        .most()
        .ifPresent(
            most -> {
              Ink.Style style = new Ink.Style(Ink.DARK, Ink.dashed(1.8, 3, 3));
              double y = frame.level(scale.clip(most), style);
              placer.avoid(area.getMinX(), y, area.getMaxX(), y);
            });
  }

  /** From the low to the high estimate; what has no high estimate runs off the top. */
  private void band(Frame frame, Placer placer) {
    List<Point2D> upper = new ArrayList<>();
    List<Point2D> lower = new ArrayList<>();
    for (var option : figure.options()) {
      if (option.minutesLow().isPresent()) {
        lower.add(scale.at(option, option.minutesLow()));
        upper.add(scale.at(option, option.minutesHigh()));
      }
    }
    if (lower.size() == 1) {
      Ink.Style bar = new Ink.Style(Ink.BLUE, Ink.solid(2));
      placer.avoid(frame.curve(List.of(lower.get(0), upper.get(0)), bar));
    } else if (lower.size() > 1) {
      Ink.Style edge = new Ink.Style(Ink.BLUE, Ink.solid(1));
      placer.avoid(frame.curve(upper, edge));
      placer.avoid(frame.curve(lower, edge));
      Collections.reverse(lower);
      upper.addAll(lower);
      frame.polygon(upper, Ink.pale(Ink.BLUE, 48));
    }
  }

  /** Full dots are within the longest soak, empty ones beyond it, triangles beyond a day. */
  private void curve(Frame frame, Placer placer) {
    List<Point2D> points = new ArrayList<>();
    for (var option : figure.options()) {
      boolean told = option.minutes().isPresent();
      points.add(
          told
              ? scale.at(option, option.minutes())
              : new Point2D.Double(option.celsius(), Double.NaN));
      if (!told) {
        Ink.Style over = new Ink.Style(Ink.BLUE, null, Ink.STYLES.get(2).marker());
        Point2D top = new Point2D.Double(option.celsius(), 0.75 * scale.most());
        avoid(placer, frame.marked(top, over, false));
      }
    }
    double most = figure.most().orElse(SoakScale.DAY);
    Ink.Style style = new Ink.Style(Ink.BLUE, Ink.solid(3.2), Ink.STYLES.get(0).marker());
    List<Point2D> page =
        frame.curve(points, style, i -> figure.options().get(i).minutes().orElse(0) <= most);
    placer.avoid(page);
    page.forEach(at -> avoid(placer, at));
  }

  private static void avoid(Placer placer, Point2D at) {
    placer.avoid(new Rectangle2D.Double(at.getX() - 7, at.getY() - 7, 14, 14));
  }

  private void grain(Canvas canvas, Frame frame) {
    double y = area.getMaxY() + 25 + (losses.isEmpty() ? BELOW - 8 : 0);
    double free = area.getMinX() - 10;
    boolean any = false;
    for (var option : figure.options()) {
      if (option.grainAstm().isPresent()) {
        any = true;
        String text = String.format(Locale.ROOT, "%.0f", option.grainAstm().getAsDouble());
        double x = frame.x(option.celsius());
        double half = Ink.WORD.width(text) / 2 + 4;
        if (x - half >= free) {
          canvas.text(text, x, y, Letters.Anchor.MIDDLE, Ink.WORD);
          free = x + half;
        }
      }
    }
    if (any) {
      canvas.text("grain", 24, y, Ink.WORD);
      canvas.text("ASTM", area.getMaxX() + 10, y, Ink.NUMBER);
    }
  }

  private void loss(Canvas canvas) {
    double most = losses.stream().mapToDouble(Point2D::getY).max().orElse(0);
    Rectangle2D below = new Rectangle2D.Double(LEFT, HEIGHT - BELOW - LOSS, area.getWidth(), LOSS);
    canvas.fill(below, Ink.PANEL);
    Axes across = temperatures();
    across.own().setVisible(false);
    across.first().setLabel("soak temperature, " + across.firstName());
    Axes up = Axes.of(0, Math.max(0.05, most * 1.2), figure.units(), Unit.THOU, Unit.MILLIMETRE);
    Frame frame = new Frame(below, across, up);
    Ink.Style style = Ink.STYLES.get(3);
    frame.curve(losses, new Ink.Style(Ink.MOSS, Ink.dashed(3, 10, 4), style.marker()));
    frame.draw(canvas);
    frame.name(canvas, "metal lost per face, " + up.firstName());
  }
}
