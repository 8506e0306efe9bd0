package seamsoak.chart;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.ui.Layer;
import seamsoak.unit.UnitSystem;

/** Draws a {@link SeamFigure}. Carbon starts at zero, so that a small dip looks small. */
final class SeamDrawing implements Drawing {
  private static final double LEFT = 70;
  private static final double RIGHT = 256;
  private static final double HEIGHT = 600;
  private static final Ink.Style LEVEL = new Ink.Style(Ink.SOFT, Ink.dashed(1.5, 2, 4), null);

  private final SeamFigure figure;
  private final Type type;
  private final Heading heading;
  private final Rectangle2D area;
  private final List<List<Point2D>> curves = new ArrayList<>();
  private final double from;
  private final double to;
  private final double most;

  SeamDrawing(SeamFigure figure, Type type) {
    this.figure = figure;
    this.type = type;
    heading = Heading.of(figure, type, WIDTH);
    double top = heading.bottom() + 58;
    area = new Rectangle2D.Double(LEFT, top, WIDTH - LEFT - RIGHT, HEIGHT - 62 - top);
    boolean oneSided =
        figure.curves().stream()
            .allMatch(
                curve ->
                    curve.points().get(0).millimetres() >= 0
                        || curve.points().get(curve.points().size() - 1).millimetres() <= 0);
    figure.curves().forEach(curve -> curves.add(points(curve, oneSided)));
    double left = curves.stream().flatMap(List::stream).mapToDouble(Point2D::getX).min().orElse(0);
    double right = curves.stream().flatMap(List::stream).mapToDouble(Point2D::getX).max().orElse(0);
    double highest =
        curves.stream().flatMap(List::stream).mapToDouble(Point2D::getY).max().orElse(0);
    double level =
        figure.levels().stream().mapToDouble(SeamFigure.Level::carbonPct).max().orElse(0);
    from = left == right ? -1 : left;
    to = left == right ? 1 : right;
    most = Math.max(0.1, 1.12 * Math.max(highest, level));
  }

  private static List<Point2D> points(SeamFigure.Curve curve, boolean mirror) {
    List<Point2D> points = new ArrayList<>();
    for (var at : curve.points()) {
      points.add(new Point2D.Double(at.millimetres(), at.carbonPct()));
      if (mirror && at.millimetres() != 0) {
        points.add(new Point2D.Double(-at.millimetres(), at.carbonPct()));
      }
    }
    points.sort(Comparator.comparingDouble(Point2D::getX));
    return points;
  }

  @Override
  public double height() {
    return HEIGHT;
  }

  @Override
  public void draw(Canvas canvas) {
    heading.draw(canvas);
    boolean inches = figure.units() != UnitSystem.METRIC;
    boolean both = figure.units() == UnitSystem.BOTH;
    List<Tick> metric = Tick.distances(Tick.round(from, to, 9, Tick.Unit.OWN));
    List<Tick> inch = Tick.distances(Tick.round(from, to, 7, Tick.Unit.INCH));
    List<Tick> bottom = both || !inches ? metric : inch;
    List<Tick> carbon = Tick.round(0, most, 8, Tick.Unit.OWN);
    canvas.fill(area, Ink.PANEL);
    Frame frame =
        new Frame(area, TickedAxis.linear(from, to, bottom), TickedAxis.linear(0, most, carbon));
    if (both) {
      frame.plot.setDomainAxis(1, TickedAxis.linear(from, to, inch));
      frame.letterTop(canvas, inch);
      name(
          canvas,
          "inches from the seam",
          (area.getMinX() + area.getMaxX()) / 2,
          area.getMinY() - 29,
          Letters.Anchor.MIDDLE);
    }
    name(
        canvas,
        both || !inches ? "mm from the seam" : "inches from the seam",
        (area.getMinX() + area.getMaxX()) / 2,
        area.getMaxY() + 44,
        Letters.Anchor.MIDDLE);
    name(canvas, "carbon, wt%", 24, area.getMinY() - (both ? 29 : 10), Letters.Anchor.START);
    frame.letterBottom(canvas, bottom);
    frame.letterLeft(canvas, carbon);
    Placer placer = new Placer(inner());
    levels(frame, placer);
    List<SideLabels.Side> sides = new ArrayList<>();
    List<Point2D> atSeam = new ArrayList<>();
    for (int i = 0; i < curves.size(); i++) {
      List<Point2D> page = frame.curve(curves.get(i), Ink.STYLES.get(i));
      placer.avoid(page);
      atSeam.add(atSeam(curves.get(i)));
      sides.add(side(i, page.get(page.size() - 1).getY(), atSeam.get(i)));
    }
    figure.levels().forEach(level -> sides.add(side(frame, level)));
    frame.draw(canvas);
    marks(canvas, frame, placer, atSeam);
    seam(canvas, frame, placer);
    SideLabels.draw(canvas, sides, area.getMaxX() + 3, area.getMinY() - 16, area.getMaxY() + 10);
  }

