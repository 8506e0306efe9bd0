package seamsoak.chart;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import seamsoak.chart.figure.SeamFigure;

/** Draws a {@link SeamFigure}. Carbon starts at zero, so that a small dip looks small. */
final class SeamDrawing implements Drawing {
  private static final double LEFT = 70;
  private static final double RIGHT = 256;
  private static final double HEIGHT = 600;

  private final SeamFigure figure;
  private final Heading heading;
  private final List<List<Point2D>> curves;
  private final List<Point2D> atSeam;

  SeamDrawing(SeamFigure figure) {
    this.figure = figure;
    heading = Heading.of(figure);
    boolean mirror = figure.curves().stream().allMatch(SeamDrawing::oneSided);
    curves = figure.curves().stream().map(curve -> points(curve, mirror)).toList();
    atSeam = curves.stream().map(SeamDrawing::atSeam).toList();
  }

  private static boolean oneSided(SeamFigure.Curve curve) {
    List<SeamFigure.Sample> points = curve.points();
    return points.get(0).millimetres() >= 0 || points.get(points.size() - 1).millimetres() <= 0;
  }

  private static List<Point2D> points(SeamFigure.Curve curve, boolean mirror) {
    List<Point2D> points = new ArrayList<>();
    for (var sample : curve.points()) {
      points.add(new Point2D.Double(sample.millimetres(), sample.carbonPct()));
      if (mirror && sample.millimetres() != 0) {
        points.add(new Point2D.Double(-sample.millimetres(), sample.carbonPct()));
      }
    }
    points.sort(Comparator.comparingDouble(Point2D::getX));
    return points;
  }

  /** The point at the seam: elsewhere unlike layers may hold less without a line. */
  private static Point2D atSeam(List<Point2D> curve) {
    return curve.stream()
        .min(
            Comparator.<Point2D>comparingDouble(point -> Math.abs(point.getX()))
                .thenComparingDouble(Point2D::getY))
        .orElseThrow();
  }

  @Override
  public double height() {
    return HEIGHT;
  }

  @Override
  public void draw(Canvas canvas) {
    heading.draw(canvas);
    Frame frame = frame();
    canvas.fill(frame.area, Ink.PANEL);
    Placer placer = new Placer(frame.area);
    List<SideLabels.Side> sides = new ArrayList<>();
    levels(frame, placer, sides);
    for (int i = 0; i < curves.size(); i++) {
      Ink.Style style = Ink.STYLES.get(i);
      List<Point2D> page = frame.curve(curves.get(i), new Ink.Style(style.color(), style.stroke()));
      placer.avoid(page);
      sides.add(side(i, page.get(page.size() - 1).getY()));
    }
    for (int i = 0; i < curves.size(); i++) {
      Ink.Style style = Ink.STYLES.get(i);
      Point2D at = frame.marked(atSeam.get(i), style, true);
      placer.avoid(new Rectangle2D.Double(at.getX() - 8, at.getY() - 8, 16, 16));
    }
    frame.draw(canvas);
    frame.name(canvas, "carbon, wt%");
    numbers(canvas, frame, placer);
    Block seam = Block.of("seam", Ink.NAME);
    placer.set(canvas, seam, frame.x(0) + 8, frame.area.getMaxY() - 14);
    SideLabels.draw(canvas, sides, frame);
  }

  private Frame frame() {
    double left = curves.stream().mapToDouble(c -> least(c, Point2D::getX)).min().orElse(0);
    double right = -curves.stream().mapToDouble(c -> least(c, p -> -p.getX())).min().orElse(0);
    double most = -curves.stream().mapToDouble(c -> least(c, p -> -p.getY())).min().orElse(0);
    for (var level : figure.levels()) {
      most = Math.max(most, level.carbonPct());
    }
    Axes across =
        left == right
            ? Axes.distances(-1, 1, figure.units())
            : Axes.distances(left, right, figure.units());
    across.name("", " from the seam");
    double top = heading.bottom() + 58;
    return new Frame(
        new Rectangle2D.Double(LEFT, top, WIDTH - LEFT - RIGHT, HEIGHT - 62 - top),
        across,
        Axes.plain(0, Math.max(0.1, 1.12 * most)));
  }

  private static double least(List<Point2D> points, ToDoubleFunction<Point2D> of) {
    return points.stream().mapToDouble(of).min().orElse(0);
  }

  private void levels(Frame frame, Placer placer, List<SideLabels.Side> sides) {
    Rectangle2D area = frame.area;
    for (var level : figure.levels()) {
      double y = frame.level(level.carbonPct(), Ink.LEVEL);
      placer.avoid(area.getMinX(), y, area.getMaxX(), y);
      String text = level.label() + " " + percent(level.carbonPct()).replace(' ', '\u00A0');
      Block block = Block.of(text, RIGHT - 90, 2, Ink.NUMBER.in(Ink.DARK));
      sides.add(new SideLabels.Side(y, block, Ink.SOFT, Ink.LEVEL));
    }
    double x = frame.upright(0, new Ink.Style(Ink.DARK, Ink.dashed(1.5, 9, 4, 2, 4)));
    placer.avoid(x, area.getMinY(), x, area.getMaxY());
  }

  private SideLabels.Side side(int i, double y) {
    Ink.Style style = Ink.STYLES.get(i);
    Block block =
        Block.of(figure.curves().get(i).label(), RIGHT - 90, 2, Ink.NAME.in(style.color()))
            .and("at the seam " + percent(atSeam.get(i).getY()), RIGHT - 90, 1, Ink.NOTE);
    return new SideLabels.Side(y, block, style.color(), style);
  }

  private void numbers(Canvas canvas, Frame frame, Placer placer) {
    for (int i = 0; i < atSeam.size(); i++) {
      Ink.Style style = Ink.STYLES.get(i);
      Block block = Block.of(percent(atSeam.get(i).getY()), new Print(18, true, style.color()));
      double x = frame.x(atSeam.get(i).getX());
      double y = frame.y(atSeam.get(i).getY());
      Rectangle2D at = placer.set(canvas, block, x, y + 6);
      if (at.getCenterY() - y > 30 || Math.abs(at.getCenterX() - x) > 60) {
        double end = Math.max(at.getMinX(), Math.min(x, at.getMaxX()));
        canvas.line(x, y, end, at.getMinY(), style.color(), Ink.solid(1));
      }
    }
  }

  private static String percent(double carbon) {
    return String.format(Locale.ROOT, "%.2f %%", carbon);
  }
}
