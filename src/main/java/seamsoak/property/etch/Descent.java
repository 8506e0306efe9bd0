package seamsoak.property.etch;

import java.util.Arrays;
import seamsoak.heat.HeatCurve;
import seamsoak.unit.Temperature;

/**
 * How long a piece takes to fall through each degree on its way down from austenite.
 *
 * @param fromCelsius the heat it came from
 * @param seconds spent in each degree below {@link #HIGHEST}, falling
 */
public record Descent(double fromCelsius, double[] seconds) {
  /** Above it no ferrite forms of any carbon that counts, C. */
  static final int HIGHEST = 900;

  /** Below it neither ferrite nor pearlite forms any more, C. */
  static final int LOWEST = 480;

  /** A steady fall. */
  public static Descent steady(double fromCelsius, double kelvinPerSecond) {
    double[] seconds = new double[HIGHEST - LOWEST];
    for (int i = 0; i < seconds.length && kelvinPerSecond > 0; i++) {
      seconds[i] = overlap(fromCelsius, LOWEST, i) / kelvinPerSecond;
    }
    return new Descent(fromCelsius, seconds);
  }

  /** The last fall of a curve, from where it was hottest for the last time. */
  public static Descent of(HeatCurve curve) {
    double peak = curve.peakKelvin() - Temperature.ZERO_CELSIUS;
    int last = 0;
    for (int i = 0; i < curve.segments().size(); i++) {
      if (curve.segments().get(i).toKelvin() > curve.segments().get(i).fromKelvin()) {
        last = i + 1;
      }
    }
    double[] seconds = new double[HIGHEST - LOWEST];
    for (HeatCurve.Segment s : curve.segments().subList(last, curve.segments().size())) {
      add(seconds, s);
    }
    return new Descent(peak, seconds);
  }

  /** Seconds from one temperature down to another, C. */
  public double seconds(int from, int to) {
    return Arrays.stream(seconds, HIGHEST - from, HIGHEST - to).sum();
  }

  private static void add(double[] seconds, HeatCurve.Segment s) {
    double from = s.fromKelvin() - Temperature.ZERO_CELSIUS;
    double to = s.toKelvin() - Temperature.ZERO_CELSIUS;
    if (from == to) {
      int at = (int) Math.floor(HIGHEST - from);
      if (at >= 0 && at < seconds.length) {
        seconds[at] += s.seconds();
      }
      return;
    }
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] += overlap(from, to, i) / (from - to) * s.seconds();
    }
  }

  /** How much of a degree a fall passes through. */
  private static double overlap(double from, double to, int degree) {
    double top = HIGHEST - degree;
    return Math.max(0, Math.min(from, top) - Math.max(to, top - 1));
  }

  /** The middle of a degree, C. */
  static double middle(int degree) {
    return HIGHEST - degree - 0.5;
  }
}
