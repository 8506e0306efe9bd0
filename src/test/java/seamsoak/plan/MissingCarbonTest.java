package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.support.Schedules;

/** What a line lacks is told against metal, and no metal here has more than its layers hold. */
class MissingCarbonTest {
  /**
   * Below A1 carbide gathers at the bound of two steels in a film of no weight, with more carbon
   * than cementite has: told as metal far from the seam it made lines that lack 2 to 22 %.
   */
  @ParameterizedTest
  @ValueSource(strings = {"A2 O1", "52100 75Ni8", "9260 1075", "O1 L6", "1095 75Ni8"})
  void noLineLacksMoreThanTheRichestSteelHolds(String steels) {
    String quoted = "\"" + String.join("\", \"", steels.split(" ")) + "\"";
    ScheduleAdvice schedule = Schedules.stack(quoted, 9, "3 mm", "").schedule();
    for (ScheduleAdvice.After after : schedule.after()) {
      double most = after.layers().stream().mapToDouble(l -> l.meanPct()).max().orElseThrow();
      assertTrue(
          after.deepestMissingPct() < most,
          steels + " " + after.step() + ": " + after.deepestMissingPct());
    }
  }
}
