package seamsoak.billet;

import java.util.List;
import seamsoak.carbon.Strip;

/** What lies around or in a billet and is not welded to it yet. */
public sealed interface Loose {
  /** Nothing. */
  record Nothing() implements Loose {}

  /** A jacket round the body: from its outer face inward. */
  record Jacket(Strip sheet) implements Loose {}

  /**
   * The layers of a stack.
   *
   * @param halves of each sort of layer, from its face to its middle
   * @param sorts index into the halves for each layer, outermost first, as far in as is followed
   * @param toMiddle whether the last one is the stack's middle layer
   * @param rest the mean of all that lies deeper, or null
   */
  record Layers(List<Strip> halves, List<Integer> sorts, boolean toMiddle, Strip rest)
      implements Loose {
    public Layers {
      halves = List.copyOf(halves);
      sorts = List.copyOf(sorts);
    }

    Layers withHalves(List<Strip> next) {
      return new Layers(next, sorts, toMiddle, rest);
    }

    /** From the outer face inward once welded: the outer half saw the fire, the others a seam. */
    Strip welded(Strip outerHalf) {
      Strip whole = outerHalf;
      int last = sorts.size() - 1;
      for (int i = 0; i <= last; i++) {
        Strip half = halves.get(sorts.get(i));
        if (i > 0) {
          whole = whole.followedBy(half);
        }
        if (i < last || !toMiddle) {
          whole = whole.followedBy(half.reversed());
        }
      }
      return rest == null ? whole : whole.followedBy(rest);
    }
  }
}
