package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
