package seamsoak.carbon.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Handbook values (M. Abramowitz, I.A. Stegun, Handbook of Mathematical Functions, table 7.1). */
class ErfTest {
  @Test
  void handbookValues() {
    assertEquals(0.5204998778, Erf.erf(0.5), 1e-10);
    assertEquals(0.8427007929, Erf.erf(1), 1e-10);
    assertEquals(-0.9953222650, Erf.erf(-2), 1e-10);
    assertEquals(2.209049700e-5, Erf.erfc(3), 1e-14);
    assertEquals(1.537459794e-12, Erf.erfc(5), 1e-20);
  }

  @Test
  void seriesMeetsFraction() {
    double slope = 2 / Math.sqrt(Math.PI) * Math.exp(-6.25);
    assertEquals(2e-9 * slope, Erf.erfc(2.5 - 1e-9) - Erf.erfc(2.5 + 1e-9), 1e-14);
  }
}
