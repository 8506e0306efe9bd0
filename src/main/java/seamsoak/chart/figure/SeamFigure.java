package seamsoak.chart.figure;

import java.util.List;
import seamsoak.unit.UnitSystem;

/**
 * Carbon against distance from a seam, at one to four moments.
 *
 * @param curves one to four; when every curve lies on one side only it is mirrored to the other
 * @param levels carbon levels to compare with, such as even carbon or where a line shows
 */
public record SeamFigure(
    String id,
    String title,
    String answer,
    String description,
    UnitSystem units,
    List<Curve> curves,
    List<Level> levels)
    implements Figure {

  public SeamFigure {
    Figure.check(id, title, description);
    curves = List.copyOf(curves);
    levels = List.copyOf(levels);
    if (curves.isEmpty() || curves.size() > 4) {
      throw new IllegalArgumentException("one to four curves, not " + curves.size());
    }
  }

  /** The seam's carbon at one moment, at least two points in order of distance. */
  public record Curve(String label, List<Sample> points) {
    public Curve {
      points = List.copyOf(points);
      if (points.size() < 2) {
        throw new IllegalArgumentException("curve '" + label + "' needs two points");
      }
      for (int i = 1; i < points.size(); i++) {
        if (points.get(i).millimetres() < points.get(i - 1).millimetres()) {
          throw new IllegalArgumentException("curve '" + label + "' is out of order");
        }
      }
    }
  }

  /** Carbon at a distance; the seam is at 0. */
  public record Sample(double millimetres, double carbonPct) {
    public Sample {
      Figure.finite(millimetres, "distance");
      Figure.finite(carbonPct, "carbon");
    }
  }

  /** A horizontal line; the chart adds its carbon. */
  public record Level(String label, double carbonPct) {
    public Level {
      Figure.finite(carbonPct, "carbon");
    }
  }
}
