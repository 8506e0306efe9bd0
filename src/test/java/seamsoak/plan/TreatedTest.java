package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.billet.Billet;
import seamsoak.data.DataFolder;
import seamsoak.report.BilletAnswer;
import seamsoak.report.JsonReport;
import seamsoak.safety.CautionTable;
import seamsoak.schedule.Remark;
import seamsoak.schedule.StepName;
import seamsoak.state.Progress;
import seamsoak.support.Walks;
import seamsoak.trace.Trace;
import seamsoak.unit.UnitSystem;

/** What was done of the treatment is not planned once more; planning goes on after it. */
class TreatedTest {
  private static final String FORGED =
      "{ 'do': 'weld', 'heats': [{ 'at': '1200 C', 'for': '3 min', 'times': 2 }] },"
          + " { 'do': 'draw', 'thickness': '5 mm', 'width': '35 mm', 'heats':"
          + "   [{ 'at': '1100 C', 'for': '2 min', 'times': 3 }] }";

  private static String step(String kind) {
    String heat =
        switch (kind) {
          case "normalize" -> "{ 'at': '860 C', 'for': '5 min'";
          case "refine" -> "{ 'at': '810 C', 'for': '5 min'";
          case "anneal" -> "{ 'at': '670 C', 'for': '2 h'";
          case "harden" -> "{ 'at': '810 C', 'for': '5 min'";
          default -> "{ 'at': '210 C', 'for': '2 h'";
        };
    String in = kind.equals("harden") ? ", 'in': 'oil-fast'" : "";
    return ", { 'do': '" + kind + "', 'heats': [" + heat + ", 'done': [{}] }]" + in + " }";
  }

  private static Advice advise(List<String> done) {
    return advise(String.join("", done.stream().map(TreatedTest::step).toList()));
  }

  private static Advice advise(String steps) {
    String text =
        "{ 'stack': { 'layers': 2, 'steels': ['1084', '75Ni8'], 'thickness': '8 mm',"
            + " 'width': '30 mm', 'length': '120 mm' }, 'visible': { 'dip': '0.5 %' },"
            + " 'steps': ["
            + FORGED
            + steps
            + "], 'blade': { 'thickness': '4 mm' }, 'quenchants': [{ 'kind': 'oil-fast' }] }";
    Billet billet = Walks.billet(text.replace('\'', '"'));
    return new PlanAdvisor(Walks.CORRELATIONS, CautionTable.load(DataFolder.packed()), 0)
        .advise(billet, Progress.NONE);
  }

  /** What a file does not tell done is planned again, and told so. */
  @Test
  void whatIsNotToldDoneIsPlannedAgainAndSaidSo() {
    String untold =
        step("normalize").replace(", 'done': [{}]", "")
            + step("temper").replace(", 'done': [{}]", "");
    Advice advice = advise(untold);
    String said =
        new BilletAnswer(advice, UnitSystem.METRIC).schedule().brief("").replaceAll("\\s+", " ");
    assertTrue(said.contains("The file has steps 3 normalize, 4 temper and does not say"), said);
    assertTrue(
        advice.schedule().steps().stream().anyMatch(s -> s.step().words().equals("normalize")));
    assertTrue(
        advise(List.of("normalize", "refine")).schedule().remarks().stream()
            .noneMatch(Remark.PlannedAnew.class::isInstance));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "normalize | refine",
        "normalize refine | anneal",
        "normalize refine anneal | grind",
        "normalize refine anneal harden | temper 1",
        "normalize refine anneal harden temper | temper 2",
        "normalize refine anneal harden temper temper | "
      })
  void theScheduleBeginsAfterWhatWasDone(String done, String first) {
    Advice advice = advise(List.of(done.split(" ")));
    List<String> steps =
        advice.schedule().steps().stream().map(s -> s.step()).map(StepName::words).toList();
    assertEquals(first == null, steps.isEmpty(), steps.toString());
    if (first != null) {
      assertEquals(first, steps.get(0));
    }
    assertTrue(JsonReport.schedule(advice, new Trace(List.of())).contains("\"stepDone\" : true"));
  }

  /** What is left of it stands in the file, and is not advised once more. */
  @Test
  void aTreatmentUnderWayCounts() {
    String two = step("refine").replace("'done': [{}]", "'times': 3, 'done': [{}]");
    Advice advice = advise(step("normalize") + two);
    assertEquals("anneal", advice.schedule().steps().get(0).step().words());
  }
}
