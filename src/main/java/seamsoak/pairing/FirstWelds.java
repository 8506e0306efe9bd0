package seamsoak.pairing;

import java.util.List;
import java.util.stream.Stream;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Defaults;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.carbon.Edge;
import seamsoak.carbon.EvenCarbon;
import seamsoak.carbon.Grid;
import seamsoak.carbon.Strip;
import seamsoak.heat.HeatCurve;
import seamsoak.property.Correlations;
import seamsoak.state.Evening;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.Temperature;

/** Carbon between the layers of two steels after the first weld heats, and how long it goes on. */
record FirstWelds(Correlations k) {
  static final double SOAK_CELSIUS = 1100;
  private static final double USUAL_NORMALIZING_CELSIUS = 870;
  static final int WELD_HEATS = 3;
  static final double WELD_MINUTES = 5;
  private static final Grid GRID = new Grid(2e-3, 1.1, false);

  PairAdvice.Evened of(PairSteel a, PairSteel b, PairSetting s, double welding) {
    Shop shop = new Shop(k, Assumptions.USUAL, Resolution.FINE);
    Strip start =
        Strip.of(a.metal(), s.firstMetres() / 2, GRID)
            .weldedTo(Strip.of(b.metal(), s.secondMetres() / 2, GRID));
    HeatCurve heat =
        HeatCurve.riseAndHold(
            Math.min(Shop.DULL_KELVIN, welding + Temperature.ZERO_CELSIUS),
            welding + Temperature.ZERO_CELSIUS,
            Defaults.RISE.seconds(),
            60 * WELD_MINUTES);
    Strip now = start;
    for (int i = 0; i < WELD_HEATS; i++) {
      now = shop.solver().advance(now, heat, Edge.SEALED).strip();
    }
    List<PairAdvice.At> heats =
        List.of(
            at(shop, PairAdvice.Heat.WELDING, start, now, welding),
            at(shop, PairAdvice.Heat.SOAKING, start, now, Math.min(SOAK_CELSIUS, welding)),
            at(shop, PairAdvice.Heat.NORMALIZING, start, now, normalizing(a, b)));
    int seam = now.seam();
    return new PairAdvice.Evened(
        WELD_HEATS,
        WELD_MINUTES,
        a.metal().percent(Evening.mean(now, 0, seam)),
        b.metal().percent(Evening.mean(now, seam, now.cells())),
        heats);
  }

  private static PairAdvice.At at(
      Shop shop, PairAdvice.Heat name, Strip start, Strip now, double celsius) {
    double kelvin = celsius + Temperature.ZERO_CELSIUS;
    EvenCarbon even = new EvenCarbon(start, kelvin);
    return new PairAdvice.At(
        name,
        celsius,
        new Evening(shop).minutes(start, now, even, kelvin),
        even.percent(start.seam() - 1),
        even.percent(start.seam()));
  }

  /** The hotter of the two normalizing heats, so that both become austenite. */
  private static double normalizing(PairSteel a, PairSteel b) {
    return Stream.of(a, b)
        .flatMap(s -> s.steel().heatTreatment().normalize().stream())
        .mapToDouble(TemperatureRange::middleC)
        .max()
        .orElse(USUAL_NORMALIZING_CELSIUS);
  }
}
