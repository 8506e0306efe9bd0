package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.support.Ran;

/** Nickel beside steel dissolves a little of its carbon, the less the cooler, and binds none. */
class NickelCarbonTest {
  private static double inNickel(int celsius, String hours) {
    Ran ran =
        Ran.run(
            "migrate",
            "1095",
            "Ni201",
            "--layer",
            "2mm,0.1mm",
            "--at",
            celsius + "C",
            "--for",
            hours,
            "--json");
    return ran.number("second.meanCarbonPct");
  }

  /**
   * Graphite in nickel: 0.09 to 0.10 % at 852 C, 0.19 at 999 C (J.C. Swartz, Metall. Trans. 2
   * (1971) 2318), or 0.156 and 0.26 (J.J. Lander and others, J. Appl. Phys. 23 (1952) 1305), both
   * from memory. Steel holds its carbon at no more than graphite's activity there.
   */
  @ParameterizedTest
  @CsvSource({"852, 0.095, 0.156", "999, 0.19, 0.26"})
  void itDissolvesHardlyMoreThanGraphiteWouldGiveIt(int celsius, double least, double most) {
    double carbon = inNickel(celsius, "10h");
    assertTrue(carbon > 0.4 * least && carbon < 1.1 * most, carbon + " %");
  }

  /** It was a sink for carbon below A1: 0.42 % after an hour at 650 C, and more with each hour. */
  @ParameterizedTest
  @ValueSource(ints = {600, 650, 700})
  void belowA1ItComesToAnEnd(int celsius) {
    double day = inNickel(celsius, "24h");
    assertTrue(day < 0.12, day + " % at " + celsius);
    assertEquals(day, inNickel(celsius, "72h"), 0.01);
  }
}
