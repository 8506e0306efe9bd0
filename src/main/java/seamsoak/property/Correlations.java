package seamsoak.property;

import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.data.DataFolder;
import seamsoak.property.correlation.CoefficientTable;
import seamsoak.property.critical.Criticals;
import seamsoak.property.etch.Etching;
import seamsoak.property.forging.Forging;
import seamsoak.property.forging.Mechanics;
import seamsoak.property.hardening.Hardening;
import seamsoak.property.hardening.Narita1975VanadiumCarbide;
import seamsoak.property.hardening.SlowCarbide;
import seamsoak.property.phase.PhaseLines;
import seamsoak.property.phase.Phases;
import seamsoak.property.section.SectionHeat;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * Every published correlation by its subject, read once and passed to whoever needs it.
 *
 * @param critical transformation temperatures
 * @param phases carbon among the phases
 * @param forging heat, scale and grain in the fire
 * @param mechanics how steel grows, yields, welds and hardens
 * @param hardening hardness, hardenability, quenching, tempering
 * @param sections heating and cooling of sections
 * @param etching what an etch makes of ferrite, pearlite and martensite
 */
public record Correlations(
    Criticals critical,
    Phases phases,
    Forging forging,
    Mechanics mechanics,
    Hardening hardening,
    SectionHeat sections,
    Etching etching) {

  /** The phases of one steel. */
  public PhaseLines lines(Composition steel) {
    return new PhaseLines(phases, critical, steel);
  }

  /** The austenite of a steel after a hold as blades get. */
  public Optional<Composition> austenite(PhaseLines lines, double carbonPct, double celsius) {
    return austenite(lines, carbonPct, celsius, hardening.slowCarbide().usualSeconds());
  }

  /**
   * The austenite of a steel after a hold, with what is dissolved in it of its carbon, chromium and
   * vanadium; the rest is carbide, or where ferrite is left the carbon is all in the austenite.
   * Empty below A1, where there is none.
   *
   * @param lines its phases
   * @param carbonPct it has by now, wt%
   */
  public Optional<Composition> austenite(
      PhaseLines lines, double carbonPct, double celsius, double seconds) {
    OptionalDouble most = lines.mostDissolvedCarbonPct(celsius);
    if (most.isEmpty()) {
      return Optional.empty();
    }
    Composition steel = lines.steel();
    double all = besideFerritePct(lines, carbonPct, celsius);
    double vanadium = steel.percent(Element.V);
    SlowCarbide slow = hardening.slowCarbide();
    double equilibrium =
        hardening.vanadium().dissolved(vanadium, all, most.getAsDouble(), celsius).carbonPct();
    double carbon = slow.carbonPct(steel, equilibrium, lines.eutectoidPct(), celsius, seconds);
    Narita1975VanadiumCarbide.Dissolved d =
        hardening.vanadium().dissolved(vanadium, all, carbon, celsius);
    Composition austenite = steel.with(Element.C, d.carbonPct());
    if (vanadium > 0) {
      austenite = austenite.with(Element.V, d.vanadiumPct());
    }
    return Optional.of(
        slow.withoutBound(austenite, hardening.vanadium().cementite(all, vanadium, d)));
  }

  /** Carbon of all but the ferrite, which holds none to speak of, wt%. */
  private static double besideFerritePct(PhaseLines lines, double carbonPct, double celsius) {
    return Math.max(carbonPct, lines.austeniteBesideFerritePct(celsius));
  }

  /** Carbon that is still in cementite after such a hold, wt% of the steel; none below A1. */
  double cementiteCarbonPct(PhaseLines lines, double celsius) {
    Composition steel = lines.steel();
    double all = besideFerritePct(lines, steel.carbon(), celsius);
    double vanadium = steel.percent(Element.V);
    return austenite(lines, steel.carbon(), celsius)
        .map(a -> new Narita1975VanadiumCarbide.Dissolved(a.percent(Element.V), a.carbon()))
        .map(d -> hardening.vanadium().cementite(all, vanadium, d))
        .orElse(0.0);
  }

  /** Reads the tables. */
  public static Correlations load(DataFolder data) {
    CoefficientTable table = CoefficientTable.load(data);
    Hardening hardening = Hardening.load(data, table);
    Phases phases = Phases.load(data, table);
    Forging forging = Forging.load(data, table);
    return new Correlations(
        Criticals.load(data, table),
        phases,
        forging,
        Mechanics.of(table),
        hardening,
        SectionHeat.of(table, hardening.criterion()),
        Etching.of(table, phases.austeniteDiffusivity(), forging.grainNumber()));
  }
}
