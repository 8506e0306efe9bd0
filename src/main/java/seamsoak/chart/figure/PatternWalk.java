package seamsoak.chart.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.billet.Size;
import seamsoak.billet.Step;

/**
 * The pattern in the billet's section after each step, drawn from what the steps do and the sizes
 * that the walk has found. Once tiles are stacked again it can no longer be told in one plane and
 * only the outline is left.
 */
public final class PatternWalk {
  /**
   * The pattern after a step.
   *
   * @param step number of the step, 0 for the stack
   * @param kind such as {@code weld}
   * @param size outer size, jacket included
   * @param bar its cross-section until tiles are laid
   * @param tiles its pattern since then
   * @param jacketAcross thickness of the jacket on the sides
   * @param jacketUp thickness of the jacket above and below
   */
  public record Drawn(
      int step,
      String kind,
      Size size,
      Optional<Pattern> bar,
      Optional<TilePattern> tiles,
      double jacketAcross,
      double jacketUp) {
    /** As before but for the step and the size. */
    private Drawn(int step, String kind, Size size, Drawn before) {
      this(step, kind, size, before.bar, before.tiles, before.jacketAcross, before.jacketUp);
    }

    private Drawn of(Optional<Pattern> bar, Optional<TilePattern> tiles) {
      return new Drawn(step, kind, size, bar, tiles, jacketAcross, jacketUp);
    }

    private Drawn jacketed(double across, double up) {
      return new Drawn(step, kind, size, bar, tiles, across, up);
    }

    /** Width without the jacket. */
    public double bodyWidth() {
      return size.widthMetres() - 2 * jacketAcross;
    }

    /** Thickness without the jacket. */
    public double bodyThickness() {
      return size.thicknessMetres() - 2 * jacketUp;
    }
  }

  private PatternWalk() {}

  /**
   * One drawing for the stack and each step.
   *
   * @param sizes outer size of the stack and after each step
   */
  public static List<Drawn> of(Billet billet, List<Size> sizes) {
    List<Drawn> all = new ArrayList<>();
    all.add(
        new Drawn(
            0,
            "stack",
            sizes.get(0),
            Optional.of(Pattern.of(billet.stack())),
            Optional.empty(),
            0,
            0));
    for (int i = 0; i < billet.steps().size(); i++) {
      all.add(after(billet.steps().get(i), all.get(i), sizes.get(i + 1)));
    }
    return List.copyOf(all);
  }

  private static Drawn after(Step step, Drawn before, Size size) {
    double width = size.widthMetres();
    double thickness = size.thicknessMetres();
    Drawn next = new Drawn(step.mark().number(), step.name(), size, before);
    Drawn drawn =
        switch (step.kind()) {
          case RESTACK ->
              next.of(before.bar.map(p -> p.restacked((Step.Restack) step)), Optional.empty());
          case TILE -> tiled((Step.Tile) step, next);
          case UNJACKET -> next.jacketed(0, 0);
          case DRAW, PRESS, ROLL -> {
            double kAcross = width / before.size.widthMetres();
            double kUp = thickness / before.size.thicknessMetres();
            yield next.jacketed(before.jacketAcross * kAcross, before.jacketUp * kUp)
                .of(
                    before.bar.map(p -> p.scaledTo(width, thickness)),
                    before.tiles.map(t -> t.stretched(kAcross, kUp)));
          }
          // scale eats every face that is laid against another, so all layers get thinner alike
          case WELD -> next.of(before.bar.map(p -> p.scaledTo(width, thickness)), before.tiles);
          case GRIND, TWIST, SOAK, ANNEAL, NORMALIZE, REFINE, RELIEVE, HARDEN, TEMPER, COOL -> next;
        };
    return drawn.of(drawn.bar.map(p -> p.cutTo(width, thickness)), drawn.tiles);
  }

  private static Drawn tiled(Step.Tile s, Drawn next) {
    double ground = 2 * s.grindTaken().metres();
    double jacket = s.jacket().map(j -> j.thickness().metres()).orElse(0.0);
    return next.jacketed(jacket, jacket)
        .of(
            Optional.empty(),
            next.bar
                .map(p -> p.cutTo(p.width(), p.thickness() - ground))
                .map(p -> new TilePattern(p, s.angle().radians(), s.mark().number(), 1, 1, 1)));
  }
}
