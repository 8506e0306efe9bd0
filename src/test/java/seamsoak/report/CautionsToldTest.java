package seamsoak.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import seamsoak.plan.Advice;
import seamsoak.source.Caution;
import seamsoak.support.Reports;
import seamsoak.support.Schedules;
import seamsoak.unit.UnitSystem;

/** Cautions reach whoever reads the steps that they belong to, those at the bench too. */
class CautionsToldTest {
  private static final String CHLORINE = "chlorine gas comes off";
  private static final String DUST = "Steel dust burns";

  private static final Advice ADVICE =
      Schedules.stack("\"1084\", \"75Ni8\"", 5, "8 mm", ", \"blade\": {\"thickness\": \"4 mm\"}");

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  private static void allAreSaid(List<List<Caution>> steps, String text) {
    String said = flat(text);
    List<String> missing = new ArrayList<>();
    steps.stream()
        .flatMap(List::stream)
        .map(c -> c.said(UnitSystem.METRIC))
        .distinct()
        .filter(c -> !said.contains(c))
        .forEach(missing::add);
    assertEquals(List.of(), missing);
  }

  private static <T> List<List<Caution>> cautions(List<T> steps, Function<T, List<Caution>> of) {
    return steps.stream().map(of).toList();
  }

  @Test
  void aScheduleInWordsHasThoseOfEveryStep() {
    String full = new BilletAnswer(ADVICE, UnitSystem.METRIC).schedule().full();
    allAreSaid(cautions(ADVICE.schedule().steps(), s -> s.cautions()), full);
    assertTrue(flat(full).contains(CHLORINE) && flat(full).contains(DUST));
  }

  @Test
  void aPlanHasThoseOfTheBilletToo() {
    String full = new BilletAnswer(ADVICE, UnitSystem.METRIC).plan().full();
    allAreSaid(cautions(ADVICE.history(), s -> s.cautions()), full);
    allAreSaid(cautions(ADVICE.schedule().steps(), s -> s.cautions()), full);
  }

  /** Of what can kill, each step has its first on the screen before any has its second. */
  @Test
  void theWorstAreOfDifferentSteps() {
    String brief = flat(new BilletAnswer(ADVICE, UnitSystem.METRIC).schedule().brief(""));
    assertTrue(brief.contains("carbon monoxide"), brief);
    assertTrue(brief.contains(DUST), brief);
    assertTrue(brief.contains(CHLORINE), brief);
  }

  /** The card says how many more there are below, and below they are. */
  @Test
  @Tag("slow")
  void whatACardCountsStandsBelowIt() throws IOException {
    String html = Files.readString(Reports.mosaic());
    String below = html.substring(html.indexOf("id=\"cautions\""));
    for (String word : List.of(CHLORINE, DUST, "Ferric chloride burns the eyes", "nickel steel")) {
      assertTrue(below.contains(word), word);
    }
  }
}
