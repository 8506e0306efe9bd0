package seamsoak.property.phase;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import seamsoak.numeric.Roots;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.critical.Criticals;
import seamsoak.source.Standing;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * Where the phases of one steel begin and end: the one definition that both the carbon engine and
 * the schedule use.
 *
 * <p>A3 is the iron-carbon line shifted by Andrews's alloy terms, Accm the iron-carbon line shifted
 * by Lee and Lee's ({@link FeCLines}, {@link Criticals}). Below A1, which is {@code Ae1Mean}, there
 * is ferrite and cementite. In steels of much silicon or vanadium the two shifted lines cross above
 * A1: from there to the crossing ferrite, cementite and austenite stand side by side, as alloy
 * steels have it, the austenite with the carbon of the crossing. A steel with much nickel is
 * austenite at every temperature (from 8 wt%, judgement: pure nickel and the austenitic stainless
 * grades).
 */
public final class PhaseLines {
  private static final double AUSTENITIC_FROM_NICKEL = 8;
  private static final double MOST_CARBON = 6.6;

  /** Why these lines are used instead of a regression, for answers. */
  public static final String WHY =
      "Ac3 and Accm are the iron-carbon lines moved by alloy terms (Andrews, Lee and Lee): above"
          + " 0.6 % carbon the regressions part, and carbon moves from layer to layer, which needs"
          + " lines that hold from pure iron to cementite. Neither is ever below Ac1, nor"
          + " below the point where the two cross. They are of equilibrium: on heating Ac3 comes 15"
          + " to 35 C later.";

  /** The rule for steels that nickel keeps austenitic. */
  public static Correlation austenitic() {
    return new Correlation(
        "austenitic-from-nickel",
        "steel without ferrite or pearlite from 8 % nickel",
        "wt%",
        "judgement",
        Standing.JUDGEMENT,
        List.of(),
        "none");
  }

  private final FeCLines lines;
  private final Deighton1970ChromiumCarbide chromiumCarbide;
  private final Composition steel;
  private final boolean alwaysAustenite;
  private final double a3Shift;
  private final double accmShift;
  private final double accmShiftPerCarbon;
  private final double a1Celsius;

  /** Carbon where the lines cross, and from where up austenite can stand alone, never below A1. */
  private final double crossingPct;

  private final double aloneCelsius;

  public PhaseLines(Phases phases, Criticals criticals, Composition steel) {
    this.lines = phases.ironCarbon();
    this.chromiumCarbide = phases.chromiumCarbide();
    this.steel = steel;
    this.alwaysAustenite = steel.percent(Element.NI) >= AUSTENITIC_FROM_NICKEL;
    this.a3Shift = criticals.a3Alloy().alloyShiftCelsius(steel);
    this.accmShift = criticals.accmAlloy().alloyShiftCelsius(steel, 0);
    this.accmShiftPerCarbon = criticals.accmAlloy().alloyShiftCelsius(steel, 1) - accmShift;
    this.a1Celsius = criticals.ae1().celsius(steel);
    this.crossingPct = crossingPct();
    this.aloneCelsius = Math.max(a1Celsius, a3Celsius(crossingPct));
  }

  /** Where the shifted lines cross; the end where they do not, far beyond any steel's analysis. */
  private double crossingPct() {
    DoubleUnaryOperator above = c -> a3Celsius(c) - shiftedAccm(c);
    if (above.applyAsDouble(0) <= 0) {
      return 0;
    }
    return above.applyAsDouble(MOST_CARBON) >= 0
        ? MOST_CARBON
        : Roots.between(above, 0, MOST_CARBON, 1e-12);
  }

  /** Whether the steel has neither ferrite nor pearlite at any temperature. */
  public boolean alwaysAustenite() {
    return alwaysAustenite;
  }

  /** Temperature below which there is no austenite at equilibrium, degC. */
  public double a1Celsius() {
    return a1Celsius;
  }

