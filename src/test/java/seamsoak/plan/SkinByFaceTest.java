package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.StepKind;
import seamsoak.schedule.Task;
import seamsoak.schedule.demand.Conflict;
import seamsoak.state.StageReport;
import seamsoak.support.Schedules;

/** Pressing thins the skin of the flats and spreads that of the sides: they are told apart. */
class SkinByFaceTest {
  private static final String PRESSED =
      """
      { "stack": { "layers": 13, "steels": ["1084", "75Ni8"], "thickness": ["3 mm", "2 mm"],
          "width": "40 mm", "length": "120 mm" },
        "steps": [
          { "do": "weld", "heats": [{ "at": "1200 C", "for": "5 min", "times": 3 }] },
          { "do": "press", "thickness": "%s", "heats": [{ "at": "1100 C", "for": "3 min", "times": 6 }] } ],
        "blade": { "thickness": "%s", "width": "%s" } }
      """;

  private static final String SAN_MAI =
      """
      { "stack": { "layers": 3, "steels": ["1018", "1095"], "thickness": ["8 mm", "6 mm"],
          "width": "40 mm", "length": "120 mm" },
        "steps": [
          { "do": "weld", "heats": [{ "at": "1200 C", "for": "5 min", "times": 3 }] },
          { "do": "draw", "thickness": "6 mm", "width": "40 mm",
            "heats": [{ "at": "1100 C", "for": "3 min", "times": 6 }] } ],
        "blade": { "thickness": "%s", "width": "30 mm" } }
      """;

  private static StageReport last(Advice advice) {
    return advice.history().get(advice.history().size() - 1);
  }

  private static Task.Grind grind(Advice advice) {
    return advice.schedule().steps().stream()
        .filter(s -> s.step().kind() == StepKind.GRIND)
        .map(s -> (Task.Grind) s.task())
        .findFirst()
        .orElseThrow();
  }

  private static List<Conflict> allowance(Advice advice) {
    return advice.schedule().conflicts().stream()
        .filter(c -> c instanceof Conflict.TooThin || c instanceof Conflict.TooNarrow)
        .toList();
  }

  /** Blades that the flats leave room for, though the skin of the sides would eat them up. */
  @ParameterizedTest
  @CsvSource({"5.6 mm, 5 mm", "4 mm, 3.4 mm", "2.6 mm, 2 mm"})
  void theSidesTakeNothingOffTheFlats(String pressed, String blade) {
    Advice advice = Schedules.of(String.format(PRESSED, pressed, blade, "30 mm"));
    StageReport end = last(advice);
    assertTrue(end.sideSkinMm() > 4 * end.skinMm(), end.sideSkinMm() + " and " + end.skinMm());
    assertEquals(List.of(), allowance(advice));
    assertEquals(
        Double.parseDouble(blade.replace(" mm", "")) / 1e3, grind(advice).thicknessMetres(), 1e-9);
    double off = (end.thicknessMm() / 1e3 - grind(advice).thicknessMetres()) / 2;
    assertEquals(off, grind(advice).depthMetres(), 0.05e-3, "but for what the schedule scales off");
    assertTrue(grind(advice).insideMetres() > end.sideSoftMm() / 1e3);
  }

  /** A blade as wide as the bar keeps what the fire took of its sides, and the edge is one. */
  @Test
  void aBladeAsWideAsTheBarKeepsSoftSides() {
    double wide = last(Schedules.of(String.format(PRESSED, "6 mm", "4 mm", "30 mm"))).widthMm();
    Advice all =
        Schedules.of(String.format(PRESSED, "6 mm", "4 mm", Math.floor(wide - 0.5) + " mm"));
    assertEquals(1, allowance(all).size());
    Conflict.TooNarrow narrow = (Conflict.TooNarrow) allowance(all).get(0);
    assertEquals(last(all).sideSoftMm() / 1e3, narrow.offMetres(), 0.1e-3);
    assertTrue(narrow.leftMetres() < (wide - 0.5) / 1e3);
  }

  /** 0.68 %C is as hard as 0.95: soft is less than half as deep as the skin. */
  @Test
  void softIsWhereTheHardnessFallsShort() {
    StageReport end = last(Schedules.of(String.format(PRESSED, "5.6 mm", "4 mm", "30 mm")));
    assertTrue(end.softMm() > 0.05 && end.softMm() < 0.5 * end.skinMm());
    assertTrue(end.sideSoftMm() > 0.1 && end.sideSoftMm() < 0.5 * end.sideSkinMm());
  }

  /** Mild jackets lack no carbon: nothing is ground off them for that. */
  @Test
  void aJacketThatNeverHardensIsNoSkin() {
    Advice advice = Schedules.of(String.format(SAN_MAI, "5.5 mm"));
    assertEquals(0, last(advice).softMm());
    assertTrue(last(advice).skinMm() > 0.1, "what it lost is told all the same");
    assertEquals(List.of(), allowance(advice));
  }

  @Test
  void theScheduleTellsFlatsAndSidesAfterEachStep() {
    ScheduleAdvice schedule =
        Schedules.of(String.format(PRESSED, "5.6 mm", "4 mm", "30 mm")).schedule();
    ScheduleAdvice.After first = schedule.after().get(0);
    assertTrue(first.sideSkinMm() > 4 * first.skinMm());
    ScheduleAdvice.After end = schedule.after().get(schedule.after().size() - 1);
    assertTrue(end.sideSkinMm() < 0.3 && end.sideSoftMm() < 0.1, "ground off");
  }
}
