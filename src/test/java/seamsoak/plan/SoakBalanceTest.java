package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import seamsoak.billet.Billet;
import seamsoak.data.DataFolder;
import seamsoak.safety.CautionTable;
import seamsoak.soak.SoakAdvice;
import seamsoak.soak.SoakAdvice.Recommended;
import seamsoak.soak.SoakCost;
import seamsoak.soak.SoakReason;
import seamsoak.state.Progress;
import seamsoak.support.Demos;
import seamsoak.support.Walks;
import seamsoak.unit.UnitSystem;
import seamsoak.words.SoakAnswerWords;

/** A soak weighs time, grain and skin, and where nothing may show it asks for a look first. */
class SoakBalanceTest {
  private static SoakAdvice soak(Billet billet, int samples) {
    CautionTable cautions = CautionTable.load(DataFolder.packed());
    return new PlanAdvisor(Walks.CORRELATIONS, cautions, samples)
        .advise(billet, Progress.NONE)
        .soak();
  }

  /** The demo may soak for 30 min; the coolest that would do takes nearly all of it. */
  @Test
  void notAllThatIsAllowedIsSpent() {
    SoakAdvice soak = soak(Demos.of("mosaic"), 32);
    Recommended r = soak.recommended().orElseThrow();
    assertEquals(SoakReason.Kind.BALANCED_BY_HISTORIES, r.reason().kind());
    SoakCost cost = r.reason().cost().orElseThrow();
    SoakCost coolest = r.reason().coolest().orElseThrow();
    assertEquals(r.minutes(), cost.minutes(), 0);
    assertTrue(cost.minutes() < 0.75 * soak.mostMinutes(), cost.toString());
    assertTrue(coolest.minutes() > cost.minutes() && coolest.grainAstm() > cost.grainAstm());
    assertTrue(cost.temperatureC() <= soak.highestForgingC());
  }

  /** Its middle estimate is 0: a test etch may spare the soak. */
  @Test
  void whereTheBandBeginsAtNothingATestEtchComesFirst() {
    SoakAdvice soak = soak(Demos.of("mosaic"), 32);
    assertEquals(0, soak.recommended().orElseThrow().minutesLow().orElseThrow(), 0);
    String says = new SoakAnswerWords(soak, UnitSystem.METRIC).says();
    assertTrue(says.startsWith("Test etch first; only if it shows a line, soak at"), says);
    assertTrue(soak.recommended().get().reason().seenFirst());
  }

  /** An eye to which all of it shows needs no look first. */
  @Test
  void whatSurelyShowsIsSoaked() {
    SoakAdvice soak = soak(Demos.keenEyed("mosaic"), 0);
    Recommended r = soak.recommended().orElseThrow();
    assertTrue(r.minutes() > 0);
    assertFalse(r.reason().seenFirst());
    assertTrue(
        new SoakAnswerWords(soak, UnitSystem.METRIC).says().startsWith("Soak at"), r.toString());
  }
}
