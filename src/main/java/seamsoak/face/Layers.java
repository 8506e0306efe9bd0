package seamsoak.face;

import java.util.ArrayList;
import java.util.List;
import seamsoak.billet.LayerPair;
import seamsoak.billet.LayerPair.Sort;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Stack;
import seamsoak.billet.Workpiece;

/**
 * Carbon inside each layer of the stack, by the lines from the middle of one layer to that of the
 * next. There is one for each sort of neighbors, and after restacks that turn some of the pieces
 * one for each way that those lie.
 */
final class Layers {
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
    List<LayerPair> pairs = own.isEmpty() ? List.of() : LayerPair.withLines(stack);
    Profile[][] lines = new Profile[pairs.size()][ways];
    for (int p = 0; p < lines.length; p++) {
      for (int way = 0; way < ways; way++) {
        lines[p][way] = Profile.ofLayers(own.get(p * ways + way));
      }
    }
    Layers layers = new Layers(lines);
    for (int i = 0; i < stack.layers(); i++) {
      layers.above.add(i == 0 ? null : half(stack, i, i - 1, pairs));
      layers.below.add(i == stack.layers() - 1 ? null : half(stack, i, i + 1, pairs));
    }
    return layers;
  }

  private static Half half(Stack stack, int layer, int neighbor, List<LayerPair> pairs) {
    Sort own = Sort.of(stack, layer);
    Sort other = Sort.of(stack, neighbor);
    for (int p = 0; p < pairs.size(); p++) {
      LayerPair pair = pairs.get(p);
      if (pair.isOf(own, other)) {
        return new Half(p, !pair.upper().equals(own), pair.areAlike());
      }
    }
    return null;
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
