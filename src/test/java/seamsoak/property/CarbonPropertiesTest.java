package seamsoak.property;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.data.DataFolder;

/** Activity, mobility and surface carbon against published figures and other hands' arithmetic. */
class CarbonPropertiesTest {
  private final Correlations k = Correlations.load(DataFolder.packed());

  /**
   * Agren 1986 with its thermodynamic factor, 1e-11 m2/s; and that the two factors belong together.
   */
  @ParameterizedTest
  @CsvSource({
    "800, 0.171, 0.245, 0.391, 0.617", "900, 0.692, 0.957, 1.456, 2.192",
    "1000, 2.251, 3.014, 4.404, 6.375", "1100, 6.161, 8.034, 11.34, 15.87",
    "1250, 21.78, 27.46, 37.09, 49.75"
  })
  void diffusivityInAustenite(double celsius, double d1, double d4, double d8, double d12) {
    double t = celsius + 273.15;
    MetalLattice iron = MetalLattice.of(Analyses.of(""));
    AusteniteActivity.At a = new AusteniteActivity(k.activity(), iron).at(t);
    double[] percent = {0.1, 0.4, 0.8, 1.2};
    double[] expected = {d1, d4, d8, d12};
    for (int i = 0; i < 4; i++) {
      double y = iron.ratio(percent[i]);
      double b = k.mobility().squareMetresPerSecond(t, y);
      assertEquals(expected[i], 1e11 * b * a.thermodynamicFactor(y), 1.5e-3 * expected[i]);
      assertEquals(1 + y * (1 - y) * 8339.9 / t, a.thermodynamicFactor(y), 1e-5);
    }
  }

  /** Agren 1982, m2/s. */
  @ParameterizedTest
  @CsvSource({
    "500, 4.25e-12",
    "600, 1.91e-11",
    "700, 6.29e-11",
    "727, 8.33e-11",
    "800, 1.66e-10",
    "850, 2.53e-10",
    "900, 3.72e-10"
  })
  void diffusivityInFerrite(double celsius, double d) {
    assertEquals(d, k.ferriteDiffusivity().squareMetresPerSecond(celsius + 273.15), 4e-3 * d);
  }

  /** Wert, Phys. Rev. 79 (1950) 601: 0.02 cm2/s, 20100 cal/mol; stated to agree within 3 %. */
  @ParameterizedTest
  @ValueSource(doubles = {500, 600, 700, 800, 912})
  void ferriteAsWertMeasured(double celsius) {
    double t = celsius + 273.15;
    double wert = 2e-6 * Math.exp(-20100 / (1.987 * t));
    assertEquals(wert, k.ferriteDiffusivity().squareMetresPerSecond(t), 0.04 * wert);
  }

  /** log10 of the carbon of plain iron at the same activity over the steel's, 1 wt% at 1000 C. */
  @ParameterizedTest
  @CsvSource({
    "Si1, 0.067, 0.060, 0.054", "Mn1, -0.0149, -0.0135, -0.0123", "Cr1, -0.0414, -0.0382, -0.0354",
    "Ni1, 0.0154, 0.0137, 0.0123", "Mo1, -0.0202, -0.0182, -0.0165", "V1, -0.072, -0.067, -0.063",
    "W1, -0.0073, -0.0064, -0.0056"
  })
  void alloyFactor(String alloy, double at2, double at5, double at8) {
    assertEquals(at2, alloyFactor(alloy, 0.2), 6e-4);
    assertEquals(at5, alloyFactor(alloy, 0.5), 6e-4);
    assertEquals(at8, alloyFactor(alloy, 0.8), 6e-4);
  }

  /** S. Gunnarson, Harterei-Tech. Mitt. 22 (1967) 293, from memory: an independent rule. */
  @ParameterizedTest
  @CsvSource({"Si1, 0.055", "Mn1, -0.013", "Cr1, -0.040", "Ni1, 0.014", "Mo1, -0.013"})
  void alloyFactorAsGunnarsonMeasured(String alloy, double factor) {
    assertEquals(factor, alloyFactor(alloy, 0.5), 0.006);
  }

  /** log10 of the activity over that of plain iron with as much carbon, 0.5 wt% at 1000 C. */
  @ParameterizedTest
  @CsvSource({"Si0.2, 0.0135", "Si1, 0.0716", "Si2, 0.152", "Si3.8, 0.312"})
  void siliconFarPastTheUsual(String alloy, double expected) {
    double steel = lnActivity("C0.5 " + alloy, 0.5);
    assertEquals(expected, (steel - lnActivity("", 0.5)) / Math.log(10), 0.001);
  }

  private double lnActivity(String analysis, double percent) {
    MetalLattice lattice = MetalLattice.of(Analyses.of(analysis));
    return new AusteniteActivity(k.activity(), lattice)
        .at(1273.15)
        .lnActivity(lattice.ratio(percent));
  }

  private double alloyFactor(String alloy, double percent) {
    double t = 1273.15;
    MetalLattice steel = MetalLattice.of(Analyses.of("C" + percent + " " + alloy));
    MetalLattice iron = MetalLattice.of(Analyses.of(""));
    double ln = new AusteniteActivity(k.activity(), steel).at(t).lnActivity(steel.ratio(percent));
    double plain = iron.percent(new AusteniteActivity(k.activity(), iron).at(t).ratioAt(ln));
    return Math.log10(plain / percent);
  }

  /** Activity of steels at 1000 C, nominal analyses. */
  @ParameterizedTest
  @CsvSource({"1084, 0.439", "1095, 0.523", "52100, 0.487", "5160, 0.266"})
  void activityOfSteels(String name, double activity) {
    MetalLattice l = MetalLattice.of(Analyses.named(name));
    double ln =
        new AusteniteActivity(k.activity(), l)
            .at(1273.15)
            .lnActivity(l.ratio(Analyses.named(name).carbon()));
    assertEquals(activity, Math.exp(ln), 0.02 * activity);
  }

  /** Under scale with 1 atm CO. The table is of the longer form, hence 3 % and its last digit. */
  @ParameterizedTest
  @CsvSource({
    "700, 1.51",
    "750, 0.596",
    "800, 0.257",
    "850, 0.120",
    "900, 0.0599",
    "1000, 0.0176",
    "1100, 0.0062",
    "1200, 0.0026"
  })
  void activityUnderScale(double celsius, double activity) {
    double a = Math.exp(k.scaledSurface().lnActivity(celsius + 273.15, 1));
    assertEquals(activity, a, 0.03 * activity + 5e-5);
  }

  @Test
  void scaleStopsTakingCarbonAt721() {
    assertEquals(0, k.scaledSurface().lnActivity(721 + 273.15, 1), 0.02);
    double half = k.scaledSurface().lnActivity(1100, 0.5);
    assertEquals(Math.log(0.5), half - k.scaledSurface().lnActivity(1100, 1), 1e-12);
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
