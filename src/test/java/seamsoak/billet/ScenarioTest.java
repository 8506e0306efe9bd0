package seamsoak.billet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.support.Scenario;
import seamsoak.support.Seams;
import seamsoak.support.Walks;

/**
 * Common practice, no source: the seams of the second restack are gone after the tile heats while
 * the tile seams still show, and the tile seams are gone at the end. Default settings, no tuning.
 *
 * <p>What comes out, for bodies of 0.75, 0.80 and 0.85 % C: the contrast of the second restack's
 * seams is 1.2 to 1.4 when they are welded and 0.55 to 0.60 after the tile heats; that of the tile
 * seams 1.05 to 1.16 after the tile heats, 0.6 to 0.7 after the press and 0.2 at the end, where
 * they are a wide shade. A line shows from 1 on. The trade sees a few tile seams survive the last
 * draw, which falls within the band.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ScenarioTest {
  private static final int SECOND_RESTACK = 4;
  private static final int SECOND_WELD = 5;
  private static final int TILES = 7;
  private static final int TILE_WELD = 8;

  @ParameterizedTest
  @ValueSource(doubles = {0.75, 0.80, 0.85})
  void theSeamsFadeInTheOrderOfTheTrade(double carbonPct) {
    List<Stage> stages = Walks.walk(Scenario.of(carbonPct));
    Stage afterRestackWeld = stages.get(SECOND_WELD);
    Stage afterTileWeld = stages.get(TILE_WELD);
    Stage end = Walks.last(stages);
    assertTrue(shows(afterRestackWeld, SECOND_RESTACK), "the restack's seams show when welded");
    assertTrue(!shows(afterTileWeld, SECOND_RESTACK), "and are gone after the tile heats");
    assertTrue(
        dip(afterTileWeld, TILES) > 1.5 * dip(afterTileWeld, SECOND_RESTACK),
        "the tile seams are the ones left");
    assertTrue(!shows(end, TILES), "and are gone at the end");
    assertTrue(!shows(end, SECOND_RESTACK));
    for (int i = TILE_WELD + 1; i < stages.size(); i++) {
      assertTrue(
          dip(stages.get(i), TILES) <= dip(stages.get(i - 1), TILES) + 1e-9,
          "no later step deepens the line");
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.75, 0.80, 0.85})
  void theTileSeamsStillShowAfterTheTileHeats(double carbonPct) {
    assertTrue(shows(Walks.walk(Scenario.of(carbonPct)).get(TILE_WELD), TILES));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.80})
  void sizesComeOutAsTheTradeHasThem(double carbonPct) {
    List<Stage> stages = Walks.walk(Scenario.of(carbonPct));
    int tiles = stages.get(TILE_WELD).piece().tiles().orElseThrow().count();
    assertTrue(tiles >= 6 && tiles <= 9, "about eight tiles from one bar, not " + tiles);
    assertEquals(3.0 / 16, Walks.last(stages).piece().size().thicknessMetres() / 0.0254, 1e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.80})
  void aWalkForTheLinesAloneFindsTheSameLines(double carbonPct) {
    Shop shop = new Shop(Walks.CORRELATIONS, Assumptions.USUAL, Resolution.FINE);
    List<Stage> full = new BilletWalk(shop).walk(Scenario.of(carbonPct));
    List<Stage> lines = BilletWalk.ofLines(shop).walk(Scenario.of(carbonPct));
    for (int i = 0; i < full.size(); i++) {
      for (int made : new int[] {1, SECOND_RESTACK, TILES}) {
        assertEquals(shows(full.get(i), made), shows(lines.get(i), made), "step " + i);
      }
    }
    assertEquals(dip(full.get(TILE_WELD), TILES), dip(lines.get(TILE_WELD), TILES), 1e-4);
    assertEquals(
        Walks.last(full).piece().size().lengthMetres(),
        Walks.last(lines).piece().size().lengthMetres(),
        1e-4);
  }

  private static boolean shows(Stage stage, int madeIn) {
    return Seams.shows(stage, madeIn);
  }

  private static double dip(Stage stage, int madeIn) {
    return Seams.deepest(stage.piece(), madeIn).carbon().depthPct();
  }
}
