package seamsoak.billet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.gamma.Erf;
import seamsoak.billet.LayerPair.Sort;
import seamsoak.billet.SectionLine.End;
import seamsoak.billet.SectionLine.Kind;
import seamsoak.carbon.Metal;
import seamsoak.carbon.SeamName;
import seamsoak.carbon.Strip;

/** Lays the pieces of a stack on each other. */
final class Laying {
  /** Stacks of so many layers have a line through each of them. */
  private static final int FOLLOWED = 9;

  /** Others have one through so many at a face, and through the mean of those below. */
  private static final int OUTER = 2;

  /** The same where all are of one steel, whose seams lie on the line. */
  private static final int FOLLOWED_ALIKE = 60;

  /** erf(1.163) = 0.9: where a skin's carbon is within a tenth of the core's. */
  private static final double SKIN_ARGUMENT = 1.163087;

  private final Shop shop;

  Laying(Shop shop) {
    this.shop = shop;
  }

  Workpiece of(Stack stack) {
    Metal body = shop.body(stack);
    double skin = stack.skinTaken().metres();
    Map<Sort, Strip> halves = new LinkedHashMap<>();
    Map<Sort, Double> weights = new LinkedHashMap<>();
    for (int i = 0; i < stack.layers(); i++) {
      Sort sort = Sort.of(stack, i);
      halves.computeIfAbsent(sort, s -> half(shop.metal(s.steel()), s.metres() / 2, skin));
      weights.merge(sort, stack.shareInBody(i), Double::sum);
    }
    Size size =
        new Size(stack.length().metres(), stack.width().metres(), stack.thickness().metres());
    boolean one = stack.layers() == 1;
    int followed = followed(stack);
    boolean all = followed == stack.layers();
    Strip side = half(body, size.widthMetres() / 2, skin);
    return new Workpiece(
        size,
        body,
        all ? through(stack, halves) : outer(stack, followed, halves),
        SectionLine.half(Kind.WIDTH, Direction.WIDTH, side),
        LayerPair.withLines(stack).stream()
            .map(p -> pair(halves.get(p.upper()), halves.get(p.lower())))
            .toList(),
        one
            ? new Loose.Nothing()
            : Loose.Layers.of(
                List.copyOf(halves.values()),
                List.copyOf(weights.values()),
                all ? Optional.empty() : Optional.of(rest(stack, followed, body))),
        Optional.empty(),
        Optional.empty());
  }

  /** How many layers have their own place on the line through the stack, from a face inward. */
  static int followed(Stack stack) {
    boolean alike = stack.steels().stream().distinct().count() == 1;
    return stack.layers() <= (alike ? FOLLOWED_ALIKE : FOLLOWED) ? stack.layers() : OUTER;
  }

  /** A line through every layer, one by one. */
  private static SectionLine through(Stack stack, Map<Sort, Strip> halves) {
    Map<Sort, SectionLine> layers = new LinkedHashMap<>();
    halves.forEach(
        (s, h) -> layers.put(s, SectionLine.half(Kind.THICKNESS, Direction.THICKNESS, h)));
    List<SectionLine> all = new ArrayList<>();
    for (int i = 0; i < stack.layers(); i++) {
      all.add(layers.get(Sort.of(stack, i)));
    }
    return new Row(all, SeamName.LAYERS).line(Kind.THICKNESS, Direction.THICKNESS);
  }

  /**
   * The layers at a face, and half of the next; below its middle their mean follows, which is that
   * of layers from middle to middle.
   */
  private static SectionLine outer(Stack stack, int followed, Map<Sort, Strip> halves) {
    List<Strip> parts = new ArrayList<>();
    for (int i = 0; i < followed; i++) {
      parts.add(halves.get(Sort.of(stack, i)).mirrored());
    }
    parts.add(halves.get(Sort.of(stack, followed)));
    return new SectionLine(
        Kind.THICKNESS, Direction.THICKNESS, 1, parts, End.OUTSIDE, End.MIRROR, SeamName.LAYERS);
  }

  private Strip rest(Stack stack, int followed, Metal body) {
    double metres = stack.thickness().metres() / 2 - stack.thickness(followed).metres() / 2;
    for (int i = 0; i < followed; i++) {
      metres -= stack.thickness(i).metres();
    }
    return Strip.of(body, metres, shop.resolution().oneEnd(metres));
  }

  /** From a face to the middle of a piece, with the skin that the stock brings. */
  private Strip half(Metal metal, double metres, double skinMetres) {
    Strip fresh = Strip.of(metal, metres, shop.resolution().oneEnd(metres));
    if (skinMetres <= 0) {
      return fresh;
    }
    double[] cells = new double[fresh.cells()];
    double[] ratio = new double[cells.length];
    double depth = 0;
    for (int i = 0; i < cells.length; i++) {
      cells[i] = fresh.metres(i);
      double middle = depth + 0.5 * cells[i];
      ratio[i] = fresh.ratio(i) * Erf.value(SKIN_ARGUMENT * middle / skinMetres);
      depth += cells[i];
    }
    return Strip.of(metal, cells, ratio);
  }

  private static SectionLine pair(Strip upper, Strip lower) {
    return new SectionLine(
        Kind.LAYERS,
        Direction.THICKNESS,
        1,
        upper == lower ? List.of(lower) : List.of(upper.reversed(), lower),
        upper == lower ? End.GAP : End.MIRROR,
        End.MIRROR,
        SeamName.LAYERS);
  }
}
