package seamsoak.face;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Stack;
import seamsoak.billet.Workpiece;
import seamsoak.steel.Steel;

/**
 * Carbon inside each layer of the stack, by the lines from the middle of one layer to that of the
 * next. There is one for each sort of neighbors, and after restacks that turn some of the pieces
 * one for each way that those lie.
 */
final class Layers {
  /** Steel and thickness: layers of one sort are alike. */
  private record Sort(Steel steel, double metres) {
    static Sort of(Stack stack, int layer) {
      return new Sort(stack.steel(layer), stack.thickness(layer).metres());
    }
  }

  /**
   * Half of a layer on one of those lines.
   *
   * @param pair which line, of those of one way
   * @param lower whether it is the second of the two layers there
   * @param alike whether the line is that of two alike, of which one half stands for both
   */
  private record Half(int pair, boolean lower, boolean alike) {}

  /** So near to its face a place is still the upper layer's. */
  private static final double JUST_WITHIN = 1 - 1e-9;

  private final List<Half> above = new ArrayList<>();
  private final List<Half> below = new ArrayList<>();
  private final Profile[][] lines;

  private Layers(Profile[][] lines) {
    this.lines = lines;
  }

  /**
   * The layers of a piece; none where no line tells of layers by themselves.
   *
   * @param ways in how many ways its pieces lie
   */
  static Layers of(Stack stack, Workpiece piece, int ways) {
    List<SectionLine> own =
        piece.inner().stream().filter(l -> l.kind() == SectionLine.Kind.LAYERS).toList();
    Map<Set<Sort>, Integer> pairs = new HashMap<>();
    Map<Set<Sort>, Sort> upper = new HashMap<>();
    List<Set<Sort>> met = new ArrayList<>();
    boolean likeOnes = likeOnes(stack, own.size() / ways);
    for (int i = 0; i + 1 < stack.layers(); i++) {
      Sort first = Sort.of(stack, i);
      Sort second = Sort.of(stack, i + 1);
      Set<Sort> both = first.equals(second) ? Set.of(first) : Set.of(first, second);
      met.add(both);
      if (!pairs.containsKey(both) && (likeOnes || !first.steel().equals(second.steel()))) {
        pairs.put(both, pairs.size());
        upper.put(both, first);
      }
    }
    Profile[][] lines = new Profile[pairs.size()][ways];
    for (int p = 0; p < lines.length; p++) {
      for (int way = 0; way < ways; way++) {
        lines[p][way] = Profile.ofLayers(own.get(p * ways + way));
      }
    }
    Layers layers = new Layers(lines);
    for (int i = 0; i < stack.layers(); i++) {
      Sort sort = Sort.of(stack, i);
      layers.above.add(i == 0 ? null : half(sort, met.get(i - 1), pairs, upper));
      layers.below.add(i == stack.layers() - 1 ? null : half(sort, met.get(i), pairs, upper));
    }
    return layers;
  }

  /** Whether seams between like layers have lines of their own: where few lie on another's. */
  private static boolean likeOnes(Stack stack, int pairs) {
    Map<Set<Sort>, Boolean> all = new HashMap<>();
    for (int i = 0; i + 1 < stack.layers(); i++) {
      Sort a = Sort.of(stack, i);
      Sort b = Sort.of(stack, i + 1);
      all.put(a.equals(b) ? Set.of(a) : Set.of(a, b), true);
    }
    return all.size() == pairs;
  }

  private static Half half(
      Sort sort, Set<Sort> met, Map<Set<Sort>, Integer> pairs, Map<Set<Sort>, Sort> upper) {
    Integer pair = pairs.get(met);
    return pair == null ? null : new Half(pair, !upper.get(met).equals(sort), met.size() == 1);
  }

  /** Whether a layer has a line of its own. */
  boolean tells(int layer) {
    return above.get(layer) != null || below.get(layer) != null;
  }

  /**
   * Carbon, wt%.
   *
   * @param inLayer how far down the layer, 0 to 1
   * @param way how its piece lies
   */
  double percent(int layer, double inLayer, int way) {
    boolean upper = inLayer < 0.5;
    Half nearer = upper ? above.get(layer) : below.get(layer);
    Half other = upper ? below.get(layer) : above.get(layer);
    Half half = nearer != null ? nearer : other;
    double toFace = 2 * Math.abs(inLayer - 0.5);
    Profile line = lines[half.pair()][way];
    double seam = line.seamMetres();
    double at =
        half.lower() || half.alike()
            ? line.metres() - toFace * (line.metres() - seam)
            : Math.min(toFace, JUST_WITHIN) * seam;
    return line.percent(line.cell(at), at);
  }
}
