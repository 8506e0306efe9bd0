package seamsoak.chart;

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
    double kAcross = width / before.size.widthMetres();
    double kUp = thickness / before.size.thicknessMetres();
    double across = before.jacketAcross;
    double up = before.jacketUp;
    Optional<Pattern> bar = before.bar;
    Optional<TilePattern> tiles = before.tiles;
    if (step instanceof Step.Restack s) {
      bar = bar.map(p -> p.restacked(s));
      tiles = Optional.empty();
    } else if (step instanceof Step.Tile s) {
      double ground = 2 * s.grindTaken().metres();
      tiles =
          bar.map(p -> p.cutTo(p.width(), p.thickness() - ground))
              .map(p -> new TilePattern(p, s.angle().radians(), s.mark().number(), 1, 1, 1));
      bar = Optional.empty();
      across = s.jacket().map(j -> j.thickness().metres()).orElse(0.0);
      up = across;
    } else if (step instanceof Step.Unjacket) {
      across = 0;
      up = 0;
    } else if (step instanceof Step.Draw
        || step instanceof Step.Press
        || step instanceof Step.Roll) {
      across *= kAcross;
      up *= kUp;
      tiles = tiles.map(t -> t.stretched(kAcross, kUp));
      bar = bar.map(p -> p.scaledTo(width, thickness));
    } else if (step instanceof Step.Weld) {
      // scale eats every face that is laid against another, so all layers get thinner alike
      bar = bar.map(p -> p.scaledTo(width, thickness));
    }
    bar = bar.map(p -> p.cutTo(width, thickness));
    return new Drawn(step.mark().number(), step.name(), size, bar, tiles, across, up);
  }
}
