package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.data.DataFolder;
import seamsoak.property.Correlations;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;
import seamsoak.support.Ran;

/** Ferrite beside chromium carbide has not the activity of ferrite beside cementite. */
class ChromiumCarbideTest {
  private static Ran beside304(String steel, String heat, String... more) {
    return Ran.run(
        Stream.concat(
                Stream.of("migrate", steel, "304", "--layer", "1mm", "--for", "1h", "--at", heat),
                Stream.of(more))
            .toArray(String[]::new));
  }

  /** About 0.07 % dissolves at 1000 C and 0.16 % at 1100 C: Deighton 1970, from memory. */
  @ParameterizedTest
  @CsvSource({"1000, 0.0699", "1100, 0.1597"})
  void stainlessSteelDissolvesLittleOfWhatItTakesUp(int celsius, double most) {
    Ran ran = beside304("1095", celsius + "C", "--json");
    assertEquals(most, ran.number("second.dissolved.mostPct"), 1e-4);
    assertEquals(most, ran.number("second.dissolved.seamPct"), 1e-4);
    assertTrue(ran.number("second.seamCarbonPct") > 3 * most, ran.out());
    assertTrue(ran.number("second.dissolved.meanPct") <= most + 1e-4, ran.out());
    assertEquals(2, ran.out().split("mostPct", -1).length, "none told of 1095");
  }

  /** All of it is in solution where there is less than dissolves. */
  @Test
  void stainlessSteelByItselfDissolvesAllAtHeat() {
    Ran ran = beside304("304", "1100C", "--json");
    assertEquals(ran.number("second.meanCarbonPct"), ran.number("second.dissolved.meanPct"), 1e-6);
  }

  /** Only what is dissolved moves: twice as much carbon as dissolves moves half as fast. */
  @ParameterizedTest
  @CsvSource({"304, 900", "304, 1100", "316, 1000"})
  void carbideLiesStill(String grade, double celsius) {
    Steel steel = SteelTable.load(DATA).find(grade).orElseThrow();
    CarbonInSteel law = new CarbonInSteel(Correlations.load(DATA), steel.analysis(), 1);
    double kelvin = celsius + 273.15;
    CarbonLaw.Isotherm free = new SteelIsotherm(law, kelvin);
    CarbonLaw.Isotherm laden = law.at(kelvin);
    double dissolves =
        law.lattice()
            .ratio(law.phases().orElseThrow().besideChromiumCarbidePct(celsius).orElseThrow());
    for (double times : new double[] {0.5, 1, 2, 4}) {
      double y = times * dissolves;
      double share = Math.min(1, 1 / times);
      assertEquals(
          share * free.potentialSlope(y), laden.potentialSlope(y), 1e-12 * free.potentialSlope(y));
      assertEquals(share * free.mobility(y), laden.mobility(y), 1e-12 * free.mobility(y));
      assertEquals(free.activity(y), laden.activity(y));
    }
    // by the trapezoids of its slope
    double sum = 0;
    int parts = 20_000;
    double wide = 3 * dissolves / parts;
    for (int i = 0; i < parts; i++) {
      double y = dissolves + (i + 0.5) * wide;
      sum += wide * laden.potentialSlope(y);
    }
    double rise = laden.potential(4 * dissolves) - laden.potential(dissolves);
    assertEquals(sum, rise, 1e-6 * rise);
  }

  /** So it gathers near the seam: 1 h at 1000 C leaves the middle of a millimeter poor. */
  @Test
  void carbideGathersNearTheSeam() {
    Ran ran = beside304("1095", "1000C", "--json");
    assertTrue(
        ran.number("second.midCarbonPct") < 0.2 * ran.number("second.seamCarbonPct"), ran.out());
  }

  @Test
  void cooledFarBelowHardlyAnyIsDissolved() {
    String told = beside304("1095", "700C").out().replaceAll("\\s+", " ");
    assertTrue(told.contains("In 304 all but a trace of that lies as chromium carbide"), told);
    assertFalse(told.contains("304 holds no austenite"), "it is austenite at every heat");
  }

  @Test
  void carbideIsToldInWords() {
    String told = beside304("1095", "1000C").out().replaceAll("\\s+", " ");
    assertTrue(told.contains("In 304 0.07 % of that is dissolved and"), told);
    assertTrue(told.contains("no more than 0.07 % dissolves beside it"), told);
    String plain =
        Ran.run("migrate", "1095", "1018", "--layer", "1mm", "--for", "1h", "--at", "1000C").out();
    assertFalse(plain.contains("dissolve"), plain);
  }

  private static final DataFolder DATA = DataFolder.packed();

  /** Ferrite, carbide and austenite stand beside each other at A1, so it cannot jump there. */
  @ParameterizedTest
  @ValueSource(strings = {"S7", "A2", "D2", "410", "416", "420", "440C"})
  void activityBesideCarbideGoesOnAtA1(String grade) {
    Steel steel = SteelTable.load(DATA).find(grade).orElseThrow();
    CarbonInSteel law = new CarbonInSteel(Correlations.load(DATA), steel.analysis(), 1);
    double a1 = law.jumpKelvin();
    double carbide = law.lattice().ratio(2.5);
    double below = Math.log(law.at(a1 - 0.01).activity(carbide));
    double above = Math.log(law.at(a1 + 0.01).activity(carbide));
    assertEquals(above, below, 0.01);
    assertTrue(below < -0.5, "far below cementite");
  }

  /**
   * From mild steel, and from steel of little chromium, into chromium steel, at any heat below its
   * A1: B.M. Race and H.K.D.H. Bhadeshia, Carbon migration across dissimilar steel welds,
   * International Trends in Welding Science and Technology (1992).
   */
  @ParameterizedTest
  @CsvSource({"1018, A2, 780", "1018, A2, 700", "O1, A2, 780", "1018, 410, 720", "1095, D2, 700"})
  void carbonGoesIntoChromiumSteelBelowItsA1(String mild, String chromium, int celsius) {
    Ran ran =
        Ran.run(
            "migrate",
            mild,
            chromium,
            "--layer",
            "1mm",
            "--at",
            celsius + "C",
            "--for",
            "2h",
            "--json");
    assertTrue(ran.number("second.meanCarbonPct") > ran.number("second.startCarbonPct"), ran.out());
    assertTrue(ran.number("first.meanCarbonPct") < ran.number("first.startCarbonPct"), ran.out());
  }
}
