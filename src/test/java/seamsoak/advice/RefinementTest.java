package seamsoak.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletReader;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Walks;
import seamsoak.carbon.LineVisibility;

/** A finer grid and a tighter tolerance do not change the demo's advice. */
class RefinementTest {
  private static final Billet MOSAIC =
      BilletReader.read(Path.of("alloy-data/billets/mosaic.json"), Walks.STEELS);
  private static final LineVisibility VISIBILITY = SoakSamples.visibility(Assumptions.USUAL);
  private static final Resolution FINER = new Resolution(3e-6, 1.06, 1e-4);
  private static final double[] CELSIUS = {1000, 1100, 1150};

  @Test
  void movesTheMinutesByLessThanATenthOfTheirBand() {
    SoakSamples possible =
        SoakSamples.of(
            MOSAIC,
            Walks.CORRELATIONS,
            Histories.around(Assumptions.USUAL, false, 32),
            Sightings.of(MOSAIC),
            CELSIUS,
            List.of(),
            Progress.NONE);
    Clearing fine = clearing(MOSAIC, Resolution.FINE);
    Clearing finer = clearing(MOSAIC, FINER);
    for (double celsius : CELSIUS) {
      double band =
          possible.minutes(celsius, 0.9).orElseThrow()
              - possible.minutes(celsius, 0.1).orElseThrow();
      assertTrue(band > 1, () -> "band of " + band + " min at " + celsius);
      assertEquals(minutes(finer, celsius), minutes(fine, celsius), 0.1 * band);
    }
  }

  /**
   * From the coolest soak, where ferrite is left at the seam, to the hottest, and with thick layers
   * too: the answer within 3 % of a fine grid's, the samples within 10 %. Both are told too short.
   */
  @ParameterizedTest
  @CsvSource({"mosaic, 740 800 900 1000 1200", "galvanized-jacket, 860 1000 1150"})
  void tellsTheMinutesOnCoarserGrids(String demo, String temperatures) {
    Billet billet =
        BilletReader.read(Path.of("alloy-data/billets/" + demo + ".json"), Walks.STEELS);
    Clearing finer = clearing(billet, FINER);
    Clearing fine = clearing(billet, Resolution.FINE);
    Clearing sample = clearing(billet, Resolution.SAMPLE);
    for (String each : temperatures.split(" ")) {
      double celsius = Double.parseDouble(each);
      double minutes = minutes(finer, celsius);
      assertEquals(minutes, minutes(fine, celsius), 0.03 * minutes, each);
      assertEquals(minutes, minutes(sample, celsius), 0.1 * minutes, each);
    }
  }

  private static double minutes(Clearing clearing, double celsius) {
    return clearing.secondsAt(celsius + 273.15).orElseThrow() / 60;
  }

  private static Clearing clearing(Billet billet, Resolution resolution) {
    Shop shop = new Shop(Walks.CORRELATIONS, Assumptions.USUAL, resolution);
    List<Stage> stages = BilletWalk.ofLines(shop).walk(billet);
    return new Clearing(Walks.last(stages).piece(), VISIBILITY, shop);
  }
}
