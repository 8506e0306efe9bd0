package seamsoak.property;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.data.DataFolder;
import seamsoak.property.forging.Asm4MartensiteGrowth;
import seamsoak.property.forging.ForgingLimits;
import seamsoak.property.phase.ActivityParameters;
import seamsoak.property.phase.AusteniteActivity;
import seamsoak.property.phase.MetalLattice;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.support.Analyses;

/** What must hold between the functions of a correlation, and where its pieces meet. */
class PropertyShapesTest {
  private final Correlations k = Correlations.load(DataFolder.packed());

  @ParameterizedTest
  @ValueSource(strings = {"1084", "52100", "80CrV2", "D2", "nickel"})
  void activityTurnsRoundAndItsFactorIsItsSlope(String name) {
    MetalLattice lattice = MetalLattice.of(Analyses.named(name));
    AusteniteActivity.Isotherm at =
        new AusteniteActivity(k.phases().activity(), lattice).at(1273.15);
    for (double y : new double[] {1e-6, 0.01, 0.04, 0.09}) {
      double ln = at.lnActivity(y);
      assertEquals(Math.log(y / (1 - y)) + at.c0() + at.c1() * y + at.c2() * y * y, ln, 1e-12);
      assertEquals(y, at.ratioAt(ln), 1e-9 * y);
      assertEquals(y, at.ratioNear(ln, 0.05), 1e-9 * y);
      double d = 1e-5 * y;
      double slope = (at.lnActivity(y + d) - at.lnActivity(y - d)) / (2 * d);
      assertEquals(y * (1 - y) * slope, at.thermodynamicFactor(y), 1e-7);
    }
  }

