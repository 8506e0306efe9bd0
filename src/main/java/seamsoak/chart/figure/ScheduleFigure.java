package seamsoak.chart.figure;

import java.util.List;
import seamsoak.unit.UnitSystem;

/**
 * Temperature against time through a schedule. Each step has a panel of its own with its own time
 * scale, so that a long soak does not squash the short cycles after it.
 *
 * @param steps at least one, in order
 * @param bands temperatures that matter, as ranges; low may equal high
 */
public record ScheduleFigure(
    String id,
    String title,
    String answer,
    String description,
    UnitSystem units,
    List<Treatment> steps,
    List<Band> bands)
    implements Figure {

  public ScheduleFigure {
    Figure.check(id, title, description);
    steps = List.copyOf(steps);
    bands = List.copyOf(bands);
    if (steps.isEmpty()) {
      throw new IllegalArgumentException("a schedule has at least one step");
    }
  }

  /**
   * One step.
   *
   * @param name a word or two, such as "normalize"
   * @param detail what to do, such as "1580 F (860 C), 10 min, air"
   * @param curve of the core: at least one point, times not falling, counted from any common start
   * @param face of the outer face on the same clock; empty where it is not told apart
   */
  public record Treatment(String name, String detail, List<Corner> curve, List<Corner> face) {
    public Treatment {
      curve = List.copyOf(curve);
      face = List.copyOf(face);
      if (curve.isEmpty()) {
        throw new IllegalArgumentException("step '" + name + "' has no points");
      }
      forward(name, curve);
      forward(name, face);
    }

    private static void forward(String name, List<Corner> curve) {
      for (int i = 1; i < curve.size(); i++) {
        if (curve.get(i).minutes() < curve.get(i - 1).minutes()) {
          throw new IllegalArgumentException("step '" + name + "' runs back in time");
        }
      }
    }

    public double start() {
      return curve.get(0).minutes();
    }

    public double minutes() {
      return curve.get(curve.size() - 1).minutes() - start();
    }
  }

  /** A corner of the temperature-time curve. */
  public record Corner(double minutes, double celsius) {
    public Corner {
      Figure.finite(minutes, "time");
      Figure.finite(celsius, "temperature");
    }
  }

  /** What a band stands for, which decides how it is drawn. */
  public enum Meaning {
    /** Where the steel changes: Ac1, Ac3, Accm. */
    CHANGE,
    /** A line not to cross: the forging limit. */
    LIMIT,
    /** A mark for the eye: black heat. */
    GUIDE
  }

  /** A horizontal band; the chart adds its temperatures in the reader's units. */
  public record Band(String label, Meaning kind, double lowCelsius, double highCelsius) {
    public Band {
      Figure.finite(lowCelsius, "band");
      Figure.finite(highCelsius, "band");
      if (lowCelsius > highCelsius) {
        throw new IllegalArgumentException("band '" + label + "' is upside down");
      }
    }

    public double middle() {
      return (lowCelsius + highCelsius) / 2;
    }
  }
}
