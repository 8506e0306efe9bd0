package seamsoak.chart.figure;

import java.util.List;
import seamsoak.unit.UnitSystem;

/**
 * A real heat: temperature against minutes of its log, with what counts for nothing.
 *
 * @param curves one or two: what was read, and the piece where it lagged
 * @param leftOut readings that are none
 * @param blank stretches that count for nothing or are not known
 * @param levels temperatures that matter
 */
public record LogFigure(
    String id,
    String title,
    String answer,
    String description,
    UnitSystem units,
    List<Curve> curves,
    List<ScheduleFigure.Corner> leftOut,
    List<Span> blank,
    List<Level> levels)
    implements Figure {

  public LogFigure {
    Figure.check(id, title, description);
    curves = List.copyOf(curves);
    leftOut = List.copyOf(leftOut);
    blank = List.copyOf(blank);
    levels = List.copyOf(levels);
    if (curves.isEmpty() || curves.size() > 2) {
      throw new IllegalArgumentException("one curve or two");
    }
  }

  /**
   * A curve in pieces, between which nothing is known.
   *
   * @param name at its end
   * @param pieces each of at least one point
   */
  public record Curve(String name, List<List<ScheduleFigure.Corner>> pieces) {
    public Curve {
      pieces = pieces.stream().map(List::copyOf).toList();
    }
  }

  /** A stretch of minutes. */
  public record Span(double from, double to) {
    public Span {
      Figure.finite(from, "time");
      Figure.finite(to, "time");
    }
  }

  /** A temperature; the chart adds it in the reader's units. */
  public record Level(String name, double celsius) {
    public Level {
      Figure.finite(celsius, "level");
    }
  }
}
