package seamsoak.property.forging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.DataFolder;
import seamsoak.property.Correlations;
import seamsoak.property.phase.PhaseLines;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;
import seamsoak.support.Analyses;

/** Which line speaks for the expansion of which steel. */
class MechanicsTest {
  private final Correlations k = Correlations.load(DataFolder.packed());
  private final SteelTable steels = SteelTable.load(DataFolder.packed());

  private PhaseLines lines(Composition c) {
    return k.lines(c);
  }

  private boolean isLattice(Composition c) {
    return k.mechanics().isLattice(c, lines(c));
  }

  @Test
  void theLatticeSpeaksForSteelBelowTenPercentChromium() {
    Composition plain = Analyses.of("C0.5");
    assertTrue(isLattice(plain));
    assertTrue(isLattice(plain.with(Element.CR, 9.99)));
    assertFalse(isLattice(plain.with(Element.CR, 10)));
    assertFalse(isLattice(steels.find("304").orElseThrow().analysis()));
    assertFalse(isLattice(Composition.of(Map.of(Element.NI, 99.0))));
  }

  @Test
  void eachOfTheOthersHasItsOwnLine() {
    Mechanics m = k.mechanics();
    Composition nickel = steels.find("Ni200").orElseThrow().analysis();
    Composition austenitic = steels.find("304").orElseThrow().analysis();
    Composition chromium = steels.find("410").orElseThrow().analysis();
    assertSame(m.nickelExpansion(), m.line(nickel, lines(nickel)));
    assertSame(m.stainlessExpansion(), m.line(austenitic, lines(austenitic)));
    assertSame(m.chromiumExpansion(), m.line(chromium, lines(chromium)));
    Composition half = Composition.of(Map.of(Element.NI, 50.0));
    assertSame(m.stainlessExpansion(), m.line(half, lines(half)));
  }

  /** From the steel's own published mean to 100 C, else its line's, along the slope of its line. */
  @ParameterizedTest
  @CsvSource({"304, 17.2, 0.00273", "410, 9.9, 0.00388", "Ni200, 13.3, 0.00403"})
  void beginsAtTheSteelsOwnMean(String id, double usual, double slope) {
    Steel steel = steels.find(id).orElseThrow();
    double own = steel.cteMicroPerKelvin().orElse(usual);
    double mean = k.mechanics().meanCold(steel, lines(steel.analysis()), 600);
    assertEquals(own + slope * 500, mean, 1e-9);
  }

  /** The mean times the rise is the growth of the ferrite's lattice with its cementite. */
  @Test
  void theMeanOfPlainSteelIsItsLattices() {
    Steel steel = steels.find("1084").orElseThrow();
    double mean = k.mechanics().meanCold(steel, lines(steel.analysis()), 620);
    double growth = k.mechanics().expansion().ferriteElongation(620, steel.analysis().carbon());
    assertEquals(growth, 1e-6 * mean * 600, 1e-12);
  }

  @Test
  void whatIsAlwaysAusteniteGrowsOnAlongItsLine() {
    Steel steel = steels.find("304").orElseThrow();
    PhaseLines lines = lines(steel.analysis());
    double mean = k.mechanics().meanCold(steel, lines, 1020);
    assertEquals(1e-3 * mean, k.mechanics().elongationHot(steel, lines, 1020), 1e-12);
    Steel plain = steels.find("1084").orElseThrow();
    assertEquals(
        k.mechanics().expansion().austeniteElongation(1020, plain.analysis().carbon()),
        k.mechanics().elongationHot(plain, lines(plain.analysis()), 1020),
        1e-15);
  }
}
