package seamsoak.chart;

import java.awt.Color;
import java.awt.Paint;
import java.awt.Stroke;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.DoubleStream;
import org.jfree.chart.annotations.XYPolygonAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.SeriesRenderingOrder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** A plot in our ink whose data area is exactly the rectangle given; its axes stand around that. */
final class Frame {
  final Rectangle2D area;
  final XYPlot plot;
  private final Axes across;
  private final Axes up;
  private final XYSeriesCollection data = new XYSeriesCollection();
  private final Marks marks = new Marks();

  Frame(Rectangle2D area, Axes across, Axes up) {
    this.area = area;
    this.across = across;
    this.up = up;
    plot = new XYPlot(data, across.first(), up.first(), marks);
    plot.setDomainAxis(1, across.own());
    plot.setRangeAxis(1, up.own());
    plot.mapDatasetToDomainAxis(0, 1);
    plot.mapDatasetToRangeAxis(0, 1);
    ink(across.first(), Letters.Anchor.MIDDLE, new RectangleInsets(8, 14, 2, 14));
    ink(across.own(), Letters.Anchor.MIDDLE, new RectangleInsets(2, 14, 8, 14));
    ink(up.first(), Letters.Anchor.END, new RectangleInsets(7, 9, 7, 9));
    ink(up.own(), Letters.Anchor.START, new RectangleInsets(7, 9, 7, 9));
    plot.setDomainGridlinesVisible(across.first().isVisible());
    plot.setBackgroundPaint(null);
    plot.setOutlineVisible(false);
    plot.setInsets(RectangleInsets.ZERO_INSETS);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setFixedDomainAxisSpace(new AxisSpace());
    plot.setFixedRangeAxisSpace(new AxisSpace());
    plot.setDomainGridlinePaint(Ink.GRID);
    plot.setRangeGridlinePaint(Ink.GRID);
    plot.setDomainGridlineStroke(Ink.solid(1));
    plot.setRangeGridlineStroke(Ink.solid(1));
    plot.setSeriesRenderingOrder(SeriesRenderingOrder.FORWARD);
  }

  /** The room around a number decides how close to each other numbers stand. */
  private static void ink(ValueAxis axis, Letters.Anchor anchor, RectangleInsets around) {
    axis.setTickLabelFont(new Lettering(Ink.NUMBER, anchor));
    axis.setTickLabelInsets(around);
    axis.setLabelFont(new Lettering(Ink.NAME, Letters.Anchor.MIDDLE));
    axis.setAxisLinePaint(Ink.SOFT);
    axis.setTickMarkPaint(Ink.SOFT);
    axis.setAxisLineStroke(Ink.solid(1.2));
    axis.setTickMarkStroke(Ink.solid(1.2));
    axis.setTickMarkOutsideLength(5);
  }

  double x(double value) {
    return across.own().valueToJava2D(value, area, RectangleEdge.BOTTOM);
  }

  double y(double value) {
    return up.own().valueToJava2D(value, area, RectangleEdge.LEFT);
  }

  /** Where the right axis and its numbers end. */
  double edge() {
    return area.getMaxX() + (up.own().isVisible() ? 48 : 3);
  }

  /** Ends of what is shown from bottom to top. */
  double lowest() {
    return up.own().getLowerBound();
  }

  double highest() {
    return up.own().getUpperBound();
  }

  /** Of the numbers at the left. */
  String unit() {
    return up.firstName();
  }

  /** A curve, marked at each point if the style has a mark; returns where it runs on the page. */
  List<Point2D> curve(List<Point2D> points, Ink.Style style) {
    return curve(points, style, i -> true);
  }

  /**
   * @param full whether the mark at a point is full; points that are no number break the curve
   */
  List<Point2D> curve(List<Point2D> points, Ink.Style style, IntPredicate full) {
    int index = data.getSeriesCount();
    XYSeries series = new XYSeries(index, false, true);
    List<Point2D> page = new ArrayList<>();
    for (Point2D point : points) {
      series.add(point.getX(), point.getY());
      page.add(new Point2D.Double(x(point.getX()), y(point.getY())));
    }
    data.addSeries(series);
    marks.full.add(full);
    marks.setSeriesPaint(index, style.color());
    marks.setSeriesLinesVisible(index, style.stroke() != null);
    marks.setSeriesStroke(index, style.stroke());
    marks.setSeriesShapesVisible(index, style.marker() != null);
    marks.setSeriesShape(index, style.marker());
    return page;
  }

  /** A point by itself; returns where it stands on the page. */
  Point2D marked(Point2D point, Ink.Style style, boolean full) {
    return curve(List.of(point), style, i -> full).get(0);
  }

  /** A line across the plot; returns its height on the page. */
  double level(double value, Ink.Style style) {
    plot.addRangeMarker(new ValueMarker(value, style.color(), style.stroke()), Layer.BACKGROUND);
    return y(value);
  }

  /** A line from top to bottom; returns where on the page. */
  double upright(double value, Ink.Style style) {
    plot.addDomainMarker(new ValueMarker(value, style.color(), style.stroke()), Layer.BACKGROUND);
    return x(value);
  }

  void band(double low, double high, Color color) {
    plot.addRangeMarker(shade(low, high, color), Layer.BACKGROUND);
  }

  void strip(double from, double to, Color color) {
    plot.addDomainMarker(shade(from, to, color), Layer.BACKGROUND);
  }

  private static IntervalMarker shade(double low, double high, Color color) {
    IntervalMarker shade = new IntervalMarker(low, high, color);
    shade.setOutlinePaint(null);
    return shade;
  }

  void polygon(List<Point2D> corners, Color color) {
    double[] xy =
        corners.stream().flatMapToDouble(p -> DoubleStream.of(p.getX(), p.getY())).toArray();
    marks.addAnnotation(new XYPolygonAnnotation(xy, null, null, color), Layer.BACKGROUND);
  }

  /** A word in the middle of the plot. */
  void say(String text) {
    XYTextAnnotation word =
        new XYTextAnnotation(
            text, across.own().getRange().getCentralValue(), up.own().getRange().getCentralValue());
    word.setFont(new Lettering(Ink.SAID, Letters.Anchor.MIDDLE));
    marks.addAnnotation(word);
  }

  void draw(Canvas canvas) {
    plot.draw(canvas, area, null, null, null);
  }

  /** Sets what the plot shows above its upper axis, and the name of the unit at the right. */
  void name(Canvas canvas, String name) {
    double y = area.getMinY() - (across.own().isVisible() ? 30 : 12);
    canvas.text(name, 24, y, Ink.NAME);
    canvas.text(up.ownName(), area.getMaxX() + 9, y, Ink.NAME);
  }

  /** Full and empty marks. */
  private static final class Marks extends XYLineAndShapeRenderer {
    private static final long serialVersionUID = 1;
    private final transient List<IntPredicate> full = new ArrayList<>();

    Marks() {
      super(true, false);
      setDrawSeriesLineAsPath(true);
      setUseFillPaint(true);
      setUseOutlinePaint(true);
    }

    @Override
    public Paint getItemFillPaint(int series, int item) {
      return full.get(series).test(item) ? getItemPaint(series, item) : Ink.PAPER;
    }

    @Override
    public Paint getItemOutlinePaint(int series, int item) {
      return full.get(series).test(item) ? Ink.PAPER : getItemPaint(series, item);
    }

    @Override
    public Stroke getItemOutlineStroke(int series, int item) {
      return Ink.solid(full.get(series).test(item) ? 1 : 2);
    }
  }
}
