package seamsoak.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import seamsoak.schedule.Check;
import seamsoak.schedule.Heater;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.StepKind;
import seamsoak.schedule.StepName;
import seamsoak.schedule.Task;
import seamsoak.unit.UnitSystem;
import seamsoak.words.told.Statement;

class StepsToldTest {
  private static final Task ANNEAL = new Task.Spheroidize(740, 650, 22, List.of("W2", "1095"));

  private static ScheduleAdvice.Step step(StepName name, Task task, Check... checks) {
    return new ScheduleAdvice.Step(
        name,
        Heater.KILN,
        task,
        Optional.of(740.0),
        Optional.of(30.0),
        List.of(checks),
        List.of(),
        Optional.empty());
  }

  @Test
  void besideEachSentenceStandsItsKind() {
    Map<String, Object> told =
        Statement.members(
            step(
                new StepName(StepKind.STRESS_RELIEF, 0),
                new Task.StressRelief(650),
                Check.Look.STRAIGHT,
                new Check.MagnetBelow(40)));
    assertEquals("stress relief", told.get("step"));
    assertEquals("stress-relief", told.get("kind"));
    assertEquals("kiln", told.get("in"));
    assertEquals("Hold the ground blade straight at 650 C, then still air", told.get("doing"));
    assertEquals("stress-relief", told.get("doingKind"));
    assertEquals(List.of("straight", "magnet-below"), told.get("checkKinds"));
    assertEquals(2, ((List<?>) told.get("checks")).size());
  }

  @Test
  void aRepeatHasItsNumberInTheNameAndBesideIt() {
    Map<String, Object> told =
        Statement.members(step(new StepName(StepKind.TEMPER, 2), new Task.NextTemper(200)));
    assertEquals("temper 2", told.get("step"));
    assertEquals("temper", told.get("kind"));
    assertEquals(2, told.get("number"));
    assertEquals("next-temper", told.get("doingKind"));
  }

  @Test
  void onlyThePieceThatStandsForItsStepHasTheReason() {
    assertTrue(segment(Optional.of(ANNEAL)).get("why").toString().startsWith("W2, 1095 hold"));
    assertEquals("spheroidize", segment(Optional.of(ANNEAL)).get("whyKind"));
    assertEquals("", segment(Optional.empty()).get("why"));
    assertEquals("", segment(Optional.empty()).get("cool"));
    assertEquals("anneal", segment(Optional.empty()).get("step"));
  }

  private static Map<String, Object> segment(Optional<Task> task) {
    return Statement.members(
        new ScheduleAdvice.Segment(
            new StepName(StepKind.ANNEAL, 0),
            ScheduleAdvice.Segment.Kind.HOLD,
            740,
            740,
            30,
            Optional.empty(),
            task,
            List.of(),
            List.of(),
            Heater.KILN));
  }

  /** Words follow the shop's units; what JSON says does not. */
  @Test
  void jsonIsMetric() {
    String shop = new StepWords(UnitSystem.US).said(ANNEAL).doing();
    assertEquals("Spheroidize at 1365 F, then down to 1200 F no faster than 40 F per hour", shop);
    Object json = Statement.members(step(new StepName(StepKind.ANNEAL, 0), ANNEAL)).get("doing");
    assertFalse(json.toString().contains(" F"), json.toString());
  }
}
