package seamsoak.property.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.DataFolder;
import seamsoak.property.Correlations;
import seamsoak.property.hardening.HardeningDepth.Depth;
import seamsoak.source.Estimate;

/**
 * The steps of our judgement of how far a section hardens, at each step and on both sides of it.
 */
class HardeningDepthTest {
  private final HardeningDepth rule = Correlations.load(DataFolder.packed()).hardening().depth();

  @ParameterizedTest
  @CsvSource({
    "1.15, 2.0, THROUGH",
    "1.1499, 2.0, NEARLY",
    "0.85, 2.0, NEARLY",
    "0.8499, 0.85, SHELL",
    "0.8499, 0.8499, NOT"
  })
  void stepsOfDepth(double middle, double face, Depth expected) {
    assertEquals(expected, rule.depth(middle, face));
  }

  @Test
  void theMarginsAreThoseOfTheSteps() {
    assertEquals(Depth.THROUGH, rule.depth(rule.throughMargin(), 9));
    assertEquals(Depth.NEARLY, rule.depth(Math.nextDown(rule.throughMargin()), 9));
    assertEquals(Depth.NEARLY, rule.depth(rule.halfMargin(), 9));
    assertEquals(Depth.SHELL, rule.depth(Math.nextDown(rule.halfMargin()), 9));
  }

  @Test
  void airHardensFromAMargin() {
    assertTrue(rule.mayHardenInAir(0.5));
    assertFalse(rule.mayHardenInAir(Math.nextDown(0.5)));
  }

  /**
   * A bath counts more at the face than at the middle, three times in water and half again in oil.
   */
  @Test
  void aBathCountsMoreAtTheFace() {
    assertEquals(3 * 1.2, rule.severityAtFace(Quenchant.Kind.WATER, 1.2), 1e-12);
    assertEquals(1.5 * 1.2, rule.severityAtFace(Quenchant.Kind.OIL, 1.2), 1e-12);
    assertEquals(1.2, rule.severityAtFace(Quenchant.Kind.AIR, 1.2), 1e-12);
  }

  /** Hardness by hand: 65 all martensite, 50 half, 30 none, at 1.4, 0.85 and 0.45. */
  @ParameterizedTest
  @CsvSource({"2, 65", "1.4, 65", "1.125, 57.5", "0.85, 50", "0.65, 40", "0.45, 30", "0.2, 30"})
  void hardnessRunsStraightBetweenThree(double margin, double expected) {
    assertEquals(expected, hrc(margin).value(), 1e-9);
  }

  /**
   * Where half martensite would be harder than all, or none harder than half, the softer counts.
   */
  @Test
  void neverHarderThanAllMartensite() {
    Estimate all = new Estimate(45, 45, 45, "judgement", List.of());
    assertEquals(45, rule.hrc(1, all, 50, 48).value(), 1e-12);
    assertEquals(45, rule.hrc(0.1, all, 50, 48).value(), 1e-12);
  }

  /** The band is that of the margin, 35 % either way, and that of the hardness of all. */
  @Test
  void theBandIsOfTheMargin() {
    assertEquals(hrc(0.65).value(), hrc(1).low(), 1e-9);
    assertEquals(hrc(1.35).value(), hrc(1).high(), 1e-9);
    Estimate wide = rule.hrc(9, new Estimate(65, 60, 67, "judgement", List.of()), 50, 30);
    assertEquals(60, wide.low());
    assertEquals(67, wide.high());
  }

  private Estimate hrc(double margin) {
    return rule.hrc(margin, new Estimate(65, 65, 65, "judgement", List.of()), 50, 30);
  }

  /**
   * What did not harden is 8 HRC harder from a bath than bars from air, never softer than from air.
   */
  @ParameterizedTest
  @CsvSource({
    "AIR, 20, 22, 22",
    "INSULATION, 20, 22, 22",
    "OIL, 22, 26, 30",
    "WATER, 22, 26, 30",
    "SALT, 22, 31, 31",
    "AIR, -6, -4, 0",
    "OIL, -14, -12, 0",
    "PLATES, -4, -2, 4"
  })
  void softHardness(Quenchant.Kind kind, double bar, double inAir, double expected) {
    assertEquals(expected, rule.softHrc(kind, bar, inAir), 1e-12);
  }
}
