package seamsoak.billet.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;

class GaugesTest {
  private final Gauges gauges = Gauges.load(DataFolder.packed());

  /** As charts of the manufacturers' standard gauge print them; second-hand copies. */
  @ParameterizedTest
  @CsvSource({"10, 0.1345", "16, 0.0598", "18, 0.0478", "20, 0.0359"})
  void steelSheetMeasuresWhatIsPrinted(int gauge, double inches) {
    assertEquals(inches, gauges.of(gauge).orElseThrow().inches(), 5e-5);
  }

  /** 41.82 lb to a square foot and inch of thickness; the table prints four decimals. */
  @Test
  void everyThicknessFollowsFromItsWeight() {
    for (CsvTable.Row row : DataFolder.packed().csv("gauges.csv").rows()) {
      double inches = row.required("weight_oz_per_sqft") / 16 / 41.82;
      assertEquals(inches, row.required("thickness_in"), 5.1e-5, row.text("gauge"));
    }
  }

  @ParameterizedTest
  @CsvSource({"16 ga, 16", "16ga., 16", "#16 gauge, 16", "16-Gage, 16", "' 8 GA ', 8"})
  void gaugesAreWrittenInManyWays(String written, int number) {
    assertEquals(Optional.of(number), Gauges.number(written));
  }

  @ParameterizedTest
  @CsvSource({"16", "16 mm", "160 ga", "16.5 ga", "ga", "16 gal", "-16 ga"})
  void othersAreNone(String written) {
    assertEquals(Optional.empty(), Gauges.number(written));
  }
}
