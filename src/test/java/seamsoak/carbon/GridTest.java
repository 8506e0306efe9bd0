package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GridTest {
  @ParameterizedTest
  @CsvSource({
    "1e-4, 1.05, false",
    "1e-3, 1.1, true",
    "0.02, 1.2, true",
    "0.4, 1.1, false",
    "0.9, 1.3, true"
  })
  void fillsTheLayerFromFineToCoarse(double finest, double growth, boolean bothEnds) {
    double metres = 2.7e-3;
    double[] cells = new Grid(finest, growth, bothEnds).cells(metres);
    assertEquals(metres, Sums.of(cells), 1e-17);
    assertTrue(cells[0] <= finest * metres * (1 + 1e-12));
    int last = cells.length - 1;
    int fine = bothEnds ? cells.length / 2 : cells.length;
    for (int i = 1; i < fine; i++) {
      assertEquals(growth, cells[i] / cells[i - 1], 1e-12);
    }
    for (int i = 0; bothEnds && i < cells.length; i++) {
      assertEquals(cells[i], cells[last - i], 1e-18);
    }
    // one cell fewer would be too coarse
    double layer = bothEnds ? metres / 2 : metres;
    double coarser = layer * (growth - 1) / (Math.pow(growth, fine - 1) - 1);
    assertTrue(fine == 2 || coarser > finest * metres);
  }
}
