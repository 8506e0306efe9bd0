package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.data.DataFolder;
import seamsoak.schedule.CriticalTemperatures;
import seamsoak.schedule.Heater;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.ScheduleAdvice.Segment;
import seamsoak.schedule.StepKind;
import seamsoak.schedule.Task;
import seamsoak.steel.SteelTable;
import seamsoak.support.Schedules;
import seamsoak.unit.UnitSystem;
import seamsoak.words.StepWords;

/** Anneals, and the heats before them: what is refined must stay so, and what is said must hold. */
class AnnealTest {
  private static final String NO_KILN = ", \"equipment\": { \"kiln\": \"none\" }";
  private static final SteelTable STEELS = SteelTable.load(DataFolder.packed());

  private static ScheduleAdvice schedule(String steels, String more) {
    String quoted = "\"" + String.join("\", \"", steels.split(" ")) + "\"";
    return Schedules.stack(quoted, 5, "8 mm", more).schedule();
  }

  private static List<ScheduleAdvice.Step> steps(ScheduleAdvice schedule, StepKind kind) {
    return schedule.steps().stream().filter(s -> s.step().kind() == kind).toList();
  }

  private static double celsius(ScheduleAdvice schedule, StepKind kind) {
    List<ScheduleAdvice.Step> all = steps(schedule, kind);
    return all.get(all.size() - 1).temperatureC().orElseThrow();
  }

  private static String says(ScheduleAdvice.Step step) {
    StepWords.Order order = new StepWords(UnitSystem.METRIC).said(step.task());
    return order.doing() + ". " + order.why();
  }

  /** A full anneal after refining coarsens again what the cycles made fine; common practice. */
  @ParameterizedTest
  @ValueSource(
      strings = {"4340 1095", "5160 1095", "O1 1084", "L6", "52100 75Ni8", "1095", "W2 1084"})
  void afterTheCyclesNothingIsHotterThanTheyWere(String steels) {
    ScheduleAdvice schedule = schedule(steels, "");
    double last = celsius(schedule, StepKind.REFINE);
    assertTrue(celsius(schedule, StepKind.ANNEAL) < last, steels);
    assertTrue(celsius(schedule, StepKind.HARDEN) <= last, steels);
  }

  /** Without cycles there is nothing to coarsen, but O1 must keep its carbide. */
  @Test
  void whatIsNotRefinedIsAnnealedCoolerThanItIsHardened() {
    ScheduleAdvice schedule = schedule("A2 O1", "");
    assertEquals(List.of(), steps(schedule, StepKind.REFINE));
    assertTrue(celsius(schedule, StepKind.ANNEAL) < celsius(schedule, StepKind.HARDEN));
  }

  /** Measured values lie up to 23 C below the mean of the formulas; sheets count as well. */
  @ParameterizedTest
  @ValueSource(strings = {"9260 75Ni8", "56Si7 C75S", "5160 1095", "80CrV2 75Ni8", "4340 1095"})
  void subCriticalIsBelowEveryAc1(String steels) {
    ScheduleAdvice schedule = schedule(steels, "");
    ScheduleAdvice.Step anneal = steps(schedule, StepKind.ANNEAL).get(0);
    assertTrue(anneal.task() instanceof Task.SubCriticalAnneal, anneal.task().toString());
    double at = anneal.temperatureC().orElseThrow();
    for (CriticalTemperatures c : schedule.critical()) {
      OptionalDouble sheet = STEELS.find(c.steel()).orElseThrow().ac1C();
      assertTrue(at <= Math.min(c.ac1C().orElseThrow(), sheet.orElseThrow()) - 23, c + " " + at);
      assertTrue(at >= 640, "hot enough to do something");
    }
  }

  /** 4340 at 650 C takes about 8 h; ASM Handbook 4, from memory. */
  @Test
  void aDeepHardeningSteelIsHeldUntilItHasChanged() {
    for (ScheduleAdvice.Step s : steps(schedule("4340 1095", ""), StepKind.REFINE)) {
      assertTrue(says(s).contains("650 C for 8 h"), says(s));
    }
    double held =
        schedule("4340 1095", "").segments().stream()
            .filter(s -> s.step().kind() == StepKind.REFINE && s.kind() == Segment.Kind.COOL)
            .mapToDouble(Segment::minutes)
            .max()
            .orElseThrow();
    assertEquals(480, held, 1e-6);
  }

