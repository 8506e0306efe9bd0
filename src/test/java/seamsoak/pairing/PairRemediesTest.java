package seamsoak.pairing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import seamsoak.support.KnownPairs;

/** What would make a pair work is tried out, not recited. */
class PairRemediesTest {
  private final KnownPairs known = new KnownPairs();
  private final PairRemedies remedies = new PairRemedies(known.check);

  private List<Remedy> of(String first, String second, PairSetting s) {
    return remedies.of(known.of(first, second, s), s);
  }

  @Test
  void aPairThatFitsNeedsNone() {
    assertTrue(of("1084", "75Ni8", KnownPairs.USUAL).isEmpty());
    assertTrue(
        remedies
            .insteadOfSecond(known.of("1084", "75Ni8"), known.all(), KnownPairs.USUAL)
            .isEmpty());
  }

  @Test
  void chromiumIsHelpedByAClosedStackAndThatMakes52100Better() {
    Remedy first = of("1084", "52100", KnownPairs.USUAL).get(0);
    assertTrue(first.change() == Remedy.Change.CLOSED_STACK, first.toString());
    assertTrue(first.better().contains("chromium oxide"), first.toString());
  }

  @Test
  void theLowerWeldingHeatKeepsTheMarginAskedFor() {
    Remedy cooler =
        of("1084", "C105U", KnownPairs.USUAL).stream()
            .filter(r -> r.change() == Remedy.Change.LOWER_WELDING_HEAT)
            .findFirst()
            .orElseThrow();
    double margin = known.check.limits().of(CheckName.SOLIDUS_MARGIN).watch().orElseThrow();
    double melts = known.steel("C105U").limits().solidusCelsius();
    double heat = cooler.setting().weldingCelsius().orElseThrow();
    assertEquals(melts - margin, heat, 5);
    assertTrue(heat <= melts - margin);
    assertEquals(
        Rating.FITS,
        known
            .of("1084", "C105U", KnownPairs.USUAL.weldedAt(heat))
            .check(CheckName.SOLIDUS_MARGIN)
            .orElseThrow()
            .rating());
  }

  @Test
  void theThickerLayerIsTheThinnestThatWillDo() {
    PairSetting thin = KnownPairs.setting(0.8);
    Remedy thicker =
        of("1084", "PUREIRON", thin).stream()
            .filter(r -> r.change() == Remedy.Change.THICKER_LAYERS)
            .findFirst()
            .orElseThrow();
    double millimetres = 1e3 * thicker.setting().firstMetres();
    assertEquals(Rating.FITS, loss(millimetres));
    assertEquals(Rating.WATCH, loss(0.97 * millimetres));
  }

  private Rating loss(double millimetres) {
    return known
        .of("1084", "PUREIRON", KnownPairs.setting(millimetres))
        .check(CheckName.CARBON_LOSS)
        .orElseThrow()
        .rating();
  }

  @Test
  void theOtherGradesFitAndAreTheNearest() {
    PairResult now = known.of("1084", "O1");
    List<PairAdvice.Near> near = remedies.insteadOfSecond(now, known.all(), KnownPairs.USUAL);
    assertEquals(3, near.size());
    double last = 0;
    for (PairAdvice.Near n : near) {
      assertEquals(Rating.FITS, known.of("1084", n.id()).rating(), n.id());
      assertTrue(n.distance() >= last);
      last = n.distance();
      assertFalse(n.id().equals("1084") || n.id().equals("O1"));
    }
  }

  @Test
  void aSteelThatNeedsAClosedStackIsOfferedGradesForThat() {
    List<PairAdvice.Near> near =
        remedies.insteadOfSecond(known.of("52100", "1084"), known.all(), KnownPairs.USUAL);
    assertEquals(3, near.size());
    for (PairAdvice.Near n : near) {
      assertTrue(n.closedStack());
      assertEquals(
          Rating.FITS,
          known.of("52100", n.id(), KnownPairs.USUAL.inClosedStack()).rating(),
          n.id());
    }
  }

  @Test
  void noRemedyIsNamedThatImprovesNothing() {
    for (PairSteel s : known.all()) {
      PairResult now = known.check.of(known.steel("1084"), s, KnownPairs.USUAL);
      for (Remedy r : remedies.of(now, KnownPairs.USUAL)) {
        assertFalse(r.better().isEmpty());
        assertTrue(r.rating().compareTo(now.rating()) <= 0, s.id() + " " + r);
      }
    }
  }
}
