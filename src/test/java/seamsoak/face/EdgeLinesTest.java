package seamsoak.face;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.SeamName;
import seamsoak.data.Fault;
import seamsoak.state.AsCooled;
import seamsoak.state.LineReport;
import seamsoak.support.Walks;
import seamsoak.unit.Length;

/** Which lines fall on the edge of a blade, and what cannot be drawn. */
class EdgeLinesTest {
  private static final Shop SHOP =
      new Shop(Walks.CORRELATIONS, Assumptions.USUAL, Resolution.SAMPLE);
  private static Billet mosaic;
  private static List<Stage> stages;

  @BeforeAll
  static void walk() throws IOException {
    mosaic = Walks.billet(Files.readString(Path.of("alloy-data/billets/mosaic.json")));
    stages = new BilletWalk(SHOP).walk(mosaic);
  }

  private static EdgeLines edge(Billet billet, List<Stage> walked, double tipMetres) {
    Stage last = walked.get(walked.size() - 1);
    FaceField face = FaceField.of(billet, walked, last.piece(), SHOP);
    return EdgeLines.of(
        face,
        BladeOutline.of(face, billet.blade(), 0.15, Optional.of(new Length(tipMetres))),
        LineReport.of(last.piece(), AsCooled.of(SHOP, billet.stack()).after(last).at(0.5)));
  }

  /** Once in each tile, at the middle of the thickness; the pieces of the bar between. */
  @Test
  void tileSeamsCrossTheEdgeOnceInEachTile() {
    Workpiece piece = stages.get(15).piece();
    double period =
        1e3 * Profile.period(piece.inner().get(0)) / piece.inner().get(0).normal().length();
    EdgeLines edge = edge(mosaic, stages, 0.05);
    assertEquals(50, edge.tipMm().orElseThrow(), 1e-6);
    assertEquals(150, edge.lengthMm(), 1e-6);
    for (EdgeLines.Across a : edge.across()) {
      boolean tiles = a.joints().made().kind() == SeamName.Kind.TILES;
      List<Double> at = a.atMm();
      int inEach = a.joints().made().step() == 4 ? 2 : 1;
      assertTrue(Math.abs(at.size() - inEach * 150 / period) <= inEach, at::toString);
      assertEquals(period, at.get(inEach) - at.get(0), 0.2, tiles + at.toString());
    }
    assertEquals(3, edge.across().size());
    // moved along the bar, they move the other way along the edge
    EdgeLines later = edge(mosaic, stages, 0.06);
    assertEquals(tile(edge, 20) - 10, tile(later, 10), 0.2);
  }

  private static double tile(EdgeLines edge, double from) {
    return edge.across().stream()
        .filter(a -> a.joints().made().kind() == SeamName.Kind.TILES)
        .flatMap(a -> a.atMm().stream())
        .filter(x -> x > from)
        .findFirst()
        .orElseThrow();
  }

  /**
   * 1-1/4 in of a bar some 37 mm wide, with a seam of the last restack in its middle, and of the
   * first one in about a quarter of it: the fire has taken from the outer pieces.
   */
  @Test
  void seamsRunAlongTheEdge() {
    double wide = 1e3 * stages.get(15).piece().bodySize().widthMetres();
    EdgeLines edge = edge(mosaic, stages, 0);
    assertEquals(31.75, edge.widthMm(), 1e-9);
    assertEquals(2, edge.along().size());
    for (EdgeLines.Along a : edge.along()) {
      boolean middle = a.joints().made().step() == 8;
      double seam = middle ? wide / 2 : wide / 4;
      assertEquals(Math.abs(seam - (wide - 31.75) / 2), a.offMm(), middle ? 0.05 : 1, a::toString);
      assertFalse(a.within());
    }
  }

  /** In a stack of three the edge lies in the middle one. */
  @Test
  void edgeOfAThreeLayerBladeLiesInItsCore() throws IOException {
    Billet billet = Walks.billet(Files.readString(Path.of("alloy-data/billets/san-mai.json")));
    EdgeLines edge = edge(billet, new BilletWalk(SHOP).walk(billet), 0);
    assertEquals(Optional.of("1095"), edge.steel());
    assertEquals(Optional.empty(), edge.tipMm());
    assertEquals(List.of(), edge.across());
  }

  @Test
  void whatHasNoFlatFaceIsRefusedInOneSentence() {
    Billet twisted =
        Walks.bar(
            "1084",
            "20 mm x 20 mm x 300 mm",
            "{ \"do\": \"twist\", \"turns\": 4, \"over\": \"200 mm\","
                + " \"heats\": [{ \"at\": \"1100 C\", \"for\": \"3 min\" }] }");
    List<Stage> walked = new BilletWalk(SHOP).walk(twisted);
    Fault fault =
        assertThrows(Fault.class, () -> FaceField.of(twisted, walked, walked.get(1).piece(), SHOP));
    assertEquals(1, fault.mistakes().size());
    assertTrue(fault.getMessage().contains("twist"), fault::getMessage);
    assertFalse(FaceField.isFlat(twisted));
    Fault loose =
        assertThrows(
            Fault.class,
            () -> FaceField.of(mosaic, stages.subList(0, 5), stages.get(4).piece(), SHOP));
    assertTrue(loose.getMessage().contains("not welded"), loose::getMessage);
  }
}
