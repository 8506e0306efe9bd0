package seamsoak.soak;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import seamsoak.billet.Seen.Etched;

/** What an etch still to come would show of a billet, and say of its blade. */
record LooksToCome(SoakSamples samples) {
  /** Surer than that of a clean blade, or of none, nobody need look, percent. */
  private static final double UNSURE_PCT = 10;

  /** Of a hundred billets in how many an etch has to show a line to be worth its while. */
  private static final double LEAST_SHOWN_PCT = 5;

  /**
   * The state in which an etch, without a soak, would part the billets that come out clean best
   * from those that do not; empty where that is as good as known.
   */
  Optional<Etched> most() {
    double clean = samples.goneBySchedulePct().orElse(0.0);
    if (clean < UNSURE_PCT || clean > 100 - UNSURE_PCT) {
      return Optional.empty();
    }
    return stillToCome()
        .filter(s -> s != Etched.HARDENED)
        .max(Comparator.comparingDouble(this::parts));
  }

  /** How far apart a line seen and none leave the chance of a clean blade, squared, weighed. */
  private double parts(Etched state) {
    double[] told = together(state);
    double share = told[0] / told[3];
    double ifNothing = told[0] > 0 ? told[1] / told[0] : 0;
    double ifSomething = told[0] < told[3] ? (told[2] - told[1]) / (told[3] - told[0]) : 0;
    return share * (1 - share) * (ifNothing - ifSomething) * (ifNothing - ifSomething);
  }

  /** Weights of: nothing seen in a state, neither there nor in the blade, none in it, all. */
  private double[] together(Etched state) {
    int at = state.ordinal();
    double[] sum = new double[4];
    for (Outcome o : samples.all()) {
      double[] eye = o.belief().byEye();
      double[] there = o.belief().unseenByEye(at, o.brightest()[at], samples.eyes());
      double[] blade =
          o.belief()
              .unseenByEye(SoakSamples.BLADE, o.brightest()[SoakSamples.BLADE], samples.eyes());
      for (int e = 0; e < eye.length; e++) {
        sum[0] += there[e];
        sum[1] += eye[e] > 0 ? there[e] * blade[e] / eye[e] : 0;
        sum[2] += blade[e];
        sum[3] += eye[e];
      }
    }
    return sum;
  }

  /** States that the piece was not etched in since anything was done to it, nor is past. */
  private Stream<Etched> stillToCome() {
    int last =
        samples.looks().stream()
            .filter(Looking::latest)
            .mapToInt(l -> l.state().ordinal())
            .max()
            .orElse(-1);
    return Arrays.stream(Etched.values()).filter(s -> s.ordinal() > last);
  }

  /** The first of them in which an etch can show a line. */
  Optional<Etched> next() {
    return stillToCome().filter(s -> showsPct(together(s)) >= LEAST_SHOWN_PCT).findFirst();
  }

  private static double showsPct(double[] told) {
    return 100 * (1 - told[0] / told[3]);
  }

  /** What a test etch now would show and say; empty where it was made. */
  Optional<SoakAdvice.TestEtch> testEtch() {
    if (!(samples.weight() > 0) || stillToCome().noneMatch(s -> s == Etched.AS_COOLED)) {
      return Optional.empty();
    }
    double[] told = together(Etched.AS_COOLED);
    return Optional.of(
        new SoakAdvice.TestEtch(
            showsPct(told), share(told[1], told[0]), share(told[2] - told[1], told[3] - told[0])));
  }

  private static Optional<Double> share(double part, double of) {
    return of > 0 ? Optional.of(100 * part / of) : Optional.empty();
  }
}
