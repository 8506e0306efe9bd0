package seamsoak.soak;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import seamsoak.state.FadeWatch;

/**
 * How the contrast of what shows most falls while a piece is held at a heat.
 *
 * @param now contrast before
 * @param seconds by level, held until it is no more than that; infinite where it never is
 */
record Fade(double now, double[] seconds) {
  private static final int TO_EACH_SIDE = 7;
  private static final double LN_STEP = 0.2;

  /** Contrasts that it is followed to, falling in equal ratios from above 1 to below it. */
  static final double[] LEVELS = levels();

  /** The least of them: what is fainter counts for nothing. */
  static final double FAINTEST = LEVELS[LEVELS.length - 1];

  /** Nothing that shows. */
  static final Fade NOTHING = new Fade(0, new double[LEVELS.length]);

  private static double[] levels() {
    double[] all = new double[2 * TO_EACH_SIDE + 1];
    Arrays.setAll(all, k -> Math.exp(LN_STEP * (TO_EACH_SIDE - k)));
    return all;
  }

  /** Of contrasts seen at moments from 0 on. */
  static Fade of(List<Double> seconds, double[] contrast) {
    double[] passed = new double[LEVELS.length];
    for (int k = 0; k < passed.length; k++) {
      passed[k] = passed(LEVELS[k], seconds, contrast);
    }
    return new Fade(contrast[0], passed);
  }

  private static double passed(double level, List<Double> seconds, double[] contrast) {
    if (contrast[0] <= level) {
      return 0;
    }
    FadeWatch watch = new FadeWatch(level, contrast[0], 0);
    for (int i = 1; i < contrast.length; i++) {
      OptionalDouble gone = watch.sees(seconds.get(i), contrast[i]);
      if (gone.isPresent()) {
        return gone.getAsDouble();
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** Of both together: what shows more counts. */
  Fade with(Fade other) {
    double[] later = new double[seconds.length];
    Arrays.setAll(later, k -> Math.max(seconds[k], other.seconds[k]));
    return new Fade(Math.max(now, other.now), later);
  }

  /**
   * How many times as long it takes as another, on the mean over what just shows and less; 1 where
   * nothing tells.
   */
  double longerThan(Fade other) {
    double sum = 0;
    int n = 0;
    for (int k = TO_EACH_SIDE; k < seconds.length; k++) {
      double ratio = seconds[k] / other.seconds[k];
      if (ratio > 0 && Double.isFinite(ratio)) {
        sum += Math.log(ratio);
        n++;
      }
    }
    return n == 0 ? 1 : Math.exp(sum / n);
  }

  /** Where a contrast lies among the levels. */
  static double level(double contrast) {
    return TO_EACH_SIDE - Math.log(contrast) / LN_STEP;
  }

  /** Seconds until it is no more than 1. */
  double secondsToClear() {
    return seconds[TO_EACH_SIDE];
  }

  /** Contrast after so many seconds; below the faintest level nothing is known but that. */
  double after(double held) {
    double beforeSeconds = 0;
    double before = now;
    for (int k = 0; k < LEVELS.length; k++) {
      if (LEVELS[k] >= now) {
        continue;
      }
      if (held < seconds[k]) {
        double part = (held - beforeSeconds) / (seconds[k] - beforeSeconds);
        return Double.isInfinite(seconds[k])
            ? before
            : before * Math.pow(LEVELS[k] / before, Math.max(0, part));
      }
      beforeSeconds = seconds[k];
      before = LEVELS[k];
    }
    return before;
  }
}
