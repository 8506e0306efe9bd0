package seamsoak.chart.figure;

import java.util.List;
import java.util.OptionalDouble;
import seamsoak.unit.UnitSystem;

/**
 * How lines fade: contrast and width, step by step.
 *
 * @param steps in order, at least one
 * @param planned how many of them, at the end, are still to be done
 * @param sets one to four sets of seams
 */
public record FadingFigure(
    String id,
    String title,
    String answer,
    String description,
    UnitSystem units,
    List<Column> steps,
    int planned,
    List<Trail> sets)
    implements Figure {

  public FadingFigure {
    Figure.check(id, title, description);
    steps = List.copyOf(steps);
    sets = List.copyOf(sets);
    if (steps.isEmpty() || sets.isEmpty() || sets.size() > 4) {
      throw new IllegalArgumentException("one step at least and one to four sets of seams");
    }
    for (Trail set : sets) {
      if (set.at().size() != steps.size()) {
        throw new IllegalArgumentException("'" + set.name() + "' needs a state for each step");
      }
    }
  }

  /** A step: its number, empty for a planned one, and its name. */
  public record Column(String number, String name) {}

  /** Seams made in one step. */
  public record Trail(String name, List<State> at) {
    public Trail {
      at = List.copyOf(at);
    }
  }

  /**
   * A set of seams after a step.
   *
   * @param contrast from 1 on a line shows; empty before the seams are there
   * @param widthMm on the face, empty where no line shows
   */
  public record State(OptionalDouble contrast, OptionalDouble widthMm, boolean shows) {
    public State {
      contrast.ifPresent(v -> Figure.finite(v, "contrast"));
      widthMm.ifPresent(v -> Figure.finite(v, "width"));
    }
  }
}
