package seamsoak.state;

import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.billet.Shop;
import seamsoak.carbon.Edge;
import seamsoak.carbon.EvenCarbon;
import seamsoak.carbon.Strip;
import seamsoak.heat.HeatCurve;

/** How long a seam between two layers takes to even out. */
public record Evening(Shop shop) {
  private static final double EVEN_SHARE = 0.1;
  private static final double ALREADY_EVEN = 1e-6;

  /** Longest hold followed, at least a million hours. */
  private static final double LONGEST_SECONDS = 1e6 * 3600.0;

  /** Mean carbon per metal atom of the layer before the seam. */
  static double meanOfFirst(Strip s) {
    return mean(s, 0, s.seam());
  }

  public static double mean(Strip s, int from, int to) {
    double carbon = 0;
    double metres = 0;
    for (int i = from; i < to; i++) {
      carbon += s.metres(i) * s.ratio(i);
      metres += s.metres(i);
    }
    return carbon / metres;
  }

  /**
   * Minutes at a heat until the mean carbon of the layers is within a tenth of its starting
   * distance from even; 0 when it has come so far already, empty when there never was a distance or
   * when it takes longer than anybody waits.
   *
   * @param start the stack as it came
   * @param now the stack as it is
   * @param even what it would be, evened out
   * @param kelvin of the hold
   */
  public Optional<Double> minutes(Strip start, Strip now, EvenCarbon even, double kelvin) {
    double goal = even.ratio(0);
    double distance = Math.abs(meanOfFirst(start) - goal);
    if (distance < ALREADY_EVEN) {
      return Optional.empty();
    }
    double limit = EVEN_SHARE * distance;
    double already = Math.abs(meanOfFirst(now) - goal);
    if (already <= limit) {
      return Optional.of(0.0);
    }
    FadeWatch watch = new FadeWatch(limit, already, 0);
    OptionalDouble[] found = {OptionalDouble.empty()};
    shop.solver()
        .advance(
            now,
            HeatCurve.hold(kelvin, LONGEST_SECONDS),
            Edge.SEALED,
            (t, s) -> {
              found[0] = watch.sees(t, Math.abs(meanOfFirst(s) - goal));
              return found[0].isEmpty();
            });
    return found[0].isPresent() ? Optional.of(found[0].getAsDouble() / 60) : Optional.empty();
  }
}
