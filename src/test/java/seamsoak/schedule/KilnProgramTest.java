package seamsoak.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice.ProgramLine;
import seamsoak.support.Schedules;
import seamsoak.unit.UnitSystem;
import seamsoak.words.ScheduleRemarkWords;

class KilnProgramTest {
  private static final String SLOW =
      ", \"equipment\": { \"kiln\": { \"highest\": \"830 C\", \"ramp\": \"200 C/h\" } }";

  @Test
  void itKeepsToTheKilnsLimits() {
    Advice advice = Schedules.bar("1084", "8 mm", SLOW);
    List<ProgramLine> lines = advice.schedule().program();
    assertFalse(lines.isEmpty());
    for (ProgramLine l : lines) {
      assertTrue(l.toC() <= 830, l.toString());
      assertTrue(l.ratePerHourC() <= 200, l.toString());
      assertTrue(l.stayMinutes() >= 0, l.toString());
    }
    assertTrue(lines.stream().noneMatch(l -> l.step().words().equals("normalize")));
    assertTrue(
        advice.schedule().remarks().stream()
            .map(new ScheduleRemarkWords(UnitSystem.METRIC)::says)
            .anyMatch(r -> r.contains("830 C") && r.contains("normalize is for the forge")));
  }

  @Test
  void theStayHasTheHoldInItAndTheAnnealFallsSlowly() {
    ScheduleAdvice schedule = Schedules.bar("O1", "12 mm", "").schedule();
    List<ProgramLine> anneal =
        schedule.program().stream().filter(l -> l.step().words().equals("anneal")).toList();
    assertEquals(2, anneal.size());
    assertTrue(anneal.get(0).stayMinutes() >= 30);
    assertEquals(-22, anneal.get(1).ratePerHourC(), 1e-6, "the sheet's rate");
    assertEquals(540, anneal.get(1).toC(), 1e-6);
    assertEquals(ScheduleAdvice.Then.GO_ON, anneal.get(0).then());
    assertEquals(ScheduleAdvice.Then.TAKE_OUT, anneal.get(1).then());
    ProgramLine harden =
        schedule.program().stream()
            .filter(l -> l.step().words().equals("harden"))
            .findFirst()
            .orElseThrow();
    assertEquals(ScheduleAdvice.Then.QUENCH, harden.then());
    assertEquals("oil-fast", harden.quenchant().orElseThrow());
  }

  /** A climb takes its time, so a core that lags a fast kiln lags a slow one less. */
  @Test
  void theCoreLagsAClimbingKilnLessThanAHotOne() {
    double fast = stay(", \"equipment\": { \"kiln\": { \"ramp\": \"900 C/h\" } }");
    double slow = stay(", \"equipment\": { \"kiln\": { \"ramp\": \"150 C/h\" } }");
    assertTrue(fast > slow && slow >= 15, fast + " " + slow);
  }

  private static double stay(String more) {
    return Schedules.bar("1084", "25 mm", more).schedule().program().stream()
        .filter(l -> l.step().words().equals("normalize"))
        .findFirst()
        .orElseThrow()
        .stayMinutes();
  }
}
