package seamsoak.property.forging;

import seamsoak.property.correlation.CoefficientTable;
import seamsoak.property.phase.PhaseLines;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;

/**
 * How steel grows, yields and welds: what decides whether two of them go together.
 *
 * @param expansion of steel with a ferrite lattice
 * @param stainlessExpansion of austenitic stainless steel
 * @param nickelExpansion of nickel
 * @param chromiumExpansion of steel with much chromium
 * @param martensiteGrowth on hardening
 * @param hotStrength under the hammer
 * @param welding heats for forge welding
 * @param brightness after etching
 */
public record Mechanics(
    LatticeExpansion expansion,
    HandbookExpansion stainlessExpansion,
    HandbookExpansion nickelExpansion,
    HandbookExpansion chromiumExpansion,
    Asm4MartensiteGrowth martensiteGrowth,
    MisakaYoshimoto1967HotStrength hotStrength,
    WeldingRule welding,
    EtchBrightness brightness) {

  private static final double ROOM_CELSIUS = 20;
  private static final double MOSTLY_NICKEL = 50;
  private static final double MUCH_CHROMIUM = 10;

  public static Mechanics of(CoefficientTable table) {
    return new Mechanics(
        new LatticeExpansion(
            table.of("cementite-volume"),
            new SekiNagata2005Lattice(table.of("seki-nagata2005-lattice"))),
        new HandbookExpansion(table.of("stainless-expansion"), "austenitic stainless steel"),
        new HandbookExpansion(table.of("nickel-expansion"), "nickel"),
        new HandbookExpansion(table.of("chromium-expansion"), "steel with 10 % chromium or more"),
        new Asm4MartensiteGrowth(table.of("asm4-martensite-growth")),
        new MisakaYoshimoto1967HotStrength(table.of("misaka-yoshimoto1967-hot-strength")),
        new WeldingRule(table.of("welding-heat")),
        new EtchBrightness(table.of("etch-brightness")));
  }

  /** Mean expansion from 20 C to a temperature at which nothing has transformed, 1e-6/K. */
  public double meanCold(Steel steel, PhaseLines lines, double celsius) {
    Composition c = steel.analysis();
    if (!isLattice(c, lines)) {
      HandbookExpansion line = line(c, lines);
      return line.meanMicroPerKelvin(steel.cteMicroPerKelvin().orElse(line.usual()), celsius);
    }
    return 1e6 * expansion.ferriteElongation(celsius, c.carbon()) / (celsius - ROOM_CELSIUS);
  }

  /** The line that stands in for the lattice of a steel that is no low-alloy steel. */
  public HandbookExpansion line(Composition c, PhaseLines lines) {
    if (c.percent(Element.NI) > MOSTLY_NICKEL) {
      return nickelExpansion;
    }
    return lines.alwaysAustenite() ? stainlessExpansion : chromiumExpansion;
  }

  /** Whether the lattice of iron and carbon speaks for a steel while it is ferrite. */
  public boolean isLattice(Composition c, PhaseLines lines) {
    return !lines.alwaysAustenite() && c.percent(Element.CR) < MUCH_CHROMIUM;
  }

  /** Elongation from 20 C up to a heat in the austenite range, transformation included. */
  public double elongationHot(Steel steel, PhaseLines lines, double celsius) {
    return lines.alwaysAustenite()
        ? 1e-6 * meanCold(steel, lines, celsius) * (celsius - ROOM_CELSIUS)
        : expansion.austeniteElongation(celsius, steel.analysis().carbon());
  }
}
