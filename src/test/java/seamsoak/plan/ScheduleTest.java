package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.billet.Billet;
import seamsoak.schedule.Coolant;
import seamsoak.schedule.Heater;
import seamsoak.schedule.Remark;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.StepKind;
import seamsoak.schedule.Structure;
import seamsoak.schedule.demand.Conflict;
import seamsoak.schedule.demand.Hardens;
import seamsoak.steel.HeatTreatment;
import seamsoak.steel.Steel;
import seamsoak.steel.TemperatureRange;
import seamsoak.support.Demos;
import seamsoak.support.Schedules;
import seamsoak.support.Walks;
import seamsoak.unit.UnitSystem;
import seamsoak.words.ConflictWords;
import seamsoak.words.ScheduleRemarkWords;
import seamsoak.words.StepWords;

/** The treatment as a metallurgist would look it over. */
class ScheduleTest {
  private static final StepWords WORDS = new StepWords(UnitSystem.METRIC);

  private static String doing(ScheduleAdvice.Step step) {
    return WORDS.said(step.task()).doing();
  }

  private static String why(ScheduleAdvice.Step step) {
    return WORDS.said(step.task()).why();
  }

  private static Advice mosaic;

  @BeforeAll
  static void adviseTheDemo() {
    Billet billet = Demos.of("mosaic");
    mosaic = Schedules.of(billet);
  }

