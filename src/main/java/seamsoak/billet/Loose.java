package seamsoak.billet;

import java.util.List;
import java.util.Optional;
import seamsoak.carbon.CarbonLaw;
import seamsoak.carbon.EvenCarbon;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;

/** What lies around or in a billet, not welded to it yet, and is on none of its lines. */
public sealed interface Loose {
  /** Nothing. */
  record Nothing() implements Loose {}

  /** A jacket round the body: from its outer face inward. */
  record Jacket(Strip sheet) implements Loose {}

  /**
   * The layers of a stack, as far as lines run through their mean.
   *
   * @param halves of each sort of layer, from its face to its middle
   * @param weights how often each lies in the stack
   * @param rest the mean of those too deep to be followed one by one, down to the middle
   * @param startMetres thickness of all of them before the fire
   */
  record Layers(List<Strip> halves, List<Double> weights, Optional<Strip> rest, double startMetres)
      implements Loose {
    public Layers {
      halves = List.copyOf(halves);
      weights = List.copyOf(weights);
    }

    static Layers of(List<Strip> halves, List<Double> weights, Optional<Strip> rest) {
      return new Layers(halves, weights, rest, new Layers(halves, weights, rest, 1).metres());
    }

    Layers withHalves(List<Strip> next) {
      return new Layers(next, weights, rest, startMetres);
    }

    private double metres() {
      return all().metres();
    }

    /** Half of each layer, one after another. */
    private Strip all() {
      Strip all = halves.get(0).scaled(weights.get(0));
      for (int i = 1; i < halves.size(); i++) {
        all = all.followedBy(halves.get(i).scaled(weights.get(i)));
      }
      return all;
    }

    /**
     * What the layers' mean has left of the carbon that it began with, as a share: it gets the
     * activity that the layers come to among themselves.
     */
    double carbonLeft(Metal mean) {
      Strip all = all();
      double kelvin = CarbonLaw.COMPARED_AT_KELVIN;
      double even = new EvenCarbon(all, kelvin).ratio(0);
      return mean.startRatio() > 0
          ? mean.law().at(kelvin).ratioBeside(all.metal(0).law().at(kelvin), even)
              / mean.startRatio()
          : 1;
    }

    /** The rest, having lost what the layers have. */
    Optional<Strip> restNow(Metal mean) {
      return rest.map(r -> r.scaled(metres() / startMetres).enriched(carbonLeft(mean)));
    }
  }
}
