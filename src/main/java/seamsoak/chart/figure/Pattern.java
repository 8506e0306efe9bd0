package seamsoak.chart.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import seamsoak.billet.Stack;
import seamsoak.billet.Step;
import seamsoak.billet.Turn;
import seamsoak.steel.Steel;

/**
 * Where the layers and seams run in the cross-section of a bar, lengths in m from its lower left
 * corner: width across, thickness up. It is the same all along the bar.
 *
 * @param width of the section
 * @param thickness of the section
 * @param patches layers, piece by piece
 * @param seams faces welded together, and faces laid together
 */
public record Pattern(double width, double thickness, List<Patch> patches, List<Seam> seams) {

  /** A point of a section. */
  public record Spot(double across, double up) {}

  /**
   * A piece of one layer.
   *
   * @param steel which of the stack's steels, from 0
   * @param corners of its outline
   */
  public record Patch(int steel, List<Spot> corners) {
    public Patch {
      corners = List.copyOf(corners);
    }

    /** Whether it has come down to a line; all patches lie square in the section. */
    public boolean isEmpty() {
      return corners.stream().mapToDouble(Spot::across).distinct().count() < 2
          || corners.stream().mapToDouble(Spot::up).distinct().count() < 2;
    }
  }

  /**
   * A stretch of a seam.
   *
   * @param step number of the step that made it
   */
  public record Seam(int step, Spot from, Spot to) {}

  public Pattern {
    patches = List.copyOf(patches);
    seams = List.copyOf(seams);
  }

  /** The stack as laid; where layers are alike, the plane between them is a seam. */
  public static Pattern of(Stack stack) {
    Map<Steel, Integer> numbers = new LinkedHashMap<>();
    stack.steels().forEach(s -> numbers.putIfAbsent(s, numbers.size()));
    double width = stack.width().metres();
    List<Patch> patches = new ArrayList<>();
    List<Seam> seams = new ArrayList<>();
    double top = stack.thickness().metres();
    for (int i = 0; i < stack.layers(); i++) {
      double bottom = top - stack.thickness(i).metres();
      patches.add(
          new Patch(
              numbers.get(stack.steel(i)),
              List.of(
                  new Spot(0, bottom),
                  new Spot(width, bottom),
                  new Spot(width, top),
                  new Spot(0, top))));
      if (i > 0 && stack.steel(i).equals(stack.steel(i - 1))) {
        seams.add(new Seam(0, new Spot(0, top), new Spot(width, top)));
      }
      top = bottom;
    }
    return new Pattern(width, stack.thickness().metres(), patches, seams);
  }

  /** Forged to a section. */
  public Pattern scaledTo(double newWidth, double newThickness) {
    double kx = newWidth / width;
    double ky = newThickness / thickness;
    return map(newWidth, newThickness, s -> new Spot(s.across * kx, s.up * ky));
  }

  /** Ground or scaled to a section, alike on both sides; what would stand out of it is gone. */
  public Pattern cutTo(double newWidth, double newThickness) {
    double dx = (newWidth - width) / 2;
    double dy = (newThickness - thickness) / 2;
    Pattern cut =
        map(
            newWidth,
            newThickness,
            s ->
                new Spot(
                    Math.max(0, Math.min(newWidth, s.across + dx)),
                    Math.max(0, Math.min(newThickness, s.up + dy))));
    return new Pattern(
        newWidth, newThickness, cut.patches.stream().filter(p -> !p.isEmpty()).toList(), cut.seams);
  }

  /** Pieces of it beside and on each other. */
  public Pattern restacked(Step.Restack s) {
    Pattern turned = map(thickness, width, at -> new Spot(thickness - at.up, at.across));
    Pattern even = s.turnTaken() == Turn.ALL ? turned : this;
    Pattern odd = s.turnTaken() == Turn.NONE ? this : turned;
    List<Patch> all = new ArrayList<>();
    List<Seam> runs = new ArrayList<>();
    double w = even.width;
    double t = even.thickness;
    for (int i = 0; i < s.across(); i++) {
      for (int k = 0; k < s.high(); k++) {
        double x = i * w;
        double y = k * t;
        Pattern piece = (i + k) % 2 == 0 ? even : odd;
        Pattern placed = piece.map(w, t, at -> new Spot(at.across + x, at.up + y));
        all.addAll(placed.patches);
        runs.addAll(placed.seams);
      }
    }
    int step = s.mark().number();
    double right = s.across() * w;
    double top = s.high() * t;
    for (int i = 1; i < s.across(); i++) {
      runs.add(new Seam(step, new Spot(i * w, 0), new Spot(i * w, top)));
    }
    for (int k = 1; k < s.high(); k++) {
      runs.add(new Seam(step, new Spot(0, k * t), new Spot(right, k * t)));
    }
    return new Pattern(right, top, all, runs);
  }

  public Pattern map(double newWidth, double newThickness, UnaryOperator<Spot> by) {
    return new Pattern(
        newWidth,
        newThickness,
        patches.stream().map(p -> new Patch(p.steel, p.corners.stream().map(by).toList())).toList(),
        seams.stream().map(s -> new Seam(s.step, by.apply(s.from), by.apply(s.to))).toList());
  }
}
