package seamsoak.property;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import seamsoak.data.DataFolder;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/** What has to hold along a temperature-time curve, whatever the coefficients are. */
class HistoryTest {
  private final Correlations k = Correlations.load(DataFolder.packed());
  private static final Composition STEEL =
      Composition.of(Map.of(Element.C, 0.84, Element.MN, 0.75, Element.SI, 0.22));

  private double after(double start, double[] seconds, double[] kelvin) {
    return k.forging()
        .grainGrowth()
        .metresAfter(STEEL, start, seconds, kelvin, t -> Double.POSITIVE_INFINITY);
  }

  @Test
  void aHoldIsTheIsothermalLaw() {
    double hold = after(0, new double[] {0, 600}, new double[] {1423, 1423});
    assertEquals(k.forging().grainGrowth().metres(STEEL, 1423, 600), hold, 1e-12 * hold);
  }

  @Test
  void aCurveMayBeTakenInPieces() {
    double whole = after(0, new double[] {0, 300, 900}, new double[] {1123, 1423, 1423});
    double first = after(0, new double[] {0, 300}, new double[] {1123, 1423});
    double second = after(first, new double[] {0, 600}, new double[] {1423, 1423});
    assertEquals(whole, second, 1e-12 * whole);
  }

  @Test
  void aRampDoesNotDependOnItsCorners() {
    double straight = after(0, new double[] {0, 600}, new double[] {1073, 1473});
    int n = 4000;
    double[] seconds = new double[n + 1];
    double[] kelvin = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      seconds[i] = 600.0 * i / n;
      kelvin[i] = 1073 + 400.0 * i / n;
    }
    assertEquals(after(0, seconds, kelvin), straight, 1e-6 * straight);
  }

  @Test
  void aLowHeatAfterAHighOneAddsLittle() {
    double high = after(0, new double[] {0, 600}, new double[] {1473, 1473});
    double both = after(high, new double[] {0, 600}, new double[] {1073, 1073});
    assertTrue(both > high && both < 1.01 * high);
  }

  @Test
  void noGrowthWithoutTime() {
    assertEquals(20e-6, after(20e-6, new double[] {0, 0}, new double[] {1423, 1423}), 1e-15);
  }

  @Test
  void grainNumberAndInterceptAreInverse() {
    for (double g = -2; g <= 15; g += 0.5) {
      assertEquals(
          g, k.forging().grainNumber().number(k.forging().grainNumber().interceptMetres(g)), 1e-12);
    }
  }

  @Test
  void austeniteIsAllThereAboveMs() {
    assertEquals(1, k.hardening().retained().retained(STEEL, 200, 250).value());
  }
}