  private Rectangle2D inner() {
    return new Rectangle2D.Double(
        area.getX() + 6, area.getY() + 6, area.getWidth() - 12, area.getHeight() - 12);
  }

  private static void name(Canvas canvas, String text, double x, double y, Letters.Anchor anchor) {
    canvas.text(new Letters(text, x, y, anchor, Ink.LABEL, true, Ink.DARK));
  }

  private void levels(Frame frame, Placer placer) {
    for (var level : figure.levels()) {
      ValueMarker line = new ValueMarker(level.carbonPct(), LEVEL.color(), LEVEL.stroke());
      line.setAlpha(1);
      frame.plot.addRangeMarker(line, Layer.BACKGROUND);
      double y = frame.y(level.carbonPct());
      placer.avoid(area.getMinX(), y, area.getMaxX(), y);
    }
    ValueMarker seam = new ValueMarker(0, Ink.DARK, Ink.dashed(1.5, 9, 4, 2, 4));
    seam.setAlpha(1);
    frame.plot.addDomainMarker(seam, Layer.BACKGROUND);
    placer.avoid(frame.x(0), area.getMinY(), frame.x(0), area.getMaxY());
  }

  /** The point at the seam: elsewhere unlike layers may hold less without a line. */
  private static Point2D atSeam(List<Point2D> curve) {
    return curve.stream()
        .min(
            Comparator.<Point2D>comparingDouble(point -> Math.abs(point.getX()))
                .thenComparingDouble(Point2D::getY))
        .orElseThrow();
  }

  private SideLabels.Side side(int i, double y, Point2D atSeam) {
    Ink.Style style = Ink.STYLES.get(i);
    double room = RIGHT - 90;
    List<Block.Line> lines =
        new ArrayList<>(
            Block.wrap(
                type, figure.curves().get(i).label(), room, 2, Ink.LABEL, true, style.color()));
    lines.add(new Block.Line("at the seam " + percent(atSeam.getY()), Ink.NOTE, false, Ink.SOFT));
    return new SideLabels.Side(y, Block.of(type, lines), style.color(), style);
  }

  private SideLabels.Side side(Frame frame, SeamFigure.Level level) {
    List<Block.Line> lines =
        Block.wrap(
            type,
            level.label() + " " + percent(level.carbonPct()).replace(' ', '\u00A0'),
            RIGHT - 90,
            2,
            13,
            false,
            Ink.DARK);
    return new SideLabels.Side(frame.y(level.carbonPct()), Block.of(type, lines), Ink.SOFT, LEVEL);
  }

  private void marks(Canvas canvas, Frame frame, Placer placer, List<Point2D> atSeam) {
    for (int i = 0; i < atSeam.size(); i++) {
      Ink.Style style = Ink.STYLES.get(i);
      double x = frame.x(atSeam.get(i).getX());
      double y = frame.y(atSeam.get(i).getY());
      canvas.marker(style.marker(), x, y, style.color(), true);
      placer.avoid(new Rectangle2D.Double(x - 8, y - 8, 16, 16));
    }
    for (int i = 0; i < atSeam.size(); i++) {
      Block block =
          Block.of(
              type,
              List.of(
                  new Block.Line(
                      percent(atSeam.get(i).getY()), 18, true, Ink.STYLES.get(i).color())));
      double x = frame.x(atSeam.get(i).getX());
      double y = frame.y(atSeam.get(i).getY());
      Rectangle2D at = placer.near(x, y + 6, block.width(), block.height());
      if (at.getCenterY() - y > 30 || Math.abs(at.getCenterX() - x) > 60) {
        double end = Math.max(at.getMinX(), Math.min(x, at.getMaxX()));
        canvas.line(x, y, end, at.getMinY(), Ink.STYLES.get(i).color(), Ink.solid(1));
      }
      canvas.block(block, at.getX(), at.getY(), Letters.Anchor.START);
    }
  }

  private void seam(Canvas canvas, Frame frame, Placer placer) {
    Block block = Block.of(type, List.of(new Block.Line("seam", Ink.LABEL, true, Ink.DARK)));
    Rectangle2D at =
        placer.near(frame.x(0) + 8, area.getMaxY() - 14, block.width(), block.height());
    canvas.block(block, at.getX(), at.getY(), Letters.Anchor.START);
  }

  private static String percent(double carbon) {
    return String.format(Locale.ROOT, "%.2f %%", carbon);
  }
}
