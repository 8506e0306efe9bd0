package seamsoak.chart.figure;

import java.util.List;
import java.util.OptionalInt;
import seamsoak.unit.UnitSystem;

/**
 * The billet's section after each of several steps, all to one scale.
 *
 * @param panels at least one, in order
 * @param steels names, in the order of the patterns' numbers
 * @param seams the sets of seams, in the order of their steps
 * @param widestMm width that a panel must have room for, in this drawing and those beside it
 */
public record SectionFigure(
    String id,
    String title,
    String answer,
    String description,
    UnitSystem units,
    List<Panel> panels,
    List<String> steels,
    List<SeamsOf> seams,
    double widestMm)
    implements Figure {

  public SectionFigure {
    Figure.check(id, title, description);
    panels = List.copyOf(panels);
    steels = List.copyOf(steels);
    seams = List.copyOf(seams);
    if (panels.isEmpty()) {
      throw new IllegalArgumentException("a drawing of sections has at least one");
    }
    Figure.finite(widestMm, "width");
  }

  /**
   * A step.
   *
   * @param name such as "4 restack"
   * @param notes size, and what cannot be seen
   * @param views one or more, one under the other
   */
  public record Panel(String name, List<String> notes, List<View> views) {
    public Panel {
      notes = List.copyOf(notes);
      views = List.copyOf(views);
    }
  }

  /**
   * One look at it, sizes in mm.
   *
   * @param label what is seen, may be empty
   * @param jacketAcross jacket left and right
   * @param jacketUp jacket above and below
   * @param goesOn whether only a part of its length is shown
   * @param pattern in m, null when it cannot be drawn
   */
  public record View(
      String label,
      double widthMm,
      double heightMm,
      double jacketAcross,
      double jacketUp,
      boolean goesOn,
      Pattern pattern) {
    public View {
      Figure.finite(widthMm, "width");
      Figure.finite(heightMm, "height");
    }
  }

  /**
   * What lies where somebody pointed.
   *
   * @param step that made the nearest seam; empty where none is near, among the layers
   * @param upright whether that runs up rather than across
   */
  public record Spotted(OptionalInt step, boolean upright) {}

  /** A set of seams by the step that made it. */
  public record SeamsOf(int step, String name) {}
}
