package seamsoak.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import seamsoak.support.Ran;

/** Values that the commands must show, by way of their JSON. */
class AnchorTest {

  /**
   * The welded couple with silicon on one side of L.S. Darken, Trans. AIME 180 (1949) 430, 13 days
   * at 1050 C. His interface values, 0.315 and 0.586, are from memory; a simulation from the bulk
   * analyses alone, made apart from this program, gave 0.318 and 0.583, with 0.004 to accept.
   */
  @Test
  void carbonRunsUphillIntoTheSteelWithoutSilicon() {
    Ran ran =
        Ran.run(
            "migrate",
            "C0.478 Si3.80",
            "C0.441",
            "--layer",
            "120mm",
            "--at",
            "1050C",
            "--for",
            "312h",
            "--json");
    assertEquals(0, ran.code(), ran.err());
    assertEquals(0.318, ran.number("first.seamCarbonPct"), 0.004);
    assertEquals(0.583, ran.number("second.seamCarbonPct"), 0.004);
    assertTrue(Math.abs(ran.number("massErrorRelative")) < 1e-12);
    assertEquals(312 * 60, ran.number("minutes"), 1e-6);
  }

  /**
   * A thick piece of 0.85 % carbon open for an hour at 1000 C, against values computed apart from
   * this program with scale moving the face on; 2 % to accept.
   */
  @Test
  void anHourOpenToTheFireLeavesThisSkin() {
    Ran ran = Ran.run("decarb", "C0.85", "--at", "1000C", "--for", "60min", "--json");
    assertEquals(0, ran.code(), ran.err());
    close(0.127, ran.number("metalLossMm"));
    close(0.218, ran.number("depthMm.to50Pct"));
    close(0.722, ran.number("depthMm.to90Pct"));
    close(1.126, ran.number("depthMm.to98Pct"));
  }

  private static void close(double expected, double found) {
    assertEquals(expected, found, 0.02 * expected);
  }
}
