package seamsoak.pairing;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import seamsoak.carbon.CarbonInSteel;
import seamsoak.carbon.CarbonLaw;
import seamsoak.carbon.EvenCarbon;
import seamsoak.carbon.Strip;
import seamsoak.property.Correlations;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.hardening.HardeningWindow;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.Temperature;

/** Where carbon goes: by activity, not by percent. */
record CarbonChecks(Correlations k, Judge judge, CarbonLaw.Isotherm iron) implements PairFamily {
  /** Heat at which activities are compared and carbon is evened out. */
  static final double SOAK_KELVIN = CarbonLaw.COMPARED_AT_KELVIN;

  /** First weld. */
  static final double WELD_SECONDS = FirstWelds.WELD_HEATS * FirstWelds.WELD_MINUTES * 60;

  /** No carbon to speak of gets through any more. */
  private static final double MOST_TIMES = 1000;

  CarbonChecks(Correlations k, Judge judge) {
    this(k, judge, new CarbonInSteel(k, Composition.of(Map.of()), 1).at(SOAK_KELVIN));
  }

  @Override
  public List<Finding> of(PairSteel a, PairSteel b, PairSetting s) {
    CarbonLaw.Isotherm first = a.metal().law().at(SOAK_KELVIN);
    CarbonLaw.Isotherm second = b.metal().law().at(SOAK_KELVIN);
    EvenCarbon even =
        new EvenCarbon(
            one(a, s.firstMetres() / 2).weldedTo(one(b, s.secondMetres() / 2)), SOAK_KELVIN);
    return List.of(
        judge.values(
            CheckName.CARBON_ACTIVITY,
            first.activity(a.metal().startRatio()),
            second.activity(b.metal().startRatio()),
            new Why.Dissolved(
                SOAK_KELVIN - Temperature.ZERO_CELSIUS,
                a.analysis().carbon(),
                b.analysis().carbon())),
        evened(a, b, even.percent(0), even.percent(1)),
        loss(a, b, s, even),
        barrier(a, b, first, second));
  }

  private static Strip one(PairSteel steel, double metres) {
    return Strip.of(
        steel.metal(), new double[] {metres}, new double[] {steel.metal().startRatio()});
  }

  private Finding evened(PairSteel a, PairSteel b, double first, double second) {
    Why hardness = new Why.AsQuenched(hardness(a, first), hardness(b, second));
    return drop(CheckName.EVENED_CARBON, a, b, first, second, hardness);
  }

  private Finding loss(PairSteel a, PairSteel b, PairSetting s, EvenCarbon even) {
    double share = evenedShare(a, b, s, even);
    return drop(
        CheckName.CARBON_LOSS,
        a,
        b,
        a.analysis().carbon() + share * (even.percent(0) - a.analysis().carbon()),
        b.analysis().carbon() + share * (even.percent(1) - b.analysis().carbon()),
        new Why.Welded(
            FirstWelds.WELD_HEATS,
            FirstWelds.WELD_MINUTES,
            s.firstMetres(),
            s.secondMetres(),
            100 * share));
  }

  /** Rated by the hardness that the harder one loses. */
  private Finding drop(
      CheckName check, PairSteel a, PairSteel b, double first, double second, Why why) {
    return judge.values(check, first, second, Math.max(drop(a, first), drop(b, second)), why);
  }

  /**
   * How far layers come to even in the first weld heats, 0 to 1, by the slowest term of the series
   * for a repeating stack with one diffusivity: quick, for tables; {@code pair} solves it.
   */
  private double evenedShare(PairSteel a, PairSteel b, PairSetting s, EvenCarbon even) {
    double kelvin = s.heat(k.mechanics().welding().usualCelsius(), a, b) + Temperature.ZERO_CELSIUS;
    double d =
        Math.sqrt(
            a.metal().law().at(kelvin).potentialSlope(austenite(a, even.ratio(0)))
                * b.metal().law().at(kelvin).potentialSlope(austenite(b, even.ratio(1))));
    double wave = 2 * Math.PI / s.periodMetres();
    return -Math.expm1(-wave * wave * d * WELD_SECONDS);
  }

  /** On a level nothing diffuses; the carbon of the steel itself stands in. */
  private static double austenite(PairSteel s, double ratio) {
    return Math.min(ratio, s.metal().startRatio());
  }

  private Finding barrier(
      PairSteel a, PairSteel b, CarbonLaw.Isotherm first, CarbonLaw.Isotherm second) {
    double activity =
        Math.max(first.activity(a.metal().startRatio()), second.activity(b.metal().startRatio()));
    return judge.values(
        CheckName.CARBON_BARRIER, slower(first, activity), slower(second, activity), Why.NUMBERS);
  }

  private double slower(CarbonLaw.Isotherm steel, double activity) {
    if (activity <= 0) {
      return 1; // no carbon, nothing to be slow
    }
    return Math.min(
        MOST_TIMES,
        iron.potential(iron.ratioAt(activity)) / steel.potential(steel.ratioAt(activity)));
  }

  /** Hardness lost when a steel that hardens comes to hold other carbon, HRC. */
  private double drop(PairSteel s, double carbonPct) {
    return s.hardens() ? Math.max(0, hrc(s, s.analysis().carbon()) - hrc(s, carbonPct)) : 0;
  }

  private double hrc(PairSteel s, double carbonPct) {
    HardeningWindow window = k.hardening().window();
    TemperatureRange range =
        s.hardening().orElseGet(() -> window.of(s.steel(), s.lines(), carbonPct));
    double heat = window.heatCelsius(range);
    Composition austenite =
        k.austenite(s.lines(), carbonPct, heat)
            .orElseGet(() -> s.lines().steel().with(Element.C, carbonPct));
    return QuenchedSteel.reaches(s.analysis())
        ? Hardened.refined(k, austenite).fullHrc(QuenchedSteel.ROOM_CELSIUS).value()
        : k.hardening().asQuenched().measuredHrc(austenite.carbon());
  }

  private OptionalDouble hardness(PairSteel s, double carbonPct) {
    return s.lines().alwaysAustenite()
        ? OptionalDouble.empty()
        : OptionalDouble.of(hrc(s, carbonPct));
  }
}
