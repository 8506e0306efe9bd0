package seamsoak.carbon;

/** Sums that keep what rounding would lose (Kahan, Babuska). */
final class Sums {
  private Sums() {}

  static double of(double[] terms) {
    double sum = 0;
    double lost = 0;
    for (double t : terms) {
      double s = sum + t;
      lost += Math.abs(sum) >= Math.abs(t) ? (sum - s) + t : (t - s) + sum;
      sum = s;
    }
    return sum + lost;
  }
}
