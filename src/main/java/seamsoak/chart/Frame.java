package seamsoak.chart;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.SeriesRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** A plot whose data area is exactly the rectangle given, and the lettering of its axes. */
final class Frame {
  final Rectangle2D area;
  final XYPlot plot;
  private final XYSeriesCollection data = new XYSeriesCollection();
  private final XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);

  Frame(Rectangle2D area, ValueAxis x, ValueAxis y) {
    this.area = area;
    plot = new XYPlot(data, x, y, renderer);
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
    renderer.setDrawSeriesLineAsPath(true);
  }

  double x(double value) {
    return plot.getDomainAxis().valueToJava2D(value, area, RectangleEdge.BOTTOM);
  }

  double y(double value) {
    return plot.getRangeAxis().valueToJava2D(value, area, RectangleEdge.LEFT);
  }

  /** A curve through the points, given in axis values; returns where it runs on the page. */
  List<Point2D> curve(List<Point2D> points, Ink.Style style) {
    int index = data.getSeriesCount();
    XYSeries series = new XYSeries(index, false, true);
    List<Point2D> page = new ArrayList<>();
    for (Point2D point : points) {
      series.add(point.getX(), point.getY());
      page.add(new Point2D.Double(x(point.getX()), y(point.getY())));
    }
    data.addSeries(series);
    renderer.setSeriesPaint(index, style.color());
    renderer.setSeriesStroke(index, style.stroke());
    return page;
  }

  void draw(Canvas canvas) {
    plot.draw(canvas.graphics, area, null, null, null);
  }

  void letterLeft(Canvas canvas, List<Tick> ticks) {
    for (Tick tick : ticks) {
      number(canvas, tick, area.getMinX() - 9, y(tick.at()) + 4.5, Letters.Anchor.END);
    }
  }

  void letterRight(Canvas canvas, List<Tick> ticks) {
    for (Tick tick : ticks) {
      number(canvas, tick, area.getMaxX() + 9, y(tick.at()) + 4.5, Letters.Anchor.START);
    }
  }

  void letterBottom(Canvas canvas, List<Tick> ticks) {
    for (Tick tick : ticks) {
      number(canvas, tick, x(tick.at()), area.getMaxY() + 20, Letters.Anchor.MIDDLE);
    }
  }

  void letterTop(Canvas canvas, List<Tick> ticks) {
    for (Tick tick : ticks) {
      number(canvas, tick, x(tick.at()), area.getMinY() - 10, Letters.Anchor.MIDDLE);
    }
  }

  private static void number(Canvas canvas, Tick tick, double x, double y, Letters.Anchor anchor) {
    canvas.text(new Letters(tick.label(), x, y, anchor, 13, false, Ink.SOFT));
  }
}
