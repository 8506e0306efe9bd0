package seamsoak.billet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.support.Walks;

/** The line through a stack of many layers has the carbon of all of them. */
class LayingTest {
  private static final Shop SHOP = new Shop(Walks.CORRELATIONS, Assumptions.USUAL, Resolution.FINE);

  /** The mean gets its layers' activity, and by that their carbon within half a percent. */
  private static final double WITHIN = 0.005;

  @ParameterizedTest
  @CsvSource({
    "11, 1095, 1018, 3, 2",
    "13, 1095, 1018, 3, 2",
    "41, 1095, 1018, 1, 2",
    "13, 1084, 75Ni8, 3, 2"
  })
  void withAllItsCarbon(int layers, String first, String second, double thick, double thin) {
    Billet billet =
        Walks.billet(
            "{ \"stack\": { \"layers\": %d, \"steels\": [\"%s\", \"%s\"], \"thickness\": [\"%s mm\", \"%s mm\"], \"width\": \"40 mm\", \"length\": \"150 mm\", \"skin\": \"0 mm\" }, \"steps\": [ { \"do\": \"weld\", \"heats\": [{ \"at\": \"1150 C\", \"for\": \"5 min\" }], \"faces\": \"sealed\", \"outside\": \"sealed\" } ] }"
                .formatted(layers, first, second, thick, thin));
    Workpiece piece = new BilletWalk(SHOP).walk(billet).get(1).piece();
    double all = 0;
    for (int i = 0; i < layers; i++) {
      Metal metal = SHOP.metal(billet.stack().steel(i));
      double metres = billet.stack().thickness(i).metres();
      all += Strip.of(metal, metres, SHOP.resolution().oneEnd(metres)).carbon();
    }
    assertEquals(all / 2, piece.thickness().strip().carbon(), WITHIN * all / 2);
    assertEquals(
        billet.stack().thickness().metres() / 2,
        piece.thickness().strip().metres(),
        1e-9,
        "and all their metal");
  }
}
