package seamsoak.soak;

import seamsoak.billet.Seen.Etched;
import seamsoak.property.etch.Looks;

/**
 * The eyes that may look at a billet, and what else makes a line easier or harder to see: what can
 * be averaged over is not sampled.
 *
 * @param looks whether a line is seen
 */
record Eyes(Looks looks) {
  /** From eye to eye; the same for all looks. */
  static final Nodes EYE = Nodes.of(7, 0.8);

  /** From one state of the billet to another; the same for all looks at one state. */
  private static final Nodes COOLED = Nodes.of(7, 0.8);

  private static final Nodes HARDENED = Nodes.of(5, 1);

  static final int STATES = Etched.values().length;

  static Nodes state(int state) {
    return state == Etched.HARDENED.ordinal() ? HARDENED : COOLED;
  }

  /** The contrast from which an eye sees a line in a state. */
  double threshold(int state, int eye, int node) {
    double sigma = state == Etched.HARDENED.ordinal() ? looks.hardenedSigma() : looks.cooledSigma();
    return Math.exp(looks.eyeSigma() * EYE.sigmas()[eye] + sigma * state(state).sigmas()[node]);
  }
}
