package seamsoak.words.beside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.DataFolder;
import seamsoak.plan.Advice;
import seamsoak.plan.PlanAdvisor;
import seamsoak.safety.CautionTable;
import seamsoak.soak.SoakAdvice;
import seamsoak.soak.SoakAdvice.SoakOption;
import seamsoak.soak.SoakCost;
import seamsoak.state.Progress;
import seamsoak.support.Demos;
import seamsoak.support.Walks;
import seamsoak.unit.UnitSystem;
import seamsoak.words.beside.WhatIfWords.Costs;

/** What another soak comes to is told as the soak advised is. */
@Tag("slow")
class WhatIfWordsTest {
  private static Advice advice(int samples) {
    return new PlanAdvisor(Walks.CORRELATIONS, CautionTable.load(DataFolder.packed()), samples)
        .advise(Demos.of("mosaic"), Progress.NONE);
  }

  /** One soak has one cost, wherever it is told. */
  @ParameterizedTest
  @CsvSource({"0", "24"})
  void theSoakAdvisedCostsWhatItsReasonSays(int samples) {
    SoakAdvice soak = advice(samples).soak();
    WhatIfWords words = new WhatIfWords(soak, UnitSystem.US);
    SoakOption advised = words.advised().orElseThrow();
    Costs told = Costs.of(advised, soak);
    SoakCost reason = soak.recommended().orElseThrow().reason().cost().orElseThrow();
    assertEquals(reason.minutes(), told.minutes().orElseThrow(), 1);
    assertEquals(reason.grainAstm(), told.grain().orElseThrow(), 0.1);
    assertEquals(reason.offMm(), told.flatsMm().orElseThrow(), 0.005);
    assertTrue(words.says(advised).contains("This is the soak advised, for "));
  }

  /** Hotter is shorter and coarser, and what is said of it says so. */
  @Test
  void hotterIsShorterAndCoarser() {
    SoakAdvice soak = advice(24).soak();
    WhatIfWords words = new WhatIfWords(soak, UnitSystem.METRIC);
    SoakOption advised = words.advised().orElseThrow();
    for (SoakOption o : soak.options()) {
      String said = words.says(o);
      if (o.temperatureC() >= advised.temperatureC() + 30) {
        assertTrue(said.contains("shorter"), said);
      } else if (o.temperatureC() <= advised.temperatureC() - 30 && o.minutes().isPresent()) {
        assertTrue(said.contains("longer, grain "), said);
      }
      assertEquals(
          Costs.of(o, soak).minutes().filter(m -> m <= soak.mostMinutes()).isEmpty(),
          said.contains("longer than the"),
          said);
    }
  }
}
