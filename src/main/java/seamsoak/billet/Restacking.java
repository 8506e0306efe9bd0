package seamsoak.billet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import seamsoak.carbon.SeamName;
import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;

/**
 * A bar cut in pieces and stacked again.
 *
 * @param across pieces side by side
 * @param high pieces on top of each other
 * @param turn which pieces are given a quarter turn about their length
 * @param kerfMetres lost in each cut
 * @param units that a refusal is told in
 */
record Restacking(int across, int high, Turn turn, double kerfMetres, UnitSystem units) {
  /** How far from square a bar may be whose pieces are turned. */
  private static final double SQUARE_WITHIN = 0.02;

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
      throw new CannotBeDone(
          "pieces of a bar "
              + show(s.widthMetres())
              + " by "
              + show(s.thicknessMetres())
              + " cannot be turned and lie flush",
          "draw it square before, or write \"turn\": \"none\"");
    }
    int pieces = across * high;
    double length = (s.lengthMetres() - (pieces - 1) * kerfMetres) / pieces;
    if (length <= 0) {
      throw new CannotBeDone(
          "a bar "
              + show(s.lengthMetres())
              + " long does not give "
              + pieces
              + " pieces with cuts of "
              + show(kerfMetres),
          "cut fewer pieces, or draw it longer before");
    }
    SectionLine thickness = told(bar.thickness(), bar, resolution);
    SectionLine width = told(bar.width(), bar, resolution);
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

  private SectionLine told(SectionLine line, Workpiece bar, Resolution resolution) {
    boolean thin = line.thinnestLayerMetres(bar.body()) < resolution.thinMetres();
    int seams = (line.strip().planes().size() + 1) * Math.max(across, high) / 2;
    return (thin ? line.averaged(bar.body()) : line).fresh(resolution.forSeams(seams));
  }

  private String show(double metres) {
    return new Length(metres).format(units);
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
