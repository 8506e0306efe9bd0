package seamsoak.page.fire;

import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.chart.Charts;
import seamsoak.chart.figure.SectionFigure;
import seamsoak.state.Joints;

/**
 * A tap on the drawing of a section, as a browser sends it: dots from its upper left corner.
 *
 * @param x to the right
 * @param y down
 */
public record Tapped(double x, double y) {
  /** The field that sends it. */
  public static final String NAME = "tap";

  /** Always as wide, so that a dot is a place: what a phone of 320 has room for. */
  private static final int WIDTH = 264;

  private static final int LEAST_HEIGHT = 44;
  private static final double SCALE = WIDTH / Charts.SKETCH_WIDTH;

  /**
   * The drawing.
   *
   * @param source as an address that holds all of it
   */
  public record Drawing(String source, int width) {}

  /** The section as it is drawn for this. */
  static Drawing drawing(SectionFigure figure) {
    byte[] svg = Charts.tapped(figure, LEAST_HEIGHT / SCALE);
    return new Drawing(
        "data:image/svg+xml;base64," + Base64.getEncoder().encodeToString(svg), WIDTH);
  }

  /** Empty where nothing was tapped. */
  public static Optional<Tapped> of(Map<String, String> sent) {
    return number(sent.get(NAME + ".x"))
        .flatMap(x -> number(sent.get(NAME + ".y")).map(y -> new Tapped(x, y)));
  }

  private static Optional<Integer> number(String text) {
    return text != null && text.matches("[0-9]{1,5}")
        ? Optional.of(Integer.valueOf(text))
        : Optional.empty();
  }

  /** Which of the seams that can be looked at lies there. */
  Optional<Joints> among(List<Joints> joints, SectionFigure figure) {
    return Charts.at(figure, x / SCALE, y / SCALE).flatMap(s -> fits(joints, s));
  }

  private static Optional<Joints> fits(List<Joints> joints, SectionFigure.Spotted spotted) {
    int step = spotted.step().orElse(0);
    List<Joints> made = joints.stream().filter(j -> j.made().step() == step).toList();
    Joints.Way lies = spotted.upright() ? Joints.Way.SIDE_BY_SIDE : Joints.Way.ONE_ON_ANOTHER;
    return made.size() == 1
        ? Optional.of(made.get(0))
        : made.stream().filter(j -> step > 0 && j.way() == lies).findFirst();
  }
}
