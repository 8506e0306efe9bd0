package seamsoak.soak;

import java.util.Arrays;
import seamsoak.unit.Temperature;

/**
 * How what shows most fades at each of a few temperatures, and what rise and cycles are worth
 * there.
 *
 * @param celsius the temperatures, rising
 * @param fades by temperature
 * @param rise by temperature, seconds there that the rise is worth
 * @param cycles by temperature, seconds there that the cycles to come are worth
 * @param timeFactor on the minutes of a soak
 */
record Faded(double[] celsius, Fade[] fades, double[] rise, double[] cycles, double timeFactor) {
  /** Cycles are as hot as this or cooler: carbon moves here much as it does there. */
  static final double CYCLES_CELSIUS = 900;

  /**
   * Of one history.
   *
   * @param holds at the temperatures
   */
  static Faded of(Clearing clearing, Clearing.Hold[] holds, double[] celsius, Worth worth) {
    Fade[] fades = new Fade[celsius.length];
    double[] rise = new double[celsius.length];
    double[] cycled = new double[celsius.length];
    for (int k = 0; k < celsius.length; k++) {
      double kelvin = clearing.kelvin(celsius[k]);
      fades[k] = holds[k].all();
      rise[k] = worth.riseTo(kelvin);
      cycled[k] = worth.cyclesAt(kelvin);
    }
    return new Faded(celsius, fades, rise, cycled, clearing.shop().assumptions().timeFactor());
  }

  /** The coolest of the temperatures that is no cooler than cycles are. */
  static int coolest(double[] celsius) {
    int k = 0;
    while (k < celsius.length - 1 && celsius[k] < CYCLES_CELSIUS) {
      k++;
    }
    return k;
  }

  /** With its seconds so many times as long, by temperature. */
  Faded scaled(double[] factors) {
    Fade[] scaled = new Fade[fades.length];
    for (int k = 0; k < scaled.length; k++) {
      double factor = factors[k];
      scaled[k] =
          new Fade(
              fades[k].now(), Arrays.stream(fades[k].seconds()).map(s -> s * factor).toArray());
    }
    return new Faded(celsius, scaled, rise, cycles, timeFactor);
  }

  /** Between the temperatures seconds go straight in their logarithms over 1/T. */
  AtHeat at(double atCelsius) {
    int low = 0;
    while (low < celsius.length - 2 && celsius[low + 1] < atCelsius) {
      low++;
    }
    int high = Math.min(low + 1, celsius.length - 1);
    double a = 1 / (celsius[low] + Temperature.ZERO_CELSIUS);
    double b = 1 / (celsius[high] + Temperature.ZERO_CELSIUS);
    double part = low == high ? 0 : (1 / (atCelsius + Temperature.ZERO_CELSIUS) - a) / (b - a);
    double[] seconds = new double[Fade.LEVELS.length];
    for (int k = 0; k < seconds.length; k++) {
      seconds[k] = between(fades[low].seconds()[k], fades[high].seconds()[k], part);
    }
    return new AtHeat(
        new Fade(fades[low].now(), seconds),
        between(rise[low], rise[high], part),
        between(cycles[low], cycles[high], part),
        timeFactor);
  }

  private static double between(double low, double high, double part) {
    if (part <= 0 || part >= 1 || low == high) {
      return part >= 1 ? high : low;
    }
    if (low <= 0 || high <= 0) {
      return low + part * (high - low);
    }
    return Double.isInfinite(low) ? low : low * Math.pow(high / low, part);
  }

  /** Held at one heat. */
  record AtHeat(Fade fade, double rise, double cycles, double timeFactor) {
    /** Contrast of the brightest line in the blade after a hold. */
    double contrast(double minutes) {
      return fade.after(cycles + rise + 60 * minutes * timeFactor);
    }

    /** Seconds to hold until it is no more than 1. */
    double secondsToClear() {
      return toHold(fade);
    }

    /** The same of one that fades so. */
    double toHold(Fade one) {
      return Math.max(0, one.secondsToClear() - rise - cycles) / timeFactor;
    }
  }
}
