package seamsoak.chart;

import java.util.ArrayList;
import java.util.List;
import seamsoak.chart.figure.ScheduleFigure;

/**
 * Where each step stands across a schedule chart. Time is straight within a panel; panels grow with
 * the root of their minutes, so the scale changes from one to the next and each states its own.
 */
final class Panels {
  private Panels() {}

  /** One step's strip of the page. */
  record Panel(ScheduleFigure.Treatment step, double left, double width) {

    double right() {
      return left + width;
    }

    double middle() {
      return left + width / 2;
    }
  }

  static List<Panel> of(List<ScheduleFigure.Treatment> steps, double left, double width) {
    int n = steps.size();
    double room = width - gap(n) * (n - 1);
    double least = Math.min(96, room / n * 0.8);
    double roots = steps.stream().mapToDouble(step -> Math.sqrt(step.minutes())).sum();
    double free = room - least * n;
    List<Panel> panels = new ArrayList<>();
    double x = left;
    for (var step : steps) {
      double share = roots == 0 ? 1.0 / n : Math.sqrt(step.minutes()) / roots;
      Panel panel = new Panel(step, x, least + free * share);
      panels.add(panel);
      x = panel.right() + gap(n);
    }
    return List.copyOf(panels);
  }

  private static double gap(int panels) {
    return panels > 8 ? 7 : 18;
  }
}
