package seamsoak.pairing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import seamsoak.carbon.CarbonInSteel;
import seamsoak.carbon.CarbonLaw;
import seamsoak.carbon.EvenCarbon;
import seamsoak.carbon.Strip;
import seamsoak.property.Correlations;
import seamsoak.property.hardening.HardeningWindow;
import seamsoak.steel.Composition;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.Length;
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
    Strip strip = strip(a, b, s);
    EvenCarbon even = new EvenCarbon(strip, SOAK_KELVIN);
    double evenFirst = even.percent(0);
    double evenSecond = even.percent(1);
    List<Finding> all = new ArrayList<>();
    all.add(activity(a, b, first, second));
    all.add(evened(a, b, evenFirst, evenSecond));
    all.add(loss(a, b, s, even));
    all.add(barrier(a, b, first, second));
    return all;
  }

  private static Strip strip(PairSteel a, PairSteel b, PairSetting s) {
    return one(a, s.firstMetres() / 2).weldedTo(one(b, s.secondMetres() / 2));
  }

  private static Strip one(PairSteel steel, double metres) {
    return Strip.of(
        steel.metal(), new double[] {metres}, new double[] {steel.metal().startRatio()});
  }

  private Finding activity(
      PairSteel a, PairSteel b, CarbonLaw.Isotherm first, CarbonLaw.Isotherm second) {
    double one = first.activity(a.metal().startRatio());
    double other = second.activity(b.metal().startRatio());
    String flow =
        one == other
            ? "carbon stays where it is."
            : "carbon goes from "
                + (one > other ? a.id() + " to " + b.id() : b.id() + " to " + a.id())
                + ".";
    return judge.values(
        "carbon-activity",
        one,
        other,
        Math.abs(one - other),
        "At "
            + judge.at(SOAK_KELVIN - Temperature.ZERO_CELSIUS)
            + " the carbon of "
            + a.id()
            + " ("
            + Judge.number(a.analysis().carbon(), 2)
            + " %) has activity "
            + Judge.number(one, 2)
            + ", that of "
            + b.id()
            + " ("
            + Judge.number(b.analysis().carbon(), 2)
            + " %) "
            + Judge.number(other, 2)
            + ": "
            + flow);
  }

  private Finding evened(PairSteel a, PairSteel b, double first, double second) {
    double drop = Math.max(drop(a, first), drop(b, second));
    return judge.values(
        "evened-carbon",
        first,
        second,
        drop,
        "Evened out, as after many restacks, "
            + a.id()
            + " holds "
            + Judge.number(first, 2)
            + " % carbon and "
            + b.id()
            + " "
            + Judge.number(second, 2)
            + " %: as quenched "
            + hardness(a, first)
            + " and "
            + hardness(b, second)
            + "."
            + lost(drop));
  }

  private Finding loss(PairSteel a, PairSteel b, PairSetting s, EvenCarbon even) {
    double share = evenedShare(a, b, s, even);
    double first = a.analysis().carbon() + share * (even.percent(0) - a.analysis().carbon());
    double second = b.analysis().carbon() + share * (even.percent(1) - b.analysis().carbon());
    double drop = Math.max(drop(a, first), drop(b, second));
    return judge.values(
        "carbon-loss",
        first,
        second,
        drop,
        "After the first weld heats (3 of 5 min) layers of "
            + length(s.firstMetres())
            + " "
            + a.id()
            + " and "
            + length(s.secondMetres())
            + " "
            + b.id()
            + " have come "
            + Judge.number(100 * share, 0)
            + " % of the way to even: "
            + a.id()
            + " "
            + Judge.number(first, 2)
            + " %, "
            + b.id()
            + " "
            + Judge.number(second, 2)
            + " %."
            + lost(drop));
  }

  private static String lost(double drop) {
    return drop < 0.5
        ? " No hardness is lost."
        : " The harder one loses " + Judge.number(drop, 1) + " HRC.";
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
    double one = slower(first, activity);
    double other = slower(second, activity);
    double most = Math.max(one, other);
    String slow = one > other ? a.id() : b.id();
    return judge.values(
        "carbon-barrier",
        one,
        other,
        most,
        "Against plain iron, carbon takes "
            + Judge.number(one, 1)
            + " times as long through "
            + a.id()
            + " and "
            + Judge.number(other, 1)
            + " times through "
            + b.id()
            + ": "
            + (judge.limits().of("carbon-barrier").rate(most) == Rating.FITS
                ? "neither holds it up."
                : slow + " holds it up."));
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
    double dissolved = s.lines().dissolvedCarbonPct(carbonPct, heat).orElse(carbonPct);
    return k.hardening().asQuenched().martensiteHrc(dissolved);
  }

  private String hardness(PairSteel s, double carbonPct) {
    return s.lines().alwaysAustenite() ? "soft" : Judge.number(hrc(s, carbonPct), 0) + " HRC";
  }

  private String length(double metres) {
    return new Length(metres).format(judge.units());
  }
}
