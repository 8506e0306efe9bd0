package seamsoak.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import seamsoak.chart.figure.ScheduleFigure;

/**
 * Draws a {@link ScheduleFigure}: one panel a step, in as many rows as leave each panel room for
 * its words.
 */
final class ScheduleDrawing implements Drawing {
  private static final int TO_A_ROW = 6;

  /** A schedule of more steps is told as one row with a key, not as an endless page. */
  private static final int MOST_ROWS = 4;

  private static final double ONE_ROW = 368;
  private static final double EACH_OF_SEVERAL = 270;

  private final Heading heading;
  private final List<ScheduleRow> rows = new ArrayList<>();

  ScheduleDrawing(ScheduleFigure figure) {
    heading = Heading.of(figure);
    double least = 600;
    double most = 600;
    for (var step : figure.steps()) {
      for (var at : Stream.concat(step.curve().stream(), step.face().stream()).toList()) {
        least = Math.min(least, at.celsius());
        most = Math.max(most, at.celsius());
      }
    }
    for (var band : figure.bands()) {
      least = Math.min(least, band.lowCelsius());
      most = Math.max(most, band.highCelsius());
    }
    int count = rows(figure.steps().size());
    int each = (figure.steps().size() + count - 1) / count;
    double top = heading.bottom() + 10;
    for (int i = 0; i < figure.steps().size(); i += each) {
      List<ScheduleFigure.Treatment> steps =
          figure.steps().subList(i, Math.min(figure.steps().size(), i + each));
      ScheduleRow row =
          ScheduleRow.of(
              figure, steps, top, count == 1 ? ONE_ROW : EACH_OF_SEVERAL, least - 50, most + 60);
      rows.add(row);
      top = row.bottom() + 12;
    }
  }

  private static int rows(int steps) {
    int rows = (steps + TO_A_ROW - 1) / TO_A_ROW;
    return rows > MOST_ROWS ? 1 : rows;
  }

  @Override
  public double height() {
    return rows.get(rows.size() - 1).bottom();
  }

  @Override
  public void draw(Canvas canvas) {
    heading.draw(canvas);
    rows.forEach(row -> row.draw(canvas));
  }
}
