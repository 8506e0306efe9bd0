package seamsoak.property;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.data.DataFolder;
import seamsoak.source.Estimate;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/** Outside their ranges the regressions stay meaningful and say that they were left. */
final class ExtremeAnalysesTest {
  private final Correlations k = Correlations.load(DataFolder.packed());
  private static final String ALL = "seamsoak.support.ExtremeAnalyses#all";

  @ParameterizedTest
  @MethodSource(ALL)
  void lowerCriticalTemperatureStaysNearThatOfIron(Composition c) {
    Estimate ae1 = k.critical().ae1().estimate(c);
    assertTrue(ae1.value() > 600 && ae1.value() < 900, () -> "Ae1 " + ae1.value());
    assertEquals(24, ae1.high() - ae1.low(), 1e-9);
  }

  @ParameterizedTest
  @MethodSource(ALL)
  void shiftOfCementiteLineStaysWithinThatOfLowAlloySteel(Composition c) {
    double shift = k.critical().accmAlloy().alloyShiftCelsius(c, c.carbon());
    assertTrue(shift > -20 && shift < 150, () -> "shift " + shift);
  }

  @Test
  void moreChromiumThanTheRangeNeverLowersTheCementiteLine() {
    Composition ball = Composition.of(Map.of(Element.C, 1.0, Element.CR, 1.5));
    Composition die = Composition.of(Map.of(Element.C, 1.0, Element.CR, 12.0));
    assertEquals(
        k.critical().accmAlloy().alloyShiftCelsius(ball, 1.0),
        k.critical().accmAlloy().alloyShiftCelsius(die, 1.0));
    assertTrue(k.critical().accmAlloy().exceeded(ball.with(Element.C, 0.7)).isEmpty());
    assertEquals(
        "Cr",
        k.critical().accmAlloy().exceeded(die.with(Element.C, 0.7)).get(0).range().quantity());
  }

  @Test
  void pureNickelIsRemarkedOn() {
    Composition nickel = Composition.of(Map.of(Element.NI, 100.0));
    assertFalse(k.critical().ae1().estimate(nickel).exceeded().isEmpty());
    assertFalse(k.critical().a3Alloy().exceeded(nickel).isEmpty());
  }

  @Test
  void carbonInPureNickelIsRemarkedOnNotThrown() {
    Composition nickel = Composition.of(Map.of(Element.NI, 100.0));
    assertTrue(
        k.critical().accmAlloy().exceeded(nickel).stream()
            .anyMatch(e -> e.range().quantity().equals("Ni")));
    assertTrue(Double.isFinite(k.critical().accmAlloy().alloyShiftCelsius(nickel, 0.3)));
  }

  @Test
  void stainlessTakesTheLowerOfTwoLines() {
    Composition austenitic = Composition.of(Map.of(Element.C, 0.05, Element.CR, 18.0));
    Composition die = Composition.of(Map.of(Element.C, 1.55, Element.CR, 12.0));
    assertEquals(
        1382, k.forging().rule().limits(austenitic, OptionalDouble.empty()).burningCelsius());
    assertEquals(1140, k.forging().rule().limits(die, OptionalDouble.empty()).burningCelsius());
  }

  @Test
  void thePublishedForgeStartStandsWithTheHandbooksAsItsBand() {
    Composition steel = Composition.of(Map.of(Element.C, 0.9, Element.MN, 0.4));
    Estimate published = k.forging().rule().limits(steel, OptionalDouble.of(1160)).highestForging();
    assertEquals(1160, published.value());
    assertEquals(1121, published.low());
    assertEquals(1160, published.high());
    assertEquals("grade-forging", published.source());
    Estimate byCarbon = k.forging().rule().limits(steel, OptionalDouble.empty()).highestForging();
    assertEquals(1121, byCarbon.value());
    assertEquals(1150, byCarbon.high());
  }
}
