package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import seamsoak.data.DataFolder;
import seamsoak.property.Correlations;
import seamsoak.property.QuenchedSteel;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.demand.Conflict;
import seamsoak.support.Analyses;
import seamsoak.support.Schedules;

/** What is hardened from below its Ac3 keeps ferrite, and is not as hard as it could be. */
class FerriteLeftTest {
  private final Correlations k = Correlations.load(DataFolder.packed());

  private QuenchedSteel of(String analysis, double celsius) {
    return QuenchedSteel.from(k, Analyses.of(analysis), celsius, 8);
  }

  /** 9260 from 800 C: expected 55 to 58 HRC with soft spots, from memory; not 64. */
  @Test
  void siliconSteelFromTheHeatOf1095IsNotFullyHard() {
    QuenchedSteel cool = of("C0.6 Mn0.875 Si2", 800);
    assertEquals(0.13, cool.ferriteShare(), 0.05);
    double hrc = cool.fullHrc(20).value();
    assertTrue(hrc > 54 && hrc < 61, "" + hrc);
    QuenchedSteel hot = of("C0.6 Mn0.875 Si2", 870);
    assertEquals(0, hot.ferriteShare(), 0);
    assertTrue(hot.fullHrc(20).value() > hrc + 3);
  }

  /** All carbon is in what is austenite: more of it than the steel has. */
  @Test
  void ferriteLeavesItsCarbonToTheAustenite() {
    QuenchedSteel cool = of("C0.45 Mn0.75 Si0.22", 745);
    assertTrue(cool.ferriteShare() > 0.1 && cool.ferriteShare() < 0.4);
    assertEquals(0.45, (1 - cool.ferriteShare()) * cool.austenite().carbon(), 1e-9);
  }

  @Test
  void theScheduleSaysSo() {
    ScheduleAdvice schedule =
        Schedules.stack("\"9260\", \"1095\"", 5, "8 mm", ", \"blade\": { \"edge\": \"1095\" }")
            .schedule();
    List<Conflict.FerriteLeft> left =
        schedule.conflicts().stream()
            .filter(Conflict.FerriteLeft.class::isInstance)
            .map(Conflict.FerriteLeft.class::cast)
            .toList();
    assertEquals(
        List.of(List.of("9260")), left.stream().map(Conflict.FerriteLeft::steels).toList());
    assertTrue(left.get(0).hrc().value() < left.get(0).fullHrc().value() - 2);
    assertTrue(left.get(0).ac3C() > left.get(0).celsius());
  }
}
