package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.schedule.Coolant;
import seamsoak.schedule.CriticalTemperatures;
import seamsoak.schedule.Heater;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.demand.Conflict;
import seamsoak.schedule.demand.Hardens;
import seamsoak.support.Schedules;
import seamsoak.unit.UnitSystem;
import seamsoak.words.ConflictWords;
import seamsoak.words.ScheduleRemarkWords;
import seamsoak.words.StepWords;

/** The treatment in shops that lack something, and of billets that are no plain stack. */
class ScheduleShopTest {
  private static final StepWords WORDS = new StepWords(UnitSystem.METRIC);

  private static String doing(ScheduleAdvice.Step step) {
    return WORDS.said(step.task()).doing();
  }

  private static String why(ScheduleAdvice.Step step) {
    return WORDS.said(step.task()).why();
  }

  private static final String NO_KILN = ", \"equipment\": { \"kiln\": \"none\" }";

  private static ScheduleAdvice.Step step(Advice advice, String name) {
    return advice.schedule().steps().stream()
        .filter(s -> s.step().words().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no step " + name));
  }

  private static Optional<ConflictWords.Sentences> conflict(
      Advice advice, Class<? extends Conflict> kind) {
    return advice.schedule().conflicts().stream()
        .filter(kind::isInstance)
        .map(new ConflictWords(UnitSystem.METRIC)::said)
        .findFirst();
  }

  private static CriticalTemperatures critical(Advice advice, String steel) {
    return advice.schedule().critical().stream()
        .filter(c -> c.steel().equals(steel))
        .findFirst()
        .orElseThrow();
  }

  /** No fire falls by 22 C an hour: without a kiln nothing is asked of one. */
  @ParameterizedTest
  @ValueSource(strings = {"\"52100\", \"75Ni8\"", "\"L6\", \"1084\"", "\"W2\", \"1084\""})
  void withoutAKilnNothingIsCooledInOne(String steels) {
    Advice advice = Schedules.stack(steels, 5, "8 mm", NO_KILN);
    for (ScheduleAdvice.Segment s : advice.schedule().segments()) {
      assertFalse(
          s.in() == Heater.KILN || s.cool().equals(Optional.of(Coolant.Plain.KILN)), s.toString());
    }
    for (ScheduleAdvice.Step s : advice.schedule().steps()) {
      assertFalse(doing(s).contains("the kiln"), doing(s));
    }
    assertTrue(doing(step(advice, "anneal")).contains("bury it"));
    double anneal = step(advice, "anneal").temperatureC().orElseThrow();
    for (CriticalTemperatures c : advice.schedule().critical()) {
      assertTrue(anneal < c.ac1C().orElseThrow(), c.steel());
    }
  }

  @Test
  void whatMayHardenInAirIsBuriedAndTheKilnIsMissed() {
    Advice advice = Schedules.stack("\"O1\", \"75Ni8\"", 5, "8 mm", NO_KILN);
    assertTrue(doing(step(advice, "cool-down")).contains("vermiculite"));
    assertTrue(conflict(advice, Conflict.NoKiln.class).isPresent());
    Advice plain = Schedules.stack("\"1084\", \"75Ni8\"", 5, "8 mm", NO_KILN);
    assertEquals(Optional.empty(), conflict(plain, Conflict.NoKiln.class));
    assertTrue(doing(step(plain, "cool-down")).contains("still, dry air"));
  }

  /** Carbide that is to gather must neither all dissolve nor stay as it is. */
  @ParameterizedTest
  @CsvSource({"'\"W2\", \"1084\"', W2", "'\"1095\"', 1095"})
  void spheroidizingLiesBetweenAc1AndAccm(String steels, String most) {
    Advice advice = Schedules.stack(steels, 4, "8 mm", "");
    ScheduleAdvice.Step anneal = step(advice, "anneal");
    assertTrue(doing(anneal).startsWith("Spheroidize"), doing(anneal));
    double at = anneal.temperatureC().orElseThrow();
    CriticalTemperatures c = critical(advice, most);
    assertEquals("Accm", c.upper());
    assertTrue(
        at > c.ac1C().orElseThrow() + 10 && at < c.upperC().orElseThrow() - 5, at + " in " + c);
  }

  /**
   * Still air beside the quenchants at hand. A plate of 6 mm takes 177 s from 800 to 500 C
   * (computed, table of air-cooled plates); a bar 36 mm wide has 6/36 more face, so it takes less
   * in that ratio.
   */
  @Test
  void airAndEachQuenchantAreHeldAgainstWhatEachSteelNeeds() {
    Advice advice =
        Schedules.bar(
            "1084",
            "9 mm",
            ", \"blade\": { \"thickness\": \"6 mm\", \"width\": \"36 mm\" }, \"quenchants\":"
                + " [{ \"kind\": \"oil-slow\" }, { \"kind\": \"water\" }, { \"kind\": \"brine\" }]");
    ScheduleAdvice.Outcome blade = advice.schedule().blade().orElseThrow();
    List<ScheduleAdvice.Medium> media = blade.media();
    assertEquals(
        List.of("still-air", "oil-slow", "water", "brine"),
        media.stream().map(ScheduleAdvice.Medium::id).toList());
    assertEquals(177.0 / (1 + 6.0 / 36), media.get(0).takesSeconds(), 0.05 * 152);
    assertEquals(1, media.stream().filter(ScheduleAdvice.Medium::chosen).count());
    for (int i = 1; i < media.size(); i++) {
      assertTrue(media.get(i).takesSeconds() < media.get(i - 1).takesSeconds());
      assertTrue(media.get(i).differenceC() > media.get(i - 1).differenceC());
    }
    for (ScheduleAdvice.Medium m : media) {
      ScheduleAdvice.InMedium steel = m.steels().get(0);
      boolean enough = m.takesSeconds() <= steel.allowsSeconds();
      assertEquals(enough, steel.middle() == Hardens.YES, m.toString());
    }
  }

  /** The verdict and the seconds beside it say the same. */
  @ParameterizedTest
  @ValueSource(strings = {"2 mm", "3 mm", "4 mm", "6 mm"})
  void secondsAgreeWithTheVerdict(String thickness) {
    Advice advice =
        Schedules.stack(
            "\"1084\", \"75Ni8\"",
            5,
            "9 mm",
            ", \"blade\": { \"thickness\": \"" + thickness + "\" }");
    for (ScheduleAdvice.Quenched q : advice.schedule().blade().orElseThrow().steels()) {
      assertEquals(q.takesSeconds() <= q.longestSeconds(), q.middle() == Hardens.YES, q.toString());
    }
  }

  /** Stainless jackets do not make the grain of the core finer. */
  @Test
  void grainIsReckonedWithoutWhatTheLawDoesNotReach() {
    double clad = lastGrain(Schedules.stack("\"304\", \"1095\"", 3, "8 mm", ""));
    double plain = lastGrain(Schedules.stack("\"1018\", \"1095\"", 3, "8 mm", ""));
    assertEquals(plain, clad, 1);
  }

  private static double lastGrain(Advice advice) {
    List<ScheduleAdvice.After> all = advice.schedule().after();
    return all.get(all.size() - 1).grainAstm();
  }

  @Test
  void whatHardensByItsOwnSheetAloneIsSaidToNeedIt() {
    Advice advice = Schedules.stack("\"D2\", \"1084\"", 5, "8 mm", "");
    ConflictWords.Sentences c = conflict(advice, Conflict.BeyondFormulas.class).orElseThrow();
    assertTrue(c.says().contains("no heat suits them all"), c.says());
    assertTrue(c.says().contains("1010 C") && c.says().contains("800 C"), c.says());
    assertTrue(c.todo().contains("leaves D2 soft"), c.todo());
    String why = why(step(advice, "temper 1"));
    assertTrue(why.contains("D2 is soft from this heat"), why);
    Advice clad = Schedules.stack("\"1018\", \"440C\"", 3, "8 mm", "");
    assertEquals(Optional.empty(), clad.schedule().blade());
    assertTrue(doing(step(clad, "grind")).startsWith("Grind"));
  }

  /** A soft grade that took up a little carbon is not treated as if it were to cut. */
  @Test
  void mildSteelAmongManyLayersStaysSoftInTheEdge() {
    Advice advice = Schedules.stack("\"1095\", \"1018\"", 9, "8 mm", "");
    ConflictWords.Sentences c = conflict(advice, Conflict.SoftLayer.class).orElseThrow();
    assertTrue(c.todo().contains("lies in the edge too"), c.todo());
    assertEquals(Optional.empty(), conflict(advice, Conflict.NoCommonHeat.class));
    assertEquals(Optional.empty(), conflict(advice, Conflict.HeatOutsideSheet.class));
  }

  /** In a salt bath steel is still soft; it hardens in the air after it. */
  @Test
  void aHotBathIsFollowedByStillAir() {
    Advice advice =
        Schedules.bar(
            "80CrV2",
            "6 mm",
            ", \"blade\": { \"thickness\": \"3 mm\" }, \"quenchants\":"
                + " [{ \"kind\": \"salt\", \"at\": \"200 C\" }]");
    assertTrue(doing(step(advice, "harden")).contains("only then does it harden"));
  }

  @Test
  void whatNoFireReachesIsSaidAndNotProgrammed() {
    Advice advice =
        Schedules.bar(
            "1084",
            "8 mm",
            ", \"equipment\": { \"forge\": \"none\", \"kiln\": { \"highest\": \"830 C\" } }");
    assertTrue(
        advice.schedule().remarks().stream()
            .map(new ScheduleRemarkWords(UnitSystem.METRIC)::says)
            .anyMatch(r -> r.contains("normalize cannot be done in this shop")),
        advice.schedule().remarks().toString());
    assertTrue(advice.schedule().program().stream().allMatch(l -> l.toC() <= 830));
  }

  private static final String TILES =
      """
      { "stack": { "layers": 5, "steels": ["1084", "75Ni8"], "thickness": "5 mm", "width": "25 mm",
          "length": "200 mm" },
        "steps": [
          { "do": "weld", "heats": [{ "at": "1150 C", "for": "3 min" }] },
          { "do": "draw", "thickness": "20 mm", "width": "20 mm", "heats": [{ "at": "1100 C", "for": "2 min" }] },
          { "do": "tile", "angle": "45 deg", "slice": "14 mm",
            "jacket": { "steel": "1008", "thickness": "1 mm"%s } },
          { "do": "weld", "heats": [{ "at": "1150 C", "for": "3 min" }] },
          { "do": "press", "thickness": "10 mm", "heats": [{ "at": "1100 C", "for": "2 min" }] }%s ] }
      """;

  /** A jacket nobody took off: said, warned of in every fire, and ground off with the skin. */
  @Test
  void aJacketThatIsStillOnCounts() {
    Advice on = Schedules.of(String.format(TILES, "", ""));
    Advice off = Schedules.of(String.format(TILES, "", ", { \"do\": \"unjacket\" }"));
    Advice bare = Schedules.of(String.format(TILES, ", \"coating\": \"none\"", ""));
    assertTrue(conflict(on, Conflict.JacketOn.class).orElseThrow().says().contains("1008"));
    assertEquals(Optional.empty(), conflict(off, Conflict.JacketOn.class));
    assertTrue(why(step(on, "grind")).contains(" of jacket"));
    assertFalse(why(step(off, "grind")).contains("jacket"));
    assertTrue(last(on).softMm() < 0.1, "only what the hardening heat took");
    assertTrue(warnsOfZinc(on, "normalize"), "its coating is unknown");
    assertFalse(warnsOfZinc(bare, "normalize"));
    assertFalse(warnsOfZinc(off, "normalize"));
    assertFalse(warnsOfZinc(on, "harden"), "it is off by then");
  }

  /** How thick the edge goes into the quench stands in the file, or is as is usual. */
  @Test
  void theEdgeIsLeftAsThickAsTheFileHasIt() {
    String file = String.format(TILES, "", "");
    String stated = file.replaceFirst("\\{", "{ \"blade\": { \"edge\": \"1.2 mm\" },");
    assertTrue(doing(step(Schedules.of(stated), "grind")).endsWith("leave the edge 1.2 mm thick"));
    assertTrue(doing(step(Schedules.of(file), "grind")).endsWith("as thick as a coin"));
  }

  /** Its pair with the steel below is a clash, and so the schedule says. */
  @Test
  void aStainlessJacketClashes() {
    Advice stainless = Schedules.of(String.format(TILES.replace("\"1008\"", "\"304\""), "", ""));
    ConflictWords.Sentences said =
        conflict(stainless, Conflict.StainlessJacket.class).orElseThrow();
    assertTrue(said.says().startsWith("a jacket of 304 clashes with 1084, 75Ni8"), said.says());
    assertTrue(said.says().contains("tears loose"), said.says());
    assertEquals(
        Optional.empty(),
        conflict(Schedules.of(String.format(TILES, "", "")), Conflict.StainlessJacket.class));
  }

  private static ScheduleAdvice.After last(Advice advice) {
    return advice.schedule().after().get(advice.schedule().after().size() - 1);
  }

  private static boolean warnsOfZinc(Advice advice, String step) {
    return advice.schedule().steps().stream()
        .filter(s -> s.step().words().equals(step))
        .anyMatch(
            s -> s.cautions().stream().anyMatch(c -> c.statement().startsWith("Zinc or cadmium")));
  }
}
