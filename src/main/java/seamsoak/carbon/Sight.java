package seamsoak.carbon;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * What an eye takes in at a seam, wt% of the seam's steel at equal activity: the carbon of the
 * point that it looks at, and that of the broad surroundings that it compares it with. Both are
 * kept by how much there is of which carbon, so that whatever an etch makes of carbon can be
 * averaged over them.
 */
public final class Sight {
  /** Into so many parts its carbon is told apart. */
  private static final int BINS = 8;

  private final double[] fine;
  private final double[] fineShare;
  private final double[] broad;
  private final double[] broadShare;

  private Sight(double[] fine, double[] fineShare, double[] broad, double[] broadShare) {
    this.fine = fine;
    this.fineShare = fineShare;
    this.broad = broad;
    this.broadShare = broadShare;
  }

  /**
   * Of cells.
   *
   * @param percent carbon of each
   * @param fine weight of each in the point, 1 together
   * @param broad the same in the surroundings
   */
  static Sight of(double[] percent, double[] fine, double[] broad) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (double c : percent) {
      least = c < least ? c : least;
      most = c > most ? c : most;
    }
    double perBin = most > least ? BINS / (most - least) : 0;
    double[][] point = binned(percent, fine, least, perBin);
    double[][] around = binned(percent, broad, least, perBin);
    return new Sight(point[0], point[1], around[0], around[1]);
  }

  /** Of metal with nothing but that much carbon. */
  static Sight even(double percent) {
    double[] all = {percent};
    double[] whole = {1};
    return new Sight(all, whole, all, whole);
  }

  /** Mean carbon and share of each part that there is anything in. */
  private static double[][] binned(
      double[] percent, double[] weights, double least, double perBin) {
    double[] carbon = new double[BINS];
    double[] share = new double[BINS];
    for (int i = 0; i < percent.length; i++) {
      int bin = Math.min(BINS - 1, (int) ((percent[i] - least) * perBin));
      carbon[bin] += weights[i] * percent[i];
      share[bin] += weights[i];
    }
    int n = 0;
    for (int bin = 0; bin < BINS; bin++) {
      if (share[bin] > 0) {
        carbon[n] = carbon[bin] / share[bin];
        share[n++] = share[bin];
      }
    }
    return new double[][] {Arrays.copyOf(carbon, n), Arrays.copyOf(share, n)};
  }

  /** Carbon that seems to be missing, wt%. */
  public double missingPct() {
    return -contrast(percent -> percent);
  }

  /** K: how much whiter the point is than its surroundings, never less than nothing. */
  public double over(DoubleUnaryOperator whiteness) {
    return Math.max(0, contrast(whiteness));
  }

  private double contrast(DoubleUnaryOperator whiteness) {
    return mean(fine, fineShare, whiteness) - mean(broad, broadShare, whiteness);
  }

  private static double mean(double[] carbon, double[] share, DoubleUnaryOperator of) {
    double sum = 0;
    for (int i = 0; i < carbon.length; i++) {
      sum += share[i] * of.applyAsDouble(carbon[i]);
    }
    return sum;
  }

  /**
   * K where this seam crosses one of another direction: carbon there is the product of both over
   * the core's.
   *
   * @param otherCorePct carbon far from both, in the other seam's steel
   */
  public double crossing(Sight other, double otherCorePct, DoubleUnaryOperator whiteness) {
    if (!(otherCorePct > 0)) {
      return 0;
    }
    return Math.max(
        0,
        mean(
                fine,
                fineShare,
                c ->
                    mean(
                        other.fine,
                        other.fineShare,
                        o -> whiteness.applyAsDouble(c * o / otherCorePct)))
            - mean(
                broad,
                broadShare,
                c ->
                    mean(
                        other.broad,
                        other.broadShare,
                        o -> whiteness.applyAsDouble(c * o / otherCorePct))));
  }
}
