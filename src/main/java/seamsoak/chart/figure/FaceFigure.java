package seamsoak.chart.figure;

import java.util.List;
import seamsoak.face.FacePicture;

/**
 * The shown face of a billet at several times, all to one scale.
 *
 * @param panels at least one, in order
 */
public record FaceFigure(
    String id, String title, String answer, String description, List<Panel> panels)
    implements Figure {

  public FaceFigure {
    Figure.check(id, title, description);
    panels = List.copyOf(panels);
    if (panels.isEmpty()) {
      throw new IllegalArgumentException("a drawing of faces has at least one");
    }
  }

  /**
   * A time.
   *
   * @param name when, and how it is etched
   * @param note what shows
   * @param picture what is seen
   */
  public record Panel(String name, String note, FacePicture picture) {}
}
