package seamsoak.billet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.gamma.Erf;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.steel.Steel;

/** Lays the pieces of a stack on each other. */
final class Laying {
  /** Layers that a strip through the outer face follows one by one; deeper lies their mean. */
  private static final int FOLLOWED = 4;

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
    for (int i = 0; i < stack.layers(); i++) {
      halves.computeIfAbsent(
          sort(stack, i), s -> half(shop.metal(s.steel()), s.metres() / 2, skin));
    }
    Strip outer = halves.get(sort(stack, 0));
    Size size =
        new Size(stack.length().metres(), stack.width().metres(), stack.thickness().metres());
    Strip side = half(body, stack.width().metres() / 2, skin);
    boolean one = stack.layers() == 1;
    return new Workpiece(
        size,
        body,
        outer,
        side,
        List.of(),
        one ? List.of() : joints(stack, halves),
        one ? new Loose.Nothing() : layers(stack, halves, body),
        Optional.empty(),
        Optional.empty());
  }

  /** Layers of one steel and one thickness. */
  private record Sort(Steel steel, double metres) {
    /** Written out, since what records bring along is slow the first time. */
    @Override
    public boolean equals(Object o) {
      return o instanceof Sort s && s.metres == metres && s.steel.equals(steel);
    }

    @Override
    public int hashCode() {
      return 31 * steel.hashCode() + Double.hashCode(metres);
    }
  }

  private static Sort sort(Stack stack, int layer) {
    return new Sort(stack.steel(layer), stack.thickness(layer).metres());
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

  /** One joint for each sort of neighbors, in whichever order, with how often it occurs. */
  private static List<Joint> joints(Stack stack, Map<Sort, Strip> halves) {
    Map<Set<Sort>, Integer> planes = new LinkedHashMap<>();
    Map<Set<Sort>, Integer> first = new LinkedHashMap<>();
    for (int i = 0; i + 1 < stack.layers(); i++) {
      Set<Sort> pair = new HashSet<>(List.of(sort(stack, i), sort(stack, i + 1)));
      planes.merge(pair, 1, Integer::sum);
      first.putIfAbsent(pair, i);
    }
    List<Joint> joints = new ArrayList<>();
    planes.forEach((pair, count) -> joints.add(joint(stack, halves, first.get(pair), count)));
    return joints;
  }

  private static Joint joint(Stack stack, Map<Sort, Strip> halves, int layer, int planes) {
    Steel upper = stack.steel(layer);
    Steel lower = stack.steel(layer + 1);
    boolean same = upper.equals(lower);
    return new Joint(
        same ? "layers of " + upper.id() : "layers " + upper.id() + " | " + lower.id(),
        same ? Family.Kind.SEAM : Family.Kind.LAYER,
        0,
        1,
        planes,
        Direction.THICKNESS,
        halves.get(sort(stack, layer)),
        halves.get(sort(stack, layer + 1)));
  }

  private Loose layers(Stack stack, Map<Sort, Strip> halves, Metal body) {
    List<Sort> kinds = new ArrayList<>(halves.keySet());
    int middle = stack.layers() / 2;
    boolean odd = stack.layers() % 2 == 1;
    int inHalf = odd ? middle + 1 : middle;
    int followed = Math.min(inHalf, FOLLOWED);
    List<Integer> order = new ArrayList<>();
    double depth = 0;
    for (int i = 0; i < followed; i++) {
      order.add(kinds.indexOf(sort(stack, i)));
      depth += stack.thickness(i).metres();
    }
    boolean toMiddle = odd && followed == inHalf;
    double left = stack.thickness().metres() / 2 - depth;
    Strip rest = followed < inHalf ? Strip.of(body, left, shop.resolution().oneEnd(left)) : null;
    return new Loose.Layers(List.copyOf(halves.values()), order, toMiddle, rest);
  }
}
