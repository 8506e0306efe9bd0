package seamsoak.soak;

import java.util.List;
import java.util.Optional;
import seamsoak.billet.Shop;
import seamsoak.billet.Workpiece;
import seamsoak.heat.HeatCurve;
import seamsoak.heatlog.CarbonRate;
import seamsoak.unit.Temperature;

/**
 * What heats are worth against a hold: seconds at its temperature that move as much carbon through
 * austenite.
 *
 * @param rate how fast carbon moves in the body; empty where that has no phases
 * @param cycles what the cycles to come move, m2
 */
public record Worth(Optional<CarbonRate> rate, double cycles) {
  /** Of a piece and the cycles to come. */
  public static Worth of(Workpiece piece, List<HeatCurve> cycles) {
    Worth none =
        new Worth(
            piece.body().law().phases().map(p -> CarbonRate.of(piece.body(), piece.coreRatio())),
            0);
    return new Worth(none.rate, cycles.stream().mapToDouble(none::moved).sum());
  }

  /** D t of a curve as far as it is austenite, m2. */
  private double moved(HeatCurve curve) {
    return rate.map(
            r ->
                curve.segments().stream()
                    .mapToDouble(
                        s -> s.seconds() * r.mean(celsius(s.fromKelvin()), celsius(s.toKelvin())))
                    .sum())
        .orElse(0.0);
  }

  private static double celsius(double kelvin) {
    return kelvin - Temperature.ZERO_CELSIUS;
  }

  /** Seconds at a heat that the cycles are worth; none where there is no austenite. */
  double cyclesAt(double kelvin) {
    return over(cycles, kelvin);
  }

  /** The same of the rise to it. */
  double riseTo(double kelvin) {
    HeatCurve rise = HeatCurve.riseAndHold(Shop.DULL_KELVIN, kelvin, Clearing.RISE_SECONDS, 0);
    return over(moved(rise), kelvin);
  }

  private double over(double moved, double kelvin) {
    double here = rate.map(r -> r.at(celsius(kelvin))).orElse(0.0);
    return here > 0 ? moved / here : 0;
  }
}
