package seamsoak.billet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import seamsoak.carbon.SeamName;
import seamsoak.carbon.Strip;

/**
 * A bar cut in pieces and stacked again.
 *
 * @param across pieces side by side
 * @param high pieces on top of each other
 * @param turn which pieces are given a quarter turn about their length
 * @param kerfMetres lost in each cut
 */
record Restacking(int across, int high, Turn turn, double kerfMetres) {
  /** How far from square a bar may be whose pieces are turned. */
  private static final double SQUARE_WITHIN = 0.02;

  /** More layers than that on one line are told by their mean. */
  private static final int MOST_LAYERS = 24;

  /**
   * The stack, its new faces loose.
   *
   * @param step number of the step
   * @throws IllegalArgumentException with a sentence when it cannot be done
   */
  Workpiece of(Workpiece bar, int step, Resolution resolution) {
    Size s = bar.size();
    double ratio = s.widthMetres() / s.thicknessMetres();
    if (turn != Turn.NONE && Math.abs(ratio - 1) > SQUARE_WITHIN) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "pieces of a bar %.1f x %.1f mm cannot be turned and lie flush",
              s.widthMetres() * 1e3,
              s.thicknessMetres() * 1e3));
    }
    int pieces = across * high;
    double length = (s.lengthMetres() - (pieces - 1) * kerfMetres) / pieces;
    if (length <= 0) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "a bar %.1f mm long does not give %d pieces with cuts of %.1f mm",
              s.lengthMetres() * 1e3,
              pieces,
              kerfMetres * 1e3));
    }
    SectionLine thickness = bar.thickness().fresh(resolution);
    SectionLine width = bar.width().fresh(resolution);
    if (layers(thickness) * high > MOST_LAYERS) {
      thickness = thickness.averaged(bar.body());
    }
    boolean all = turn == Turn.ALL;
    boolean mixed = turn == Turn.ALTERNATE;
    // a quarter turn brings the top to the side
    SectionLine up = all ? width.reversed() : thickness;
    SectionLine along = all ? thickness.reversed() : width;
    SeamName name = new SeamName(SeamName.Kind.RESTACK, step);
    SectionLine newWidth =
        Row.of(across, along, mixed ? up.reversed() : along, name)
            .line(SectionLine.Kind.WIDTH, Direction.WIDTH);
    SectionLine newThickness =
        Row.of(high, up, mixed ? along.reversed() : up, name)
            .line(SectionLine.Kind.THICKNESS, Direction.THICKNESS);
    UnaryOperator<List<SectionLine>> turned =
        all
            ? inner -> inner.stream().map(l -> l.with(l.normal().turned(), l.share())).toList()
            : mixed ? Restacking::half : inner -> inner;
    return bar.withInner(turned)
        .withSkins(newThickness, newWidth)
        .withSize(new Size(length, newWidth.metres(), newThickness.metres()));
  }

  /** Layers that a line runs through one by one; 0 where it runs through their mean. */
  private static int layers(SectionLine line) {
    Strip strip = line.strip();
    int changes = 0;
    for (int i = 1; i < strip.cells(); i++) {
      changes += strip.metal(i).equals(strip.metal(i - 1)) ? 0 : 1;
    }
    return changes == 0 ? 0 : line.isHalf() ? 2 * changes + 1 : changes + 1;
  }

  /** Half of the pieces stay as they were, half are turned. */
  private static List<SectionLine> half(List<SectionLine> all) {
    List<SectionLine> split = new ArrayList<>();
    for (SectionLine l : all) {
      split.add(l.with(l.normal(), l.share() / 2));
      split.add(l.with(l.normal().turned(), l.share() / 2));
    }
    return split;
  }
}
