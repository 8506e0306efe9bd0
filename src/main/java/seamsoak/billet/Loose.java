package seamsoak.billet;

import java.util.List;
import seamsoak.carbon.Strip;

/** What lies around or in a billet, not welded to it yet, and is on none of its lines. */
public sealed interface Loose {
  /** Nothing. */
  record Nothing() implements Loose {}

  /** A jacket round the body: from its outer face inward. */
  record Jacket(Strip sheet) implements Loose {}

  /**
   * The layers of a stack, whose lines across the layers run through their mean.
   *
   * @param halves of each sort of layer, from its face to its middle
   * @param counts how many layers there are of each
   * @param startRatio carbon per metal atom of all of them before the fire
   * @param startMetres their thickness before the fire
   */
  record Layers(List<Strip> halves, List<Integer> counts, double startRatio, double startMetres)
      implements Loose {
    public Layers {
      halves = List.copyOf(halves);
      counts = List.copyOf(counts);
    }

    static Layers of(List<Strip> halves, List<Integer> counts) {
      Layers fresh = new Layers(halves, counts, 1, 1);
      return new Layers(halves, counts, fresh.ratio(), fresh.metres());
    }

    Layers withHalves(List<Strip> next) {
      return new Layers(next, counts, startRatio, startMetres);
    }

    private double metres() {
      double sum = 0;
      for (int i = 0; i < halves.size(); i++) {
        sum += 2 * counts.get(i) * halves.get(i).metres();
      }
      return sum;
    }

    private double ratio() {
      double sum = 0;
      for (int i = 0; i < halves.size(); i++) {
        sum += 2 * counts.get(i) * halves.get(i).carbon();
      }
      return sum / metres();
    }

    /** What the layers have left of the carbon that they began with, as a share. */
    double carbonLeft() {
      return startRatio > 0 ? ratio() / startRatio : 1;
    }

    /** What they have left of their thickness. */
    double metresLeft() {
      return metres() / startMetres;
    }
  }
}