  /** No hold at 650 C softens what hardens in air at any cooling that a shop can do. */
  @Test
  void whatMayNotChangeIsSaidTo() {
    ScheduleAdvice.Step down = steps(schedule("45NiCrMo16 1084", ""), StepKind.COOL_DOWN).get(0);
    assertTrue(says(down).contains("45NiCrMo16 may not change"), says(down));
    assertFalse(
        says(steps(schedule("4340 1095", ""), StepKind.COOL_DOWN).get(0)).contains("may not"));
  }

  /** The sheet of C67S normalizes from 800 to 830 C and hardens from 815 to 845. */
  @ParameterizedTest
  @ValueSource(strings = {"C67S", "C67S 75Ni8", "1084 75Ni8", "9260", "80CrV2", "C0.6 Mn0.9 Cr0.8"})
  void theHardeningHeatIsNeverTheHottest(String steels) {
    ScheduleAdvice schedule =
        steels.startsWith("C0")
            ? Schedules.bar(steels, "8 mm", "").schedule()
            : schedule(steels, "");
    double harden = celsius(schedule, StepKind.HARDEN);
    assertTrue(celsius(schedule, StepKind.NORMALIZE) >= harden, steels);
    assertTrue(celsius(schedule, StepKind.REFINE) >= harden, steels);
  }

  /** 1095 is refined from 770 C up, and 410 does not change below 775. */
  @Test
  void aCoreIsRefinedBelowWhereItsJacketsChange() {
    ScheduleAdvice schedule =
        Schedules.of(
                """
                { "stack": { "layers": 3, "steels": ["410", "1095", "410"],
                    "thickness": ["4 mm", "5 mm", "4 mm"], "width": "40 mm", "length": "120 mm" },
                  "steps": [
                    { "do": "weld", "heats": [{ "at": "1150 C", "for": "5 min" }] },
                    { "do": "draw", "thickness": "6 mm", "width": "40 mm",
                      "heats": [{ "at": "1050 C", "for": "3 min" }] } ] }
                """)
            .schedule();
    double cycle = celsius(schedule, StepKind.REFINE);
    assertTrue(cycle >= 765 && cycle < 775.1, "" + cycle);
    assertEquals(List.of(), steps(schedule, StepKind.NORMALIZE));
    List<ScheduleAdvice.Step> cycles = steps(schedule, StepKind.REFINE);
    assertTrue(says(cycles.get(cycles.size() - 1)).contains("as 410 allows"));
  }

  /** A gas forge holds welding heat, not a dull red for an hour; common practice. */
  @ParameterizedTest
  @ValueSource(strings = {"1084 75Ni8", "L6 1095", "52100 75Ni8"})
  void noForgeHoldsADullRed(String steels) {
    ScheduleAdvice schedule = schedule(steels, NO_KILN);
    for (ScheduleAdvice.Step s : schedule.steps()) {
      assertTrue(
          s.in() != Heater.FORGE
              || s.temperatureC().orElse(1000.0) > 750
              || s.holdMinutes().orElse(0.0) <= 5,
          s.step().words());
    }
    assertEquals(List.of(), steps(schedule, StepKind.STRESS_RELIEF));
    assertTrue(says(steps(schedule, StepKind.ANNEAL).get(0)).contains("bury it"));
  }

  /**
   * An analysis written out hardens within 25 C of where the sheet of its grade begins: Ac3 on
   * heating lies above that of equilibrium.
   */
  @ParameterizedTest
  @CsvSource({
    "C0.6 Mn0.875 Si0.25 Cr0.8, 830",
    "C0.505 Mn0.8 Si0.225 Cr0.95 V0.18, 845",
    "C0.6 Mn0.75 Si0.25, 800",
    "C0.465 Mn0.75 Si0.25, 820",
    "C0.865 Mn0.75 Si0.25, 800",
    "C0.99 Mn0.35 Si0.25 Cr1.475, 815"
  })
  void anAnalysisHardensNearWhereItsGradeDoes(String analysis, double sheet) {
    double at = celsius(Schedules.bar(analysis, "6 mm", "").schedule(), StepKind.HARDEN);
    assertTrue(at > sheet - 25 && at < sheet + 35, at + " for " + sheet);
  }
}
