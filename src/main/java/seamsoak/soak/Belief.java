package seamsoak.soak;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import seamsoak.billet.Seen.Look;
import seamsoak.property.etch.Looks;

/**
 * What the looks make of one history: how likely it would have shown what was seen, eye by eye.
 *
 * @param byState by state, and in it by eye and node of the state; each adds up to the likelihood
 *     of all that was seen where lines are missing carbon
 * @param notCarbon the likelihood where one is not
 */
record Belief(double[][] byState, double notCarbon) {
  private static final Nodes CONTRASTS = Nodes.of(5, 1);

  /**
   * What a history has to show where the smith looked.
   *
   * @param state it was etched in
   * @param look what was seen
   * @param contrast K there
   * @param lnWidth logarithm of the width told over that of the line, if told
   */
  record Told(int state, Look look, double contrast, OptionalDouble lnWidth) {}

  static Belief of(List<Told> told, Eyes eyes) {
    double[][] byState = new double[Eyes.STATES][];
    Arrays.setAll(byState, s -> new double[Eyes.EYE.count() * Eyes.state(s).count()]);
    add(byState, told, eyes, 0);
    double other = 0;
    for (int i = 0; i < CONTRASTS.count(); i++) {
      double[][] each = new double[Eyes.STATES][];
      Arrays.setAll(each, s -> new double[byState[s].length]);
      add(each, told, eyes, eyes.looks().notCarbonContrast(CONTRASTS.sigmas()[i]));
      other += CONTRASTS.weights()[i] * Arrays.stream(each[0]).sum();
    }
    return new Belief(byState, other);
  }

  private static void add(double[][] to, List<Told> told, Eyes eyes, double least) {
    double[] plain = eyes.looks().plain();
    double[][] each = new double[Eyes.STATES][];
    double[] whole = new double[Eyes.STATES];
    for (double ratio : plain) {
      for (int e = 0; e < Eyes.EYE.count(); e++) {
        for (int s = 0; s < Eyes.STATES; s++) {
          each[s] = state(told, eyes, least, ratio, s, e);
          whole[s] = Arrays.stream(each[s]).sum();
        }
        for (int s = 0; s < Eyes.STATES; s++) {
          double others = Eyes.EYE.weights()[e] / plain.length;
          for (int o = 0; o < Eyes.STATES; o++) {
            others *= o == s ? 1 : whole[o];
          }
          for (int n = 0; n < each[s].length; n++) {
            to[s][e * each[s].length + n] += others * each[s][n];
          }
        }
      }
    }
  }

  /** By node of one state, how likely all looks at it are. */
  private static double[] state(
      List<Told> told, Eyes eyes, double least, double ratio, int state, int eye) {
    double[] all = Eyes.state(state).weights().clone();
    for (Told t : told) {
      if (t.state() == state) {
        for (int n = 0; n < all.length; n++) {
          all[n] *=
              likelihood(
                  t,
                  eyes.looks(),
                  Math.max(least, t.contrast()) / eyes.threshold(state, eye, n),
                  ratio);
        }
      }
    }
    return all;
  }

  private static double likelihood(Told told, Looks looks, double over, double ratio) {
    double seen = looks.seen(over);
    double plain = looks.seen(over / ratio);
    double look =
        switch (told.look()) {
          case NONE -> 1 - seen;
          case FAINT -> seen - plain;
          case PLAIN -> plain;
        };
    // a width says how wide a line of carbon is, and nothing of whether it is one
    return looks.told(look)
        * (told.lnWidth().isPresent() ? looks.widthFits(told.lnWidth().getAsDouble()) : 1);
  }

  /** How likely all that was seen is. */
  double likelihood() {
    return Arrays.stream(byState[0]).sum();
  }

  /** The same with no line seen besides, of that contrast, in a state. */
  double unseen(int state, double contrast, Eyes eyes) {
    double[] weights = byState[state];
    int nodes = Eyes.state(state).count();
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum +=
          weights[i]
              * (1 - eyes.looks().seen(contrast / eyes.threshold(state, i / nodes, i % nodes)));
    }
    return sum;
  }

  /** The same eye by eye. */
  double[] unseenByEye(int state, double contrast, Eyes eyes) {
    double[] weights = byState[state];
    int nodes = Eyes.state(state).count();
    double[] all = new double[Eyes.EYE.count()];
    for (int i = 0; i < weights.length; i++) {
      all[i / nodes] +=
          weights[i]
              * (1 - eyes.looks().seen(contrast / eyes.threshold(state, i / nodes, i % nodes)));
    }
    return all;
  }

  /** How likely, eye by eye. */
  double[] byEye() {
    int nodes = Eyes.state(0).count();
    double[] all = new double[Eyes.EYE.count()];
    for (int i = 0; i < byState[0].length; i++) {
      all[i / nodes] += byState[0][i];
    }
    return all;
  }
}
