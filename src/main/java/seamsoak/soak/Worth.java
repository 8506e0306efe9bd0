package seamsoak.soak;

import java.util.List;
import seamsoak.billet.Shop;
import seamsoak.billet.Workpiece;
import seamsoak.heat.HeatCurve;
import seamsoak.property.etch.Etching;
import seamsoak.property.phase.PhaseLines;
import seamsoak.unit.Temperature;

/**
 * What heats are worth against a hold: seconds at its temperature that move as much carbon through
 * austenite.
 *
 * @param laws how fast carbon moves there
 * @param carbonPct of the body
 * @param a1Celsius below which there is no austenite
 * @param cycles what the cycles to come move, m2
 */
public record Worth(Etching laws, double carbonPct, double a1Celsius, double cycles) {
  /**
   * With more there is carbide at the heats of cycles, and this is what the austenite holds, wt%.
   */
  private static final double MOST_PCT = 0.8;

  private static final double STEP_KELVIN = 10;

  /** Of a piece and the cycles to come. */
  public static Worth of(Workpiece piece, Shop shop, List<HeatCurve> cycles) {
    Worth none =
        new Worth(
            shop.correlations().etching(),
            Math.min(MOST_PCT, piece.body().percent(piece.coreRatio())),
            piece.body().law().phases().map(PhaseLines::a1Celsius).orElse(0.0),
            0);
    double moved = cycles.stream().mapToDouble(none::moved).sum();
    return new Worth(none.laws, none.carbonPct, none.a1Celsius, moved);
  }

  /** D t of a curve as far as it is austenite, m2. */
  private double moved(HeatCurve curve) {
    double sum = 0;
    for (HeatCurve.Segment s : curve.segments()) {
      double apart = Math.abs(s.toKelvin() - s.fromKelvin());
      int parts = (int) Math.max(1, Math.ceil(apart / STEP_KELVIN));
      for (int i = 0; i < parts; i++) {
        double kelvin = s.fromKelvin() + (i + 0.5) / parts * (s.toKelvin() - s.fromKelvin());
        sum += s.seconds() / parts * diffusivity(kelvin);
      }
    }
    return sum;
  }

  private double diffusivity(double kelvin) {
    double celsius = kelvin - Temperature.ZERO_CELSIUS;
    return celsius < a1Celsius ? 0 : laws.diffusivity(carbonPct, celsius);
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
    double here = diffusivity(kelvin);
    return here > 0 ? moved / here : 0;
  }
}
