package seamsoak.soak;

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
 * Evenly spread: covered share 0.3 to 1, the ferrite of a cooling over its band, body carbon over
 * the grade's range, scaling constant from steel to iron. All judgement.
 */
public final class Histories {
  public static final double TIME_SIGMA = 0.25;
  public static final double GRINDING_SIGMA_METRES = 0.05e-3;
  public static final double MOST_COVERED = 1;
  public static final double LEAST_BROAD_METRES = 1.2e-3;
  public static final double MOST_BROAD_METRES = 4.1e-3;

  private static final int INPUTS = Input.values().length;

  /** The root of x^10 = x + 1; its powers are the steps of the sequence in nine dimensions. */
  private static final double GOLDEN =
      Roots.between(x -> Math.pow(x, INPUTS + 1) - x - 1, 1, 2, 1e-15);

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private Histories() {}

  /**
   * One possible history.
   *
   * @param place where each {@link Input} lies in its distribution, 0 to 1
   * @param assumptions what that means
   */
  record Sample(double[] place, Assumptions assumptions) {}

  /** Samples around the usual assumptions, from one of the sequence on to before another. */
  public static List<Sample> around(Assumptions usual, boolean coveredStated, int from, int to) {
    return IntStream.range(from, to).mapToObj(i -> sample(usual, coveredStated, i)).toList();
  }

  private static Sample sample(Assumptions usual, boolean coveredStated, int index) {
    // Kronecker's sequence: every input advances by its own irrational step
    double[] u = new double[INPUTS];
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
            usual.mobilityFactor()
                * Math.exp(Assumptions.MOBILITY_SIGMA * normal(at(u, Input.MOBILITY))),
            usual.kelvinOff() + Assumptions.KELVIN_SIGMA * normal(at(u, Input.FIRE_TEMPERATURE)),
            usual.timeFactor() * Math.exp(TIME_SIGMA * normal(at(u, Input.FIRE_TIMES))),
            usual.grindingMetresOff() + GRINDING_SIGMA_METRES * normal(at(u, Input.GROUND_DEPTHS)),
            coveredStated
                ? usual.coveredShare()
                : Assumptions.LEAST_COVERED
                    + (MOST_COVERED - Assumptions.LEAST_COVERED) * at(u, Input.COVER),
            LEAST_BROAD_METRES
                * Math.pow(MOST_BROAD_METRES / LEAST_BROAD_METRES, at(u, Input.BREADTH)),
            at(u, Input.FERRITE),
            2 * at(u, Input.STEEL_CARBON) - 1,
            at(u, Input.SCALING),
            usual.carbonMonoxideAtm()));
  }

  private static double at(double[] u, Input input) {
    return u[input.ordinal()];
  }

  private static double normal(double u) {
    return NORMAL.inverseCumulativeProbability(u);
  }
}
