package seamsoak.property;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.DataFolder;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;

/** Which line speaks for the expansion of which steel. */
class MechanicsTest {
  private final Correlations k = Correlations.load(DataFolder.packed());
  private final SteelTable steels = SteelTable.load(DataFolder.packed());

  private PhaseLines lines(Composition c) {
    return new PhaseLines(k, c);
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

  /** Handbook means: 304 is 18.7 to 650 C, 410 11.6 to 538 C, nickel 16.4 to 870 C (1e-6/K). */
  @ParameterizedTest
  @CsvSource({"304, 650, 18.7", "410, 538, 11.6", "Ni200, 870, 16.4"})
  void agreesWithTheHandbookHigherUp(String id, double celsius, double expected) {
    Steel steel = steels.find(id).orElseThrow();
    double mean = k.mechanics().meanCold(steel, lines(steel.analysis()), celsius);
    assertEquals(expected, mean, 0.2, "0.1 for each of the two printed ends");
  }

  /** The mean times the rise is the growth of the ferrite's lattice with its cementite. */
  @Test
  void theMeanOfPlainSteelIsItsLattices() {
    Steel steel = steels.find("1084").orElseThrow();
    double mean = k.mechanics().meanCold(steel, lines(steel.analysis()), 620);
    double growth = k.mechanics().expansion().ferriteElongation(620, steel.analysis().carbon());
    assertEquals(growth, 1e-6 * mean * 600, 1e-12);
    assertTrue(mean > 12 && mean < 16, "carbon steel to 600 C, handbook about 14 to 15");
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
