package seamsoak.chart;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import seamsoak.unit.UnitSystem;

/** The lower part of the soak chart: metal lost as a curve, grain size as a row of numbers. */
record SoakCost(SoakFigure figure, Type type) {
  private static final double GAP = 40;
  private static final double PLOT = 92;
  private static final double ROW = 30;

  private boolean hasLoss() {
    return figure.options().stream().anyMatch(option -> option.metalLossMm().isPresent());
  }

  private boolean hasGrain() {
    return figure.options().stream().anyMatch(option -> option.grainAstm().isPresent());
  }

  double height() {
    return (hasLoss() ? GAP + PLOT : 0) + (hasGrain() ? ROW : 0);
  }

  /**
   * @param above the plot of minutes
   * @param from left end of the temperature axis
   */
  void draw(Canvas canvas, Rectangle2D above, double from, double to, List<Tick> temperature) {
    double y = above.getMaxY();
    if (hasGrain()) {
      grain(canvas, above, from, to);
      y += ROW;
    }
    if (hasLoss()) {
      loss(
          canvas,
          new Rectangle2D.Double(above.getX(), y + GAP, above.getWidth(), PLOT),
          from,
          to,
          temperature);
    }
  }

  private void grain(Canvas canvas, Rectangle2D above, double from, double to) {
    double y = above.getMaxY() + 25;
    canvas.text(new Letters("grain", 24, y, Letters.Anchor.START, 13, true, Ink.DARK));
    double free = above.getMinX() - 10;
    for (var option : figure.options()) {
      if (option.grainAstm().isPresent()) {
        String text = String.format(Locale.ROOT, "%.0f", option.grainAstm().getAsDouble());
        double x = above.getX() + above.getWidth() * (option.celsius() - from) / (to - from);
        double half = type.width(text, 13, true) / 2 + 4;
        if (x - half >= free) {
          canvas.text(new Letters(text, x, y, Letters.Anchor.MIDDLE, 13, true, Ink.DARK));
          free = x + half;
        }
      }
    }
    canvas.text(
        new Letters("ASTM", above.getMaxX() + 10, y, Letters.Anchor.START, 13, false, Ink.SOFT));
  }

  private void loss(
      Canvas canvas, Rectangle2D area, double from, double to, List<Tick> temperature) {
    double most =
        figure.options().stream()
            .map(SoakFigure.Option::metalLossMm)
            .flatMapToDouble(OptionalDouble::stream)
            .max()
            .orElse(0);
    double top = Math.max(0.05, most * 1.2);
    boolean us = figure.units() != UnitSystem.METRIC;
    List<Tick> thou = Tick.round(0, top, 4, Tick.Unit.THOU);
    List<Tick> metric = Tick.round(0, top, 4, Tick.Unit.OWN);
    canvas.fill(area, Ink.PANEL);
    Frame frame =
        new Frame(
            area,
            TickedAxis.linear(from, to, temperature),
            TickedAxis.linear(0, top, us ? thou : metric));
    if (figure.units() == UnitSystem.BOTH) {
      frame.plot.setRangeAxis(1, TickedAxis.linear(0, top, metric));
      frame.letterRight(canvas, metric);
      name(canvas, "mm", area.getMaxX() + 10, area.getMinY() - 9);
    }
    frame.letterLeft(canvas, us ? thou : metric);
    name(
        canvas,
        us ? "metal lost per face, thousandths of an inch" : "metal lost per face, mm",
        24,
        area.getMinY() - 9);
    List<Point2D> points = new ArrayList<>();
    for (var option : figure.options()) {
      option.metalLossMm().ifPresent(mm -> points.add(new Point2D.Double(option.celsius(), mm)));
    }
    List<Point2D> page = frame.curve(points, new Ink.Style(Ink.MOSS, Ink.dashed(3, 10, 4), null));
    frame.draw(canvas);
    page.forEach(
        p -> canvas.marker(Ink.STYLES.get(3).marker(), p.getX(), p.getY(), Ink.MOSS, true));
  }

  private static void name(Canvas canvas, String text, double x, double y) {
    canvas.text(new Letters(text, x, y, Letters.Anchor.START, 13, true, Ink.DARK));
  }
}
