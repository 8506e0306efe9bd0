package seamsoak.property.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.property.Correlations;
import seamsoak.support.Analyses;

/** How activity, mobility and surface belong together; their figures are reference rows. */
class CarbonPropertiesTest {
  private static final Correlations K = Analyses.CORRELATIONS;

  /** Agren's bracket is the thermodynamic factor of Gustafson's austenite. */
  @ParameterizedTest
  @ValueSource(doubles = {800, 1000, 1250})
  void mobilityAndActivityBelongTogether(double celsius) {
    double t = celsius + 273.15;
    MetalLattice iron = MetalLattice.of(Analyses.of(""));
    AusteniteActivity.Isotherm a = new AusteniteActivity(K.phases().activity(), iron).at(t);
    for (double percent : new double[] {0.1, 0.4, 0.8, 1.2}) {
      double y = iron.ratio(percent);
      assertEquals(1 + y * (1 - y) * 8339.9 / t, a.thermodynamicFactor(y), 1e-5);
    }
  }

  @Test
  void halfTheCarbonMonoxideIsHalfTheActivity() {
    double half = K.phases().scaledSurface().lnActivity(1100, 0.5);
    assertEquals(Math.log(0.5), half - K.phases().scaledSurface().lnActivity(1100, 1), 1e-12);
  }

  @Test
  void ratioAndPercentAreInverse() {
    for (String name : Analyses.names()) {
      MetalLattice l = MetalLattice.of(Analyses.named(name));
      for (double pct = 0; pct < 8; pct += 0.37) {
        assertEquals(pct, l.percent(l.ratio(pct)), 1e-12, name);
      }
    }
    MetalLattice iron = MetalLattice.of(Analyses.of(""));
    assertEquals(1.0 / 3, iron.ratio(6.6890), 1e-4);
  }
}
