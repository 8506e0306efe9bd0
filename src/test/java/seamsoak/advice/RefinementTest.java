package seamsoak.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
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
  private static final double[] CELSIUS = {1050, 1150};

  @Test
  void movesTheMinutesByLessThanATenthOfTheirBand() {
    SoakSamples possible =
        SoakSamples.of(
            MOSAIC,
            Walks.CORRELATIONS,
            Histories.around(Assumptions.USUAL, false, 24),
            new Sightings(List.of()),
            CELSIUS,
            List.of(),
            Progress.NONE);
    Clearing fine = clearing(Resolution.FINE);
    Clearing finer = clearing(new Resolution(3e-6, 1.06, 3e-4, false));
    for (double celsius : CELSIUS) {
      double band =
          possible.minutes(celsius, 0.9).orElseThrow()
              - possible.minutes(celsius, 0.1).orElseThrow();
      assertTrue(band > 1, () -> "band of " + band + " min at " + celsius);
      assertEquals(minutes(finer, celsius), minutes(fine, celsius), 0.1 * band);
    }
  }

  private static double minutes(Clearing clearing, double celsius) {
    return clearing.secondsAt(celsius + 273.15).orElseThrow() / 60;
  }

  private static Clearing clearing(Resolution resolution) {
    Shop shop = new Shop(Walks.CORRELATIONS, Assumptions.USUAL, resolution);
    List<Stage> stages = BilletWalk.ofLines(shop).walk(MOSAIC);
    return new Clearing(Walks.last(stages).piece(), VISIBILITY, shop);
  }
}
