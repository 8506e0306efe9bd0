package seamsoak.advice;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import seamsoak.billet.Assumptions;

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

  private static final int[] PRIMES = {2, 3, 5, 7, 11, 13, 17, 19};
  private static final int SKIPPED = 20;
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
    double[] u = new double[PRIMES.length];
    for (int d = 0; d < u.length; d++) {
      u[d] = radicalInverse(index + SKIPPED, PRIMES[d]);
    }
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

  /** Halton's sequence: the digits of an index mirrored at the point. */
  private static double radicalInverse(int index, int base) {
    double value = 0;
    double place = 1.0 / base;
    for (int i = index; i > 0; i /= base) {
      value += place * (i % base);
      place /= base;
    }
    return value;
  }
}