  private static ScheduleAdvice.Step step(Advice advice, String name) {
    return advice.schedule().steps().stream()
        .filter(s -> s.step().words().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no step " + name));
  }

  private static boolean has(Advice advice, String name) {
    return advice.schedule().steps().stream().anyMatch(s -> s.step().words().equals(name));
  }

  private static String says(Remark remark) {
    return new ScheduleRemarkWords(UnitSystem.METRIC).says(remark);
  }

  private static String cooled(Advice advice, String step) {
    return advice.schedule().segments().stream()
        .filter(
            s -> s.step().words().startsWith(step) && s.kind() == ScheduleAdvice.Segment.Kind.COOL)
        .flatMap(s -> s.cool().stream())
        .map(Coolant::word)
        .findFirst()
        .orElse("");
  }

  private static Optional<ConflictWords.Sentences> conflict(
      Advice advice, Class<? extends Conflict> kind) {
    return advice.schedule().conflicts().stream()
        .filter(kind::isInstance)
        .map(new ConflictWords(UnitSystem.METRIC)::said)
        .findFirst();
  }

  private static Optional<TemperatureRange> published(HeatTreatment sheet, String step) {
    return switch (step) {
      case "normalize" -> sheet.normalize();
      case "anneal" -> sheet.anneal();
      case "harden" -> sheet.harden();
      case "temper 1" -> sheet.temper();
      default -> Optional.empty();
    };
  }

  /** Each temperature within the published range of each steel, or a sentence saying why not. */
  @Test
  void everyTemperatureIsPublishedOrExplained() {
    int within = 0;
    for (ScheduleAdvice.Step s : mosaic.schedule().steps()) {
      for (String id : List.of("1084", "75Ni8")) {
        Steel steel = Walks.STEELS.find(id).orElseThrow();
        Optional<TemperatureRange> range = published(steel.heatTreatment(), s.step().words());
        if (range.isEmpty()) {
          continue;
        }
        double at = s.temperatureC().orElseThrow();
        if (at >= range.get().lowC() - 0.5 && at <= range.get().highC() + 0.5) {
          within++;
        } else {
          assertTrue(
              mosaic.schedule().remarks().stream()
                  .anyMatch(
                      r ->
                          r instanceof Remark.OutsideRange o
                              && o.step().equals(s.step())
                              && o.steel().equals(id)),
              s.step().words() + " of " + id);
        }
      }
    }
    assertEquals(7, within, "all but the anneal of 1084");
  }

  /** Carbon of each layer, structure and hardness, skin to grind: after every step. */
  @Test
  void theStateIsCarriedThrough() {
    List<ScheduleAdvice.After> after = mosaic.schedule().after();
    for (ScheduleAdvice.After a : after) {
      assertEquals(2, a.layers().size(), a.step().words());
      assertEquals(2, a.metals().size(), a.step().words());
      assertTrue(a.grainAstm() > 0 && a.grainAstm() < 14, a.step().words());
    }
    ScheduleAdvice.After ground =
        after.stream().filter(a -> a.step().kind() == StepKind.GRIND).findFirst().orElseThrow();
    assertEquals(0, ground.skinMm(), 0.02);
    assertEquals(3.175, ground.thicknessMm(), 1e-6);
    ScheduleAdvice.After last = after.get(after.size() - 1);
    for (ScheduleAdvice.Metal m : last.metals()) {
      assertEquals(Structure.TEMPERED, m.structure(), m.steel());
      assertEquals(60, m.hrc().orElseThrow(), 1.5, m.steel());
    }
    String first = says(mosaic.schedule().remarks().get(0));
    assertTrue(first.matches(".*the soak clears \\d+ % and they \\d+ %\\."), first);
  }

  /** In 12 mm neither is cooled in air from above the critical range; common practice. */
  @ParameterizedTest
  @CsvSource({"L6", "O1"})
  void deepHardeningToolSteelIsNotNormalizedUnguarded(String steel) {
    Advice advice = Schedules.bar(steel, "12 mm", "");
    assertFalse(has(advice, "normalize"));
    assertEquals("kiln", cooled(advice, "cool-down"));
    assertEquals("kiln", cooled(advice, "refine"));
    assertEquals("kiln", cooled(advice, "anneal"));
    assertTrue(doing(step(advice, "anneal")).startsWith("Full anneal"));
    assertTrue(why(step(advice, "anneal")).contains(steel), why(step(advice, "anneal")));
    assertTrue(
        conflict(advice, Conflict.DisputedSheets.class).orElseThrow().says().contains("disagree"));
    assertTrue(has(advice, "pre-heat"));
    assertEquals(Hardens.YES, advice.schedule().blade().orElseThrow().steels().get(0).middle());
  }

  @Test
  void withoutAKilnL6IsSaidToBeOutOfReach() {
    Advice advice = Schedules.bar("L6", "12 mm", ", \"equipment\": { \"kiln\": \"none\" }");
    assertTrue(conflict(advice, Conflict.NoKiln.class).orElseThrow().says().contains("ash"));
    assertTrue(advice.schedule().program().isEmpty());
    assertEquals(Heater.OVEN, step(advice, "temper 1").in());
    assertEquals(Heater.FORGE, step(advice, "harden").in());
  }

  /** No quench hardens the middle of 25 mm of 1095: even perfect it would need DI 34 mm. */
  @Test
  void plainSteelInAThickSectionIsToldTheSpeedItNeeds() {
    Advice advice =
        Schedules.bar(
            "1095",
            "28 mm",
            ", \"blade\": { \"thickness\": \"25 mm\" },"
                + " \"quenchants\": [{ \"kind\": \"oil-fast\" }, { \"kind\": \"brine\" }]");
    ScheduleAdvice.Outcome blade = advice.schedule().blade().orElseThrow();
    assertEquals("brine", blade.quenchant());
    assertEquals(Hardens.NO, blade.steels().get(0).middle());
    assertTrue(blade.steels().get(0).idealDiameterMm() < 34);
    assertTrue(blade.steels().get(0).coreHrc() < blade.steels().get(0).faceHrc() - 10);
    String says = conflict(advice, Conflict.SoftMiddle.class).orElseThrow().says();
    assertTrue(says.contains("will not harden") && says.contains("within"), says);
    assertTrue(why(step(advice, "harden")).contains("allows"));
    assertTrue(doing(step(advice, "anneal")).startsWith("Spheroidize"));
  }

  @Test
  void whatMustNotBeNormalizedIsAnnealedOnly() {
    Advice advice = Schedules.bar("D2", "12 mm", "");
    assertEquals(
        List.of("cool-down", "anneal", "grind", "test etch"),
        advice.schedule().steps().stream().map(s -> s.step().words()).toList());
    assertTrue(
        conflict(advice, Conflict.DisputedSheets.class).orElseThrow().says().contains("must not"));
    assertTrue(
        conflict(advice, Conflict.BeyondFormulas.class).orElseThrow().todo().contains("1010"));
  }

  @Test
  void windowsThatDoNotMeetAreSaidWithBoth() {
    Advice advice = Schedules.stack("\"1095\", \"6150\"", 3, "8 mm", "");
    ConflictWords.Sentences c = conflict(advice, Conflict.NoCommonHeat.class).orElseThrow();
    assertTrue(c.says().contains("1095") && c.says().contains("6150"), c.says());
    double at = step(advice, "harden").temperatureC().orElseThrow();
    assertEquals("1095", advice.schedule().blade().orElseThrow().edge());
    assertTrue(at <= 800 + 1e-6, "the edge's own range: " + at);
  }

  @Test
  void anAirHardenerBesideASoftLayerIsSaid() {
    Advice mixed = Schedules.stack("\"O1\", \"1084\"", 5, "8 mm", "");
    String says = conflict(mixed, Conflict.HardAndSoftInAir.class).orElseThrow().says();
    assertTrue(says.contains("O1") && says.contains("1084 stays soft"), says);
    assertEquals(Optional.empty(), conflict(mosaic, Conflict.HardAndSoftInAir.class));
    assertEquals(List.of(), mosaic.schedule().conflicts());
  }

  @Test
  void whatHasNoCarbonIsNotHardened() {
    Advice advice = Schedules.bar("1018", "8 mm", "");
    assertEquals(Optional.empty(), advice.schedule().blade());
    assertFalse(has(advice, "harden"));
    assertTrue(conflict(advice, Conflict.NothingHardens.class).isPresent());
  }

  /**
   * More cycles after a coarser soak, never beyond what gains; the last near the hardening heat.
   */
  @Test
  void cyclesAreAsManyAsPay() {
    assertTrue(has(mosaic, "refine 2") && !has(mosaic, "refine 3"));
    double harden = step(mosaic, "harden").temperatureC().orElseThrow();
    assertEquals(harden, step(mosaic, "refine 2").temperatureC().orElseThrow(), 1e-9);
    assertTrue(why(step(mosaic, "refine 2")).contains("how deep it hardens"));
    Advice fine = Schedules.bar("1084", "8 mm", "");
    assertTrue(has(fine, "refine") && !has(fine, "refine 2"));
  }

  @Test
  void coldIsUsedWhereThereIsAustenite() {
    String cold = ", \"equipment\": { \"cold\": \"dry ice\" }";
    assertTrue(has(Schedules.bar("O2", "8 mm", cold), "sub-zero"));
    assertFalse(has(Schedules.bar("1075", "8 mm", cold), "sub-zero"));
    assertFalse(has(Schedules.bar("O2", "8 mm", ""), "sub-zero"));
  }

  /** Hotter for a softer blade; the table of 1095 gives 57.5 HRC near 290 C. */
  @Test
  void theTemperFollowsTheHardnessWanted() {
    Advice hard = Schedules.bar("1095", "4 mm", ", \"blade\": { \"hardness\": \"62 HRC\" }");
    Advice soft = Schedules.bar("1095", "4 mm", ", \"blade\": { \"hardness\": \"60 HRC\" }");
    double hot = step(soft, "temper 1").temperatureC().orElseThrow();
    assertTrue(hot > step(hard, "temper 1").temperatureC().orElseThrow() + 10);
    assertEquals(245, hot, 15);
    Advice much = Schedules.bar("1095", "4 mm", ", \"blade\": { \"hardness\": \"50 HRC\" }");
    assertTrue(
        conflict(much, Conflict.HardnessOutOfReach.class).orElseThrow().says().contains("50 HRC"));
  }

  @Test
  void aBladeTooThickForItsBilletIsSaid() {
    Advice advice = Schedules.bar("1084", "4 mm", ", \"blade\": { \"thickness\": \"4 mm\" }");
    assertTrue(conflict(advice, Conflict.TooThin.class).isPresent());
    assertTrue(advice.schedule().blade().orElseThrow().thicknessMm() < 3.9);
  }

  /** Magnet, color, test piece, file and test etch, each where it belongs. */
  @Test
  void theChecksAreThoseThatASmithCanMake() {
    assertTrue(checks("normalize").contains("magnet lets go on the way up, 1084 from"));
    assertTrue(checks("normalize").contains("by which table you ask"));
    assertTrue(checks("refine 2").contains("test piece"));
    assertTrue(checks("harden").contains("new file skates"));
    assertTrue(checks("grind").contains("file bites"));
    assertTrue(checks("test etch").contains("light line"));
    assertTrue(
        mosaic.schedule().remarks().stream()
            .anyMatch(r -> says(r).contains("no two tables agree")));
  }

  private static String checks(String step) {
    return String.join("; ", WORDS.checks(step(mosaic, step).checks()));
  }
}