  /** Temperature above which no ferrite is left with that much carbon, degC, never below A1. */
  public double ac3Celsius(double carbonPct) {
    return Math.max(aloneCelsius, a3Celsius(carbonPct));
  }

  /** Temperature above which no cementite is left with that much carbon, degC, never below A1. */
  public double accmCelsius(double carbonPct) {
    return Math.max(aloneCelsius, shiftedAccm(carbonPct));
  }

  /** Temperature above which there is nothing but austenite with that much carbon, degC. */
  public double fullAusteniteCelsius(double carbonPct) {
    return Math.max(ac3Celsius(carbonPct), accmCelsius(carbonPct));
  }

  /** Carbon of the eutectoid, where the lines of ferrite and cementite cross, wt%. */
  public double eutectoidPct() {
    return crossingPct;
  }

  /** Temperature below which ferrite can form at that much carbon, degC, above A1 or below it. */
  public double ferriteBelowCelsius(double carbonPct) {
    return a3Celsius(carbonPct);
  }

  /** Carbon on the line of ferrite, run on below the eutectoid's temperature too, wt%. */
  public double ferriteLinePct(double celsius) {
    return lines.a3CarbonPct(celsius, a3Shift);
  }

  /** What alloying adds to the line of ferrite, K. */
  public double a3ShiftCelsius() {
    return a3Shift;
  }

  /** What alloying adds to the line of cementite at that much carbon, K. */
  public double accmShiftCelsius(double carbonPct) {
    return accmShift + accmShiftPerCarbon * carbonPct;
  }

  /** Carbon of austenite beside ferrite, wt%; 0 where there is no ferrite. Meant above A1. */
  public double austeniteBesideFerritePct(double celsius) {
    return alwaysAustenite ? 0 : Math.min(crossingPct, lines.a3CarbonPct(celsius, a3Shift));
  }

  /** Carbon of austenite beside cementite, wt%. Meant above A1. */
  public double austeniteBesideCementitePct(double celsius) {
    return Math.max(crossingPct, lines.accmCarbonPct(celsius, accmShift, accmShiftPerCarbon));
  }

  /** Share of ferrite that a long hold leaves with that much carbon, 0 to 1; all of it below A1. */
  public double ferriteShare(double carbonPct, double celsius) {
    if (alwaysAustenite) {
      return 0;
    }
    double beside = austeniteBesideFerritePct(celsius);
    return celsius < a1Celsius ? 1 : beside > 0 ? Math.max(0, (beside - carbonPct) / beside) : 0;
  }

  private double a3Celsius(double carbonPct) {
    return lines.a3Celsius(carbonPct) + a3Shift;
  }

  private double shiftedAccm(double carbonPct) {
    return lines.accmCelsius(carbonPct) + accmShiftCelsius(carbonPct);
  }

  /** The analysis these lines are for. */
  public Composition steel() {
    return steel;
  }

  /** Whether carbide is what dissolves last of a carbon content: Accm lies above Ac3. */
  public boolean carbideLast(double carbonPct) {
    return accmCelsius(carbonPct) > ac3Celsius(carbonPct);
  }

  /**
   * The most carbon that is in solution beside chromium carbide, wt%; empty for what is no
   * austenitic stainless steel. More than this it can well take up, as carbide.
   */
  public OptionalDouble besideChromiumCarbidePct(double celsius) {
    return alwaysAustenite && chromiumCarbide.binds(steel)
        ? OptionalDouble.of(chromiumCarbide.dissolvesPct(celsius))
        : OptionalDouble.empty();
  }

  /**
   * The most carbon that austenite holds at a heat, wt%, beyond which there is cementite; empty
   * below A1, where there is no austenite.
   */
  public OptionalDouble mostDissolvedCarbonPct(double celsius) {
    return celsius < a1Celsius
        ? OptionalDouble.empty()
        : OptionalDouble.of(austeniteBesideCementitePct(celsius));
  }
}
