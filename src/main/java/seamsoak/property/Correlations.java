package seamsoak.property;

import seamsoak.data.DataFolder;
import seamsoak.property.correlation.CoefficientTable;
import seamsoak.property.critical.Criticals;
import seamsoak.property.forging.Forging;
import seamsoak.property.forging.Mechanics;
import seamsoak.property.hardening.Hardening;
import seamsoak.property.phase.PhaseLines;
import seamsoak.property.phase.Phases;
import seamsoak.property.section.SectionHeat;
import seamsoak.steel.Composition;

/**
 * Every published correlation by its subject, read once and passed to whoever needs it.
 *
 * @param critical transformation temperatures
 * @param phases carbon among the phases
 * @param forging heat, scale and grain in the fire
 * @param mechanics how steel grows, yields, welds and hardens
 * @param hardening hardness, hardenability, quenching, tempering
 * @param sections heating and cooling of sections
 */
public record Correlations(
    Criticals critical,
    Phases phases,
    Forging forging,
    Mechanics mechanics,
    Hardening hardening,
    SectionHeat sections) {

  /** The phases of one steel. */
  public PhaseLines lines(Composition steel) {
    return new PhaseLines(phases.ironCarbon(), critical, steel);
  }

  /** Reads the tables. */
  public static Correlations load(DataFolder data) {
    CoefficientTable table = CoefficientTable.load(data);
    Hardening hardening = Hardening.load(data, table);
    return new Correlations(
        Criticals.load(data, table),
        Phases.load(data, table),
        Forging.load(data, table),
        Mechanics.of(table),
        hardening,
        SectionHeat.of(table, hardening.criterion()));
  }
}
