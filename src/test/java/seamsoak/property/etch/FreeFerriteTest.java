package seamsoak.property.etch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import seamsoak.data.DataFolder;
import seamsoak.heat.HeatCurve;
import seamsoak.heat.Section;
import seamsoak.property.Correlations;
import seamsoak.property.phase.PhaseLines;
import seamsoak.steel.Composition;
import seamsoak.steel.SteelTable;

class FreeFerriteTest {
  private final Correlations k = Correlations.load(DataFolder.packed());
  private final PhaseLines plain = lines("C0.865 Mn0.75 Si0.25");

  private PhaseLines lines(String analysis) {
    return k.lines(Composition.parse(analysis));
  }

  private FreeFerrite.Shares cooled(PhaseLines steel, double kelvinPerSecond, double grain) {
    return k.etching().ferrite(steel, Descent.steady(900, kelvinPerSecond), grain).beside(0.76);
  }

  @Test
  void theFasterTheLess() {
    double before = 1;
    for (double rate : new double[] {0.006, 0.1, 1, 3, 10, 50}) {
      double share = cooled(plain, rate, 8).at(0.55).middle();
      assertTrue(share < before, "at " + rate + " K/s");
      before = share;
    }
  }

  @Test
  void theMoreCarbonTheLessInEveryPartOfTheBand() {
    FreeFerrite.Shares shares = cooled(plain, 1, 7);
    for (double place = 0; place <= 1; place += 0.25) {
      double before = 1;
      for (double carbon = 0.03; carbon < 1.2; carbon += 0.01) {
        double share = shares.at(carbon).at(place);
        assertTrue(share <= before + 1e-12, carbon + " % at " + place);
        assertTrue(share >= 0);
        before = share;
      }
    }
  }

  /** A seam of 125Cr1 with 0.82 % got a soak of 56 minutes. */
  @Test
  void noneAboveTheEutectoid() {
    PhaseLines rich = lines("C1.25 Mn0.325 Si0.25 Cr0.3");
    for (double rate : new double[] {0.001, 0.006, 1}) {
      assertEquals(Band.of(0), cooled(rich, rate, 6).at(0.82), "at " + rate + " K/s");
    }
  }

  @Test
  void eachSteelHasItsOwnPearlite() {
    double steel = air(plain, 6).pearliteCelsius(0.76);
    double nickel = air(lines("C0.75 Mn0.40 Si0.25 Ni1.95"), 6).pearliteCelsius(0.75);
    assertEquals(676, steel, 3);
    assertEquals(614, nickel, 12);
  }

  private FreeFerrite air(PhaseLines steel, double millimetres) {
    HeatCurve curve =
        k.sections().austeniteInAir(Section.plate(millimetres / 1e3), 1173.15, 753.15).core(2);
    return k.etching().ferrite(steel, Descent.of(curve), 8);
  }

  @Test
  void whatAHeatBelowA3LeavesStays() {
    PhaseLines lean = lines("C0.30 Mn0.75 Si0.25");
    double left = FreeFerrite.share(lean.austeniteBesideFerritePct(760), 0.30);
    Band fast = k.etching().ferrite(lean, Descent.steady(760, 50), 8).beside(0.30).at(0.30);
    assertTrue(left > 0.3);
    assertEquals(left, fast.low(), 1e-12);
    assertEquals(left, fast.high(), 1e-12);
  }

  @Test
  void noneWhereNickelKeepsAllAustenite() {
    assertEquals(Band.of(0), cooled(lines("Ni99"), 1, 8).at(0.1));
  }

  @Test
  void finiteForEverySteel() {
    for (var steel : SteelTable.load(DataFolder.packed()).steels()) {
      FreeFerrite ferrite =
          k.etching().ferrite(k.lines(steel.analysis()), Descent.steady(900, 2), 7);
      FreeFerrite.Shares shares = ferrite.beside(steel.analysis().carbon());
      for (double carbon = 0; carbon < 2.2; carbon += 0.05) {
        Band band = shares.at(carbon);
        assertTrue(band.least(Band.of(1)).equals(band), () -> steel.id() + " " + band);
        assertTrue(band.most(Band.of(0)).equals(band), () -> steel.id() + " " + band);
      }
    }
  }

  @Test
  void aDescentCountsHoldsAndForgetsWhatCameBefore() {
    HeatCurve twice =
        new HeatCurve(
            List.of(
                new HeatCurve.Segment(1100, 900, 5),
                new HeatCurve.Segment(900, 1150, 60),
                new HeatCurve.Segment(1150, 923.15 + 0.4, 100),
                new HeatCurve.Segment(923.15 + 0.4, 923.15 + 0.4, 7200),
                new HeatCurve.Segment(923.15 + 0.4, 700, 50)));
    Descent descent = Descent.of(twice);
    int held = Descent.HIGHEST - 651;
    double perKelvin = 100 / (1150 - 923.55);
    assertEquals(perKelvin, descent.seconds()[held - 10], 1e-9);
    assertEquals(0, descent.seconds()[10]);
    assertEquals(7200, descent.seconds()[held], 1);
    assertEquals(50 / (923.55 - 700), descent.seconds()[held + 10], 1e-9);
    assertEquals(1150 - 273.15, descent.fromCelsius(), 1e-9);
  }
}
