package seamsoak.soak;

import java.util.List;
import java.util.Optional;

/** Chances that nothing shows in the blade after so many minutes at one heat. */
final class Chances {
  private static final int STEPS = 40;

  private final List<Faded.AtHeat> held;
  private final double[][] unseen;
  private final double[] likelihood;
  private final double weight;
  private final double without;

  Chances(SoakSamples samples, List<Faded.AtHeat> held) {
    this.held = held;
    this.weight = samples.weight();
    this.without = samples.goneBySchedulePct().orElse(0.0) / 100;
    this.likelihood = samples.all().stream().mapToDouble(o -> o.belief().likelihood()).toArray();
    this.unseen = samples.all().stream().map(Outcome::unseen).toArray(double[][]::new);
  }

  double after(double minutes) {
    double sum = 0;
    for (int i = 0; i < unseen.length; i++) {
      double contrast = held.get(i).contrast(minutes);
      sum += contrast <= 0 ? likelihood[i] : unseen(unseen[i], contrast);
    }
    return sum / weight;
  }

  /** Between levels of contrast, straight over its logarithm. */
  private static double unseen(double[] table, double contrast) {
    double x = Fade.level(contrast);
    int k = (int) Math.max(0, Math.min(table.length - 2, x));
    double part = Math.max(0, Math.min(1, x - k));
    return (1 - part) * table[k] + part * table[k + 1];
  }

  Optional<Double> minutes(double share) {
    if (unseen.length == 0) {
      return Optional.empty();
    }
    if (without >= share) {
      return Optional.of(0.0);
    }
    double most = Clearing.LONGEST_SECONDS / 60;
    if (after(most) < share) {
      return Optional.empty();
    }
    double low = 0;
    double high = most;
    if (after(0) >= share) {
      return Optional.of(0.0);
    }
    for (int i = 0; i < STEPS && high - low > 1e-3; i++) {
      double middle = low < 1 ? 0.5 * (low + high) : Math.sqrt(low * high);
      if (after(middle) >= share) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return Optional.of(high);
  }
}
