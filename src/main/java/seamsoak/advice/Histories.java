package seamsoak.advice;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import seamsoak.billet.Assumptions;
import seamsoak.numeric.Roots;

/**
 * What the history of a billet might have been: seeded low-discrepancy samples of everything that
 * is not known well, the same on every machine.
 *
 * <p>One sigma each: mobility 15 %, temperature 15 C, times in the fire 25 %, grinding 0.05 mm.
 * Evenly spread: covered share 0.3 to 1, visible dip 0.6 to 1.4 of the usual, body carbon over the
 * grade's range, scaling constant from steel to iron. All judgement.
 */
final class Histories {
  /** The inputs, in the order of {@link Sample#place}. */
  static final List<String> INPUTS =
      List.of(
          "speed of carbon",
          "temperature of the fire",
          "times in the fire",
          "ground depths",
          "cover of the faces",
          "dip that shows",
          "carbon of the steels",
          "scaling");

  /** The root of x^9 = x + 1; its powers are the steps of the sequence in eight dimensions. */
  private static final double GOLDEN =
      Roots.between(x -> Math.pow(x, INPUTS.size() + 1) - x - 1, 1, 2, 1e-15);

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private Histories() {}

  /**
   * One possible history.
   *
   * @param place where each input lies in its distribution, 0 to 1
   * @param assumptions what that means
   */
  record Sample(double[] place, Assumptions assumptions) {}

  /** Samples around the usual assumptions. */
  static List<Sample> around(Assumptions usual, boolean coveredStated, int count) {
    return IntStream.range(0, count).mapToObj(i -> sample(usual, coveredStated, i)).toList();
  }

  private static Sample sample(Assumptions usual, boolean coveredStated, int index) {
    // Kronecker's sequence: every input advances by its own irrational step
    double[] u = new double[INPUTS.size()];
    for (int d = 0; d < u.length; d++) {
      double x = 0.5 + (index + 1) * Math.pow(GOLDEN, -(d + 1));
      u[d] = x - Math.floor(x);
    }
    return at(u, usual, coveredStated);
  }

  /** The history at a place in all the distributions, each 0 to 1. */
  static Sample at(double[] u, Assumptions usual, boolean coveredStated) {
    return new Sample(
        u,
        new Assumptions(
            usual.mobilityFactor() * Math.exp(0.15 * normal(u[0])),
            usual.kelvinOff() + 15 * normal(u[1]),
            usual.timeFactor() * Math.exp(0.25 * normal(u[2])),
            usual.grindingMetresOff() + 0.05e-3 * normal(u[3]),
            coveredStated ? usual.coveredShare() : 0.3 + 0.7 * u[4],
            usual.visibleDipPct() * (0.6 + 0.8 * u[5]),
            usual.visibleMetres(),
            2 * u[6] - 1,
            u[7],
            usual.carbonMonoxideAtm()));
  }

  private static double normal(double u) {
    return NORMAL.inverseCumulativeProbability(u);
  }
}