  /**
   * Only vanadium has a square term: -6 u L1, L1 = -58754 J/mol, J. Alloys Comp. 421 (2006) 120.
   */
  @Test
  void vanadiumBendsTheActivity() {
    MetalLattice vanadium = MetalLattice.of(Analyses.of("V1"));
    MetalLattice chromium = MetalLattice.of(Analyses.of("Cr1"));
    double expected = 6 * 58754 * vanadium.share(Element.V) / (8.314463 * 1273.15);
    assertEquals(
        expected, new AusteniteActivity(k.phases().activity(), vanadium).at(1273.15).c2(), 1e-9);
    assertEquals(0, new AusteniteActivity(k.phases().activity(), chromium).at(1273.15).c2(), 0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {700, 800, 900})
  void ferriteTurnsRound(double celsius) {
    double t = celsius + 273.15;
    for (double y : new double[] {1e-7, 1e-5, 1e-3}) {
      assertEquals(
          y,
          k.phases().ferriteActivity().ratioAt(t, k.phases().ferriteActivity().lnActivity(t, y)),
          1e-12 * y);
    }
    // as the assessment has it: three sites, -190 T for all three
    double z = 1e-3 / 3;
    double rt = 8.314463 * t;
    double expected =
        Math.log(z / (1 - z)) + (322050 + 75.667 * t) / 3 / rt - 190.0 / 3 * t * (1 - 2 * z) / rt;
    assertEquals(expected, k.phases().ferriteActivity().lnActivity(t, 1e-3), 1e-12);
  }

  /** Eight terms, each of its own size at 10 K: the digits come out in order. */
  @Test
  void termsOfAFunctionOfTemperature() {
    double ln = Math.log(10);
    double[] k = {1, 2e-1, 3e-1 / ln, 4e-2, 5e-3, 6e1, 7e2, 8e3};
    assertEquals(1 + 2 + 3 + 4 + 5 + 6 + 7 + 8, ActivityParameters.value(k, 10), 1e-12);
    double at20 = 1 + 4 + 6 * Math.log(20) / ln + 16 + 40 + 3 + 7.0 / 4 + 1;
    assertEquals(at20, ActivityParameters.value(k, 20), 1e-12);
  }

  @Test
  void pureNickelHasNoIron() {
    assertEquals(0, MetalLattice.of(Analyses.of("Ni100")).iron(), 0);
    assertEquals(1, MetalLattice.of(Analyses.of("Ni100")).share(Element.NI), 1e-15);
  }

  /** Half-way between two entries of the table, and level beyond its ends. */
  @ParameterizedTest
  @CsvSource({"0.1, 1471", "0.35, 1410", "0.7, 1285", "1.0, 1196", "1.3, 1155.5", "2, 1140"})
  void burningBetweenTheEntries(double carbon, double celsius) {
    assertEquals(celsius, k.forging().rule().burning().celsius(carbon), 1e-9);
  }

  /** The three pieces of the solidus, by hand: 1538 - 478 C, 1495, 1527 - 187.5 C. */
  @ParameterizedTest
  @CsvSource({
    "C0.05, 1514.1",
    "C0.09, 1494.98",
    "C0.091, 1495",
    "C0.17, 1495",
    "C0.171, 1494.9375"
  })
  void piecesOfTheSolidus(String analysis, double celsius) {
    assertEquals(celsius, k.forging().solidus().celsius(Analyses.of(analysis)), 1e-9);
  }

  /** Where phosphorus and sulfur are not named 0.02 % each are taken: 10 and 14 C. */
  @ParameterizedTest
  @CsvSource({"C0.8, 1353", "C0.8 P0.01, 1358", "C0.8 S0.01 P0.01, 1365", "C0.8 Ni49, 1295.5"})
  void residualsAreTakenForSteel(String analysis, double celsius) {
    ForgingLimits limits = k.forging().rule().limits(Analyses.of(analysis), OptionalDouble.empty());
    assertEquals(celsius, limits.solidusCelsius(), 1e-9);
  }

  /** Less than half iron is no steel: nothing is taken for granted. */
  @Test
  void noResidualsInNickel() {
    ForgingLimits limits =
        k.forging().rule().limits(Analyses.of("C0.8 Ni50"), OptionalDouble.empty());
    assertEquals(1527 - 0.8 * 187.5 - 5 * 11.5, limits.solidusCelsius(), 1e-9);
  }

  @Test
  void stainlessFromTenAndAHalfPercent() {
    Composition just = Analyses.of("C0.05 Cr10.5");
    Composition under = Analyses.of("C0.05 Cr10.4");
    assertEquals(1382, k.forging().rule().limits(just, OptionalDouble.empty()).burningCelsius());
    assertEquals(1471, k.forging().rule().limits(under, OptionalDouble.empty()).burningCelsius());
  }

  @Test
  void bandOfForgingSpansItsSources() {
    Composition steel = Analyses.of("C0.9");
    var hot = k.forging().rule().limits(steel, OptionalDouble.of(1200)).highestForging();
    assertEquals(List.of(1121.0, 1200.0, 1200.0), List.of(hot.low(), hot.value(), hot.high()));
    var cold = k.forging().rule().limits(steel, OptionalDouble.of(1100)).highestForging();
    assertEquals(List.of(1100.0, 1100.0, 1150.0), List.of(cold.low(), cold.value(), cold.high()));
    // a carbon outside the handbook's line matters only where that line is what is used
    Composition rich = Analyses.of("C1.7");
    int published =
        k.forging().rule().limits(rich, OptionalDouble.of(1050)).highestForging().exceeded().size();
    int byLine =
        k.forging().rule().limits(rich, OptionalDouble.empty()).highestForging().exceeded().size();
    assertEquals(published + 1, byLine);
  }

  /** Where the standard's pieces meet, which one holds. */
  @Test
  void piecesOfTheStandardForHeat() {
    assertEquals(0.011, k.sections().steel().elongation(750), 1e-15);
    assertEquals(0.011, k.sections().steel().elongation(860), 1e-15);
    assertEquals(2e-5 * 861 - 6.2e-3, k.sections().steel().elongation(861), 1e-15);
    assertEquals(27.3, k.sections().steel().conductivity(800), 1e-12);
  }

  /**
   * Scale of iron: k = 6.1 exp(-169452/RT) g2/cm4/s of oxygen, 0.3016 of it per iron, 7.6 g/cm3.
   */
  @Test
  void scaleOfIronByHand() {
    double t = 1273.15;
    double oxygen = 6.1 * Math.exp(-169452 / (8.314 * t));
    double metal = oxygen / (2 * Math.pow(0.3016 * 7.6, 2)) * 1e-4;
    assertEquals(metal, k.forging().ironScaling().squareMetresPerSecond(t), 1e-3 * metal);
  }

  /** Its constant, 1333 F, alone. */
  @Test
  void grangeIsInFahrenheit() {
    assertEquals((1333 - 32) / 1.8, k.critical().lower().get(1).celsius(Analyses.of("")), 1e-9);
  }

  /** A length grows by a third of what the volume does. */
  @Test
  void martensiteGrowsAlikeInAllDirections() {
    Asm4MartensiteGrowth growth = k.mechanics().martensiteGrowth();
    assertEquals(growth.volumePct(0.6) / 3, growth.lengthPct(0.6), 1e-12);
  }
}
