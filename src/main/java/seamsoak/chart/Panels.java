package seamsoak.chart;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Where each step stands across a schedule chart. Time is straight within a panel; panels grow with
 * the root of their minutes, so the scale changes from one to the next and each states its own.
 */
record Panels(List<Panel> list, double gap) {

  /** One step's strip of the page. */
  record Panel(ScheduleFigure.Step step, double left, double width) {

    double x(double minutesFromItsStart) {
      double whole = step.minutes();
      return whole == 0 ? left + width / 2 : left + width * minutesFromItsStart / whole;
    }

    /** One of the step's curves: page x against Celsius. */
    List<Point2D> points(List<ScheduleFigure.At> curve) {
      List<Point2D> points = new ArrayList<>();
      for (var at : curve) {
        points.add(new Point2D.Double(x(at.minutes() - step.start()), at.celsius()));
      }
      return points;
    }

    double middle() {
      return left + width / 2;
    }
  }

  static Panels of(List<ScheduleFigure.Step> steps, double left, double width) {
    int n = steps.size();
    double gap = n > 8 ? 7 : 14;
    double room = width - gap * (n - 1);
    double least = Math.min(96, room / n * 0.8);
    double roots = steps.stream().mapToDouble(step -> Math.sqrt(step.minutes())).sum();
    double free = room - least * n;
    List<Panel> panels = new ArrayList<>();
    double x = left;
    for (var step : steps) {
      double share = roots == 0 ? 1.0 / n : Math.sqrt(step.minutes()) / roots;
      Panel panel = new Panel(step, x, least + free * share);
      panels.add(panel);
      x += panel.width() + gap;
    }
    return new Panels(List.copyOf(panels), gap);
  }
}
