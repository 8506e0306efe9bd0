package seamsoak.soak;

import java.util.List;
import java.util.Map;
import seamsoak.state.Etch;
import seamsoak.state.SeamCrossing;
import seamsoak.state.SeamKeys;
import seamsoak.state.SeamPlace;

/**
 * What a piece shows in each state without a soak: as it is, and after the cycles.
 *
 * @param clearing the piece
 * @param hold at a heat at which the cycles count
 * @param cycled seconds there that they are worth
 * @param etches by state
 */
record States(Clearing clearing, Clearing.Hold hold, double cycled, List<Etch> etches) {
  /** By state, contrast of the brightest line or crossing. */
  double[] brightest() {
    return new double[] {
      clearing.brightest(etches.get(0)),
      hold.brightest(etches.get(1), cycled),
      hold.brightest(etches.get(2), cycled)
    };
  }

  /** By line and state. */
  Map<String, double[]> contrasts(SeamKeys keys) {
    return keys.told(clearing.crossings(), this::of, this::of);
  }

  double[] of(SeamPlace p) {
    return new double[] {
      p.contrast(etches.get(0)),
      hold.contrast(p, etches.get(1), cycled),
      hold.contrast(p, etches.get(2), cycled)
    };
  }

  double[] of(SeamCrossing c) {
    return new double[] {
      c.contrast(etches.get(0)),
      hold.contrast(c, etches.get(1), cycled),
      hold.contrast(c, etches.get(2), cycled)
    };
  }
}
