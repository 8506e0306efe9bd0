package seamsoak.billet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import seamsoak.steel.Steel;

/**
 * Two sorts of layers that lie on each other somewhere in a stack.
 *
 * @param upper the one that is the upper where they meet first
 * @param lower the other, or the same
 */
public record LayerPair(Sort upper, Sort lower) {
  /** Layers of one steel and one thickness: those of one sort are alike. */
  public record Sort(Steel steel, double metres) {
    public static Sort of(Stack stack, int layer) {
      return new Sort(stack.steel(layer), stack.thickness(layer).metres());
    }
  }

  /** A layer and the one below it. */
  static LayerPair of(Stack stack, int upper) {
    return new LayerPair(Sort.of(stack, upper), Sort.of(stack, upper + 1));
  }

  public boolean areAlike() {
    return upper.equals(lower);
  }

  /** Whether the two are met where a layer of one sort lies on one of another. */
  public boolean isOf(Sort one, Sort other) {
    return upper.equals(one) && lower.equals(other) || upper.equals(other) && lower.equals(one);
  }

  /**
   * One for each line between layers that a stack is laid with, in their order. There is one for
   * each sort of neighbors, in whichever order; where the line through the layers has the seams
   * between like ones, they need none of their own.
   */
  public static List<LayerPair> withLines(Stack stack) {
    boolean followed = Laying.followed(stack) == stack.layers();
    Set<Set<Sort>> known = new HashSet<>();
    List<LayerPair> pairs = new ArrayList<>();
    for (int i = 0; i + 1 < stack.layers(); i++) {
      LayerPair pair = of(stack, i);
      boolean onTheLine = followed && pair.upper.steel().equals(pair.lower.steel());
      // a set of one where the two are alike
      if (known.add(new HashSet<>(List.of(pair.upper, pair.lower))) && !onTheLine) {
        pairs.add(pair);
      }
    }
    return pairs;
  }
}
