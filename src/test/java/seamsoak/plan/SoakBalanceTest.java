package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import seamsoak.billet.Billet;
import seamsoak.billet.Seen;
import seamsoak.chart.figure.FadingFigure;
import seamsoak.chart.figure.FadingFigures;
import seamsoak.data.DataFolder;
import seamsoak.safety.CautionTable;
import seamsoak.schedule.ScheduleAdvice;
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

  /** The demo may soak for 30 min, and nothing within that does in nine of ten such billets. */
  @Test
  void notAllThatIsAllowedIsSpent() {
    SoakAdvice soak = soak(Demos.of("mosaic"), 32);
    Recommended r = soak.recommended().orElseThrow();
    assertEquals(SoakReason.Kind.BALANCED_BY_LIKELY, r.reason().kind());
    double sure = r.clearsPct().orElseThrow();
    assertTrue(sure > 50 && sure < 90, r.toString());
    SoakCost cost = r.reason().cost().orElseThrow();
    SoakCost coolest = r.reason().coolest().orElseThrow();
    assertEquals(r.minutes(), cost.minutes(), 0);
    assertTrue(cost.minutes() < 0.75 * soak.mostMinutes(), cost.toString());
    assertTrue(coolest.minutes() > cost.minutes() && coolest.grainAstm() > cost.grainAstm());
    assertTrue(cost.temperatureC() <= soak.highestForgingC());
  }

  /** The likely case knows nothing of what an etch showed, so its minutes say nothing then. */
  @Test
  void aLineThatWasSeenIsSoakedForTheCasesItLeaves() {
    String roll = "\"heats\": [{ \"at\": \"2000 F\", \"for\": \"2 min\" }] }";
    String text = Demos.text("mosaic");
    assertTrue(text.contains(roll), text);
    String seen = ", \"seen\": { \"where\": \"tiles 11\", \"line\": \"faint\" } }";
    SoakAdvice soak =
        soak(Walks.billet(text.replace(roll, roll.substring(0, roll.length() - 2) + seen)), 32);
    Recommended r = soak.recommended().orElseThrow();
    double clean = soak.goneByScheduleAlonePct().orElseThrow();
    assertTrue(clean < 90, r.toString());
    assertTrue(r.clearsPct().orElseThrow() >= 0.5 * (100 + clean), r.toString());
  }

  /**
   * Where the blade comes clean without at least as likely as not, the answer is to go on, and to
   * soak only what an etch still to come shows; whoever has soaked and seen nothing is not sent
   * back.
   */
  @Test
  void nothingSeenAfterASoakIsNotSoakedAgainUnlooked() {
    String rolled = "{ \"at\": \"2000 F\", \"for\": \"2 min\" }] }";
    String soaked =
        rolled + ", { \"do\": \"soak\", \"heats\": [{ \"at\": \"1960 F\", \"for\": \"17 min\" }]";
    String text = Demos.text("mosaic");
    assertTrue(text.contains(rolled), text);
    assertFirst(Optional.of(Seen.Etched.AS_COOLED), text.replace(rolled, soaked + " }"));
    String none = ", \"seen\": { \"where\": \"tile\", \"line\": \"none\"%s } }";
    assertFirst(
        Optional.of(Seen.Etched.ANNEALED), text.replace(rolled, soaked + none.formatted("")));
    assertFirst(
        Optional.of(Seen.Etched.HARDENED),
        text.replace(rolled, soaked + none.formatted(", \"etched\": \"annealed\"")));
    assertFirst(
        Optional.empty(),
        text.replace(rolled, soaked + none.formatted("").replace("none", "plain")));
  }

  private static void assertFirst(Optional<Seen.Etched> etch, String billet) {
    SoakAdvice soak = soak(Walks.billet(billet), 16);
    Recommended r = soak.recommended().orElseThrow();
    double clean = soak.goneByScheduleAlonePct().orElseThrow();
    assertEquals(etch, r.reason().first(), soak.toString());
    assertEquals(etch.isPresent(), clean >= 50, () -> clean + " of a hundred come clean");
    String says = new SoakAnswerWords(soak, UnitSystem.METRIC).says();
    String begins =
        etch.map(
                e ->
                    switch (e) {
                      case AS_COOLED -> "Test etch first; only if it shows a line, soak at";
                      case ANNEALED ->
                          "Go on without a soak; only if an etch after the anneal shows a line,"
                              + " soak at";
                      case HARDENED ->
                          "Go on without a soak; only if the hardened blade shows a line, soak at";
                    })
            .orElse("Soak at");
    assertTrue(says.startsWith(begins), says);
  }

  /** What a test etch of the demo shows does not tell for sure what the blade will. */
  @Test
  void theAnswerIsAPlanWithItsChances() {
    SoakAdvice soak = soak(Demos.of("mosaic"), 32);
    Recommended r = soak.recommended().orElseThrow();
    assertTrue(r.minutesHalf().orElseThrow() < r.minutes());
    assertTrue(r.reason().first().isEmpty());
    SoakAdvice.TestEtch etch = soak.testEtch().orElseThrow();
    double clean = soak.goneByScheduleAlonePct().orElseThrow();
    assertTrue(etch.cleanIfNothingPct().orElseThrow() > clean, "a clean etch is good news");
    assertTrue(etch.cleanIfSomethingPct().orElseThrow() < clean);
    double all =
        (etch.showsPct() * etch.cleanIfSomethingPct().orElseThrow()
                + (100 - etch.showsPct()) * etch.cleanIfNothingPct().orElseThrow())
            / 100;
    assertEquals(clean, all, 1e-6);
    List<String> says = new SoakAnswerWords(soak, UnitSystem.METRIC).answer();
    assertTrue(says.get(1).contains("will do in half of such billets"), says.toString());
    assertTrue(says.get(2).startsWith("A test etch now shows a line in"), says.toString());
  }

  /**
   * A soak that is chosen to end where a knot just shows ends there too when the schedule is
   * carried out step by step, and the chart does not say that what is about gone shows.
   */
  @Test
  void theScheduleEndsWhereTheSoakWasChosenToEnd() {
    CautionTable cautions = CautionTable.load(DataFolder.packed());
    Advice advice =
        new PlanAdvisor(Walks.CORRELATIONS, cautions, 0).advise(Demos.of("mosaic"), Progress.NONE);
    List<ScheduleAdvice.After> after = advice.schedule().after();
    assertEquals(1, after.get(after.size() - 1).crossingContrast(), 0.03);
    assertEquals(
        "At the end lines are gone, and knots, where seams cross, just about",
        ((FadingFigure) new FadingFigures(advice, UnitSystem.METRIC).figure().orElseThrow())
            .answer());
  }

  /** Where no cases are tried nothing is said of how sure it is. */
  @Test
  void theLikelyCaseAloneIsSoaked() {
    SoakAdvice soak = soak(Demos.of("mosaic"), 0);
    Recommended r = soak.recommended().orElseThrow();
    assertTrue(r.minutes() > 0);
    assertTrue(r.reason().first().isEmpty());
    assertTrue(
        new SoakAnswerWords(soak, UnitSystem.METRIC).says().startsWith("Soak at"), r.toString());
  }
}
