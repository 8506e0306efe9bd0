package seamsoak.property;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.data.DataFolder;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.forging.ForgingLimits;
import seamsoak.property.phase.CarbonDiffusivity;
import seamsoak.property.phase.PhaseLines;
import seamsoak.source.Estimate;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;
import seamsoak.support.ExtremeAnalyses;

/** Every correlation gives a possible number for every steel, and for analyses beyond them. */
final class EverySteelTest {
  private final Correlations k = Correlations.load(DataFolder.packed());

  static Stream<Composition> analyses() {
    return Stream.concat(
        SteelTable.load(DataFolder.packed()).steels().stream().map(Steel::analysis),
        ExtremeAnalyses.all());
  }

  static Stream<Steel> steels() {
    return SteelTable.load(DataFolder.packed()).steels().stream();
  }

  @ParameterizedTest
  @MethodSource("analyses")
  void criticalTemperaturesLieBetweenRoomAndMelting(Composition c) {
    within(c, k.critical().lower(), 500, 1000);
    within(c, k.critical().upper(), 250, 1250);
    within(c, k.critical().martensiteStart(), -273.15, 600);
    within(c, List.of(k.forging().solidus()), 1050, 1540);
  }

  private static void within(
      Composition c, List<? extends CriticalTemperature> all, double low, double high) {
    for (CriticalTemperature t : all) {
      double celsius = t.celsius(c);
      assertTrue(celsius >= low && celsius <= high, () -> t.correlation().name() + " " + celsius);
    }
  }

  /** Austenite begins before it can be alone; from there on the lines can be read either way. */
  @ParameterizedTest
  @MethodSource("analyses")
  void phaseLinesAreInOrderAndTurnRound(Composition c) {
    PhaseLines lines = k.lines(c);
    double a1 = lines.a1Celsius();
    for (double carbon = 0; carbon <= 2.1; carbon += 0.05) {
      assertTrue(lines.ac3Celsius(carbon) >= a1 && lines.accmCelsius(carbon) >= a1);
      assertTrue(lines.fullAusteniteCelsius(carbon) < 1600);
    }
    assertEquals(k.critical().ae1().celsius(c), a1, 0, "one Ac1");
    boolean alone = false;
    for (double celsius = a1 + 1; celsius <= 1300; celsius += 7) {
      double most = lines.austeniteBesideCementitePct(celsius);
      assertTrue(most > 0 && most <= 6.6, () -> "carbon " + most);
      double least = lines.austeniteBesideFerritePct(celsius);
      boolean before = alone;
      alone = least < most;
      assertTrue(least >= 0 && least <= most && (alone || !before), () -> least + " to " + most);
      if (least > 0 && alone) {
        assertEquals(celsius, lines.ac3Celsius(least), 1e-6);
      }
      if (most < 6.6 && alone && !lines.alwaysAustenite()) {
        assertEquals(celsius, lines.accmCelsius(most), 1e-6);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("analyses")
  void everyDiffusivityIsPositive(Composition c) {
    for (CarbonDiffusivity d : k.phases().austeniteDiffusivities()) {
      double last = 0;
      for (double kelvin = 1073; kelvin <= 1523; kelvin += 50) {
        double here = d.squareMetresPerSecond(kelvin, c);
        double before = last;
        boolean leftItsRange = !d.exceeded(c, kelvin - 273.15).isEmpty();
        assertTrue(
            Double.isFinite(here) && (here > before || leftItsRange),
            () -> d.correlation().name() + " " + here);
        last = here;
      }
    }
  }

  /** Cementite that is left holds them, less of it the hotter; where it is gone they are free. */
  @ParameterizedTest
  @MethodSource("analyses")
  void cementiteHoldsGrains(Composition c) {
    SteelGrains grains = new SteelGrains(k, c);
    double before = 0;
    for (double kelvin = 1023; kelvin < 1473; kelvin += 25) {
      double most = grains.mostMetres(kelvin);
      // dissolving carbide of vanadium gives carbon back, of which cementite may form
      assertTrue(most >= before || c.percent(Element.V) > 0, c + " at " + kelvin);
      assertTrue(most > 1e-6, c + " at " + kelvin);
      before = most;
      double free = k.forging().grainGrowth().metres(c, kelvin, 600);
      double held = grains.metresAfter(0, new double[] {0, 600}, new double[] {kelvin, kelvin});
      assertEquals(Math.min(free, most), held, 1e-9 * free);
    }
  }

  @ParameterizedTest
  @MethodSource("analyses")
  void grainsGrowWithHeatAndTime(Composition c) {
    double cool = k.forging().grainGrowth().metres(c, 1123, 600);
    double hot = k.forging().grainGrowth().metres(c, 1423, 600);
    double longer = k.forging().grainGrowth().metres(c, 1423, 1200);
    assertTrue(cool > 1e-7 && cool < hot && hot < longer && longer < 1e-2);
  }

  @ParameterizedTest
  @MethodSource("analyses")
  void retainedAusteniteIsAShare(Composition c) {
    Estimate share = k.hardening().retained().retained(c, k.critical().ms().celsius(c), 20);
    assertTrue(share.low() >= 0 && share.high() <= 1, () -> "share " + share);
    assertTrue(share.low() <= share.value() && share.value() <= share.high(), share::toString);
  }

  @ParameterizedTest
  @MethodSource("analyses")
  void forgingStaysBelowBurningAndMelting(Composition c) {
    ForgingLimits limits = k.forging().rule().limits(c, OptionalDouble.empty());
    assertTrue(limits.highestForging().value() < limits.burningCelsius());
    assertTrue(limits.refusalCelsius() <= limits.burningCelsius());
    assertTrue(limits.refusalCelsius() < limits.solidusCelsius());
    assertTrue(limits.refusalCelsius() > 1000, () -> "refusal " + limits.refusalCelsius());
  }

  @ParameterizedTest
  @MethodSource("steels")
  void publishedForgeStartIsNotRefused(Steel steel) {
    OptionalDouble published = steel.heatTreatment().forgeStartC();
    ForgingLimits limits = k.forging().rule().limits(steel.analysis(), published);
    assertTrue(
        limits.highestForging().value() < limits.refusalCelsius(), () -> steel.id() + " " + limits);
    assertFalse(limits.highestForging().source().isEmpty());
  }
}
