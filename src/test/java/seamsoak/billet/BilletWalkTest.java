package seamsoak.billet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.carbon.Line;
import seamsoak.carbon.LineVisibility;
import seamsoak.carbon.Strip;
import seamsoak.data.Fault;

class BilletWalkTest {
  private static final String HEAT = "[{ \"at\": \"1150 C\", \"for\": \"3 min\" }]";
  private static final String WELD =
      "{ \"do\": \"weld\", \"heats\": [{ \"at\": \"1200 C\", \"for\": \"5 min\", \"times\": 2 }] }";

  private static String step(String text) {
    return text.replace('\'', '"').replace("HEAT", HEAT);
  }

  @Test
  void drawingReachesTheSectionAndKeepsWhatTheFireLeaves() {
    Stage end =
        Walks.last(
            Walks.walk(
                Walks.bar(
                    "1084",
                    "30 mm x 30 mm x 100 mm",
                    step(
                        "{ 'do': 'draw', 'thickness': '15 mm', 'width': '20 mm', 'heats':"
                            + " [{ 'at': '1150 C', 'for': '3 min', 'times': 4 }] }"))));
    Size size = end.piece().size();
    assertEquals(15e-3, size.thicknessMetres(), 1e-12);
    assertEquals(20e-3, size.widthMetres(), 1e-12);
    double start = 30e-3 * 30e-3 * 100e-3;
    assertTrue(size.cubicMetres() < start);
    assertTrue(size.cubicMetres() > 0.9 * start, "four heats cost less than a tenth");
    assertEquals(15e-3 / 2, end.piece().thicknessSkin().metres(), 1e-9);
    assertEquals(20e-3 / 2, end.piece().widthSkin().metres(), 1e-9);
  }

  @Test
  void scaleTakesTheSameFromTheSizeAndFromTheStrip() {
    List<Stage> stages =
        Walks.walk(
            Walks.bar(
                "1084",
                "20 mm x 30 mm x 100 mm",
                step("{ 'do': 'soak', 'heats': [{ 'at': '1100 C', 'for': '30 min' }] }")));
    Stage end = Walks.last(stages);
    double lost = 20e-3 - end.piece().size().thicknessMetres();
    assertEquals(2 * end.scaledMetres(), lost, 1e-12);
    assertEquals(10e-3 - end.scaledMetres(), end.piece().thicknessSkin().metres(), 1e-9);
  }

  @Test
  void grindingTakesTheDepthOffEveryFace() {
    Size size =
        Walks.last(
                Walks.walk(
                    Walks.bar(
                        "1084",
                        "20 mm x 30 mm x 100 mm",
                        step("{ 'do': 'grind', 'depth': '0.5 mm' }"))))
            .piece()
            .size();
    assertEquals(new Size(99e-3, 29e-3, 19e-3).lengthMetres(), size.lengthMetres(), 1e-12);
    assertEquals(29e-3, size.widthMetres(), 1e-12);
    assertEquals(19e-3, size.thicknessMetres(), 1e-12);
  }

  @Test
  void restackingStacksThePiecesAndLosesTheCuts() {
    Workpiece piece =
        Walks.last(
                Walks.walk(
                    Walks.bar(
                        "1084",
                        "20 mm x 25 mm x 106 mm",
                        step("{ 'do': 'restack', 'across': 2, 'high': 2, 'kerf': '2 mm' }"))))
            .piece();
    assertEquals(25e-3, piece.size().lengthMetres(), 1e-12);
    assertEquals(50e-3, piece.size().widthMetres(), 1e-12);
    assertEquals(40e-3, piece.size().thicknessMetres(), 1e-12);
    assertEquals(2, piece.joints().size());
    assertTrue(piece.hasLooseFaces());
  }

  /** The outer piece of four is gone, and more: sound metal to the middle is what is left. */
  @Test
  void grindingMayGoDeeperThanTheOuterPiece() {
    Workpiece piece =
        Walks.last(
                Walks.walk(
                    Walks.bar(
                        "1084",
                        "20 mm x 20 mm x 1600 mm",
                        step("{ 'do': 'restack', 'across': 4, 'high': 4, 'kerf': '1 mm' }"),
                        WELD,
                        step("{ 'do': 'grind', 'depth': '19 mm' }"))))
            .piece();
    Strip skin = piece.thicknessSkin();
    double due = piece.body().startRatio();
    assertEquals(piece.size().thicknessMetres() / 2, skin.metres(), 0.2e-3);
    assertEquals(due, skin.ratio(0), 1e-6 * due);
    assertEquals(due, skin.ratio(skin.cells() - 1), 1e-6 * due);
  }

  @Test
  void turningEveryOtherPieceSplitsFamilies() {
    String restack = step("{ 'do': 'restack', 'across': 2, 'high': 2, 'turn': 'alternate' }");
    String draw = step("{ 'do': 'draw', 'thickness': '20 mm', 'width': '20 mm', 'heats': HEAT }");
    List<Family> families =
        Walks.last(
                Walks.walk(
                    Walks.bar(
                        "1084", "20 mm x 20 mm x 400 mm", restack, WELD, draw, restack, WELD)))
            .piece()
            .families();
    assertEquals(6, families.size());
    double across =
        families.stream()
            .filter(f -> f.step() == 1 && f.normal().equals(Direction.WIDTH))
            .mapToDouble(Family::share)
            .sum();
    assertEquals(1.0, across, 1e-12, "half of each of two families runs each way");
  }

  @Test
  void aJacketKeepsScaleOffTheBodyButTakesItsCarbon() {
    String tile =
        step(
            "{ 'do': 'tile', 'angle': '45 deg', 'slice': '15 mm', 'grind': '0.3 mm', 'jacket':"
                + " { 'steel': '1008', 'thickness': '1.2 mm', 'coating': 'none' } }");
    List<Stage> stages = Walks.walk(Walks.bar("1084", "25 mm x 25 mm x 200 mm", tile, WELD));
    Workpiece piece = Walks.last(stages).piece();
    double jacket = piece.jacketMetres(piece.thicknessSkin());
    assertTrue(jacket > 0.5e-3 && jacket < 1.2e-3, "scale ate some of the jacket");
    double bare =
        Walks.CORRELATIONS.steelScaling().metalLossMetres(1200 + 273.15, 300) / Math.sqrt(2);
    double lost = 7.5e-3 - (piece.thicknessSkin().metres() - jacket);
    assertTrue(
        lost > 0.8 * bare && lost < 1.5 * bare,
        "the gap scales half as fast, and only in the first heat: " + lost);
    assertEquals(
        2 * piece.thicknessSkin().metres(), piece.size().thicknessMetres(), 1e-9, "size and strip");
    int below = 0;
    while (piece.thicknessSkin().metal(below).name().equals("1008")) {
      below++;
    }
    assertTrue(piece.thicknessSkin().percent(below) < 0.75, "carbon went into the sheet");
    assertTrue(piece.thicknessSkin().percent(below - 1) > 0.3, "where it is found");
  }

  /** Pitch along the bar is slice/sin a plus the kerf; the end wedges are T/tan a together. */
  @ParameterizedTest
  @CsvSource({
    "45, 15, 200, 7",
    "45, 15, 198, 7",
    "45, 15, 197, 7",
    "30, 12, 200, 6",
    "60, 16, 300, 14"
  })
  void theBarGivesSoManyTiles(double degrees, double slice, double length, int tiles) {
    Workpiece piece =
        Walks.last(
                Walks.walk(
                    Walks.bar(
                        "1084",
                        "25 mm x 25 mm x " + length + " mm",
                        step(
                            "{ 'do': 'tile', 'angle': '"
                                + degrees
                                + " deg', 'slice': '"
                                + slice
                                + " mm', 'kerf': '2 mm' }"))))
            .piece();
    Tiles t = piece.tiles().orElseThrow();
    double a = Math.toRadians(degrees);
    double used = 25 / Math.tan(a) + t.count() * (slice / Math.sin(a) + 2) - 2;
    assertTrue(used <= length + 1e-9 && used + slice / Math.sin(a) + 2 > length, "count " + t);
    assertEquals(tiles, t.count());
    assertEquals(tiles * 25e-3 / Math.sin(a), piece.size().lengthMetres(), 1e-12);
    assertEquals(slice * 1e-3, piece.size().thicknessMetres(), 1e-12);
    Direction n = piece.joints().get(0).normal();
    assertEquals(Math.sin(a), n.length(), 1e-12);
    assertEquals(Math.cos(a), n.thickness(), 1e-12);
  }

  @Test
  void aTileSeamPressedThinRunsFlatAndItsTraceGrows() {
    String tile = step("{ 'do': 'tile', 'angle': '45 deg', 'slice': '5/8 in' }");
    String press = step("{ 'do': 'press', 'thickness': '3/16 in', 'heats': HEAT }");
    Workpiece piece =
        Walks.last(Walks.walk(Walks.bar("1084", "1 in x 1 in x 8 in", tile, WELD, press))).piece();
    Family tiles = piece.families().get(0);
    // by hand: 15.4 mm (scale off) to 4.76 mm, n = (1/fl, 0, 1/ft)/|...|
    double ft = tiles.normal().thickness() / tiles.normal().length();
    double trace = tiles.trace(piece.shownFace());
    assertEquals(Math.hypot(1, ft), trace, 1e-9);
    assertTrue(trace > 5 && trace < 7, "about six times its thickness, not " + trace);
  }

  @Test
  void unlikeLayersMakeNoLineAndLikeLayersDo() {
    String two =
        "{ \"stack\": { \"layers\": 5, \"steels\": [%s], \"thickness\": [\"4 mm\"%s], \"width\":"
            + " \"30 mm\", \"length\": \"100 mm\" }, \"steps\": [ "
            + WELD
            + " ] }";
    Family unlike =
        Walks.last(
                Walks.walk(Walks.billet(String.format(two, "\"1084\", \"75Ni8\"", ", \"3 mm\""))))
            .piece()
            .families()
            .get(0);
    assertEquals(Optional.empty(), unlike.line());
    Family like =
        Walks.last(Walks.walk(Walks.billet(String.format(two, "\"1084\"", ""))))
            .piece()
            .families()
            .get(0);
    Line line = like.line().orElseThrow();
    assertTrue(line.dipPct() > 0.05, "the covered faces lost carbon: " + line);
  }

  @Test
  void groundFacesLeaveAFainterLineThanBrushedOnes() {
    String draw = step("{ 'do': 'draw', 'thickness': '25 mm', 'width': '25 mm', 'heats': HEAT }");
    String restack = step("{ 'do': 'restack', 'across': 2, 'high': 1 }");
    String grind = step("{ 'do': 'grind', 'depth': '0.4 mm' }");
    double brushed =
        Walks.last(Walks.walk(Walks.bar("1084", "27 mm x 27 mm x 200 mm", draw, restack, WELD)))
            .piece()
            .families()
            .get(0)
            .line()
            .orElseThrow()
            .dipPct();
    double ground =
        Walks.last(
                Walks.walk(Walks.bar("1084", "27 mm x 27 mm x 200 mm", draw, grind, restack, WELD)))
            .piece()
            .families()
            .get(0)
            .line()
            .orElseThrow()
            .dipPct();
    assertTrue(ground < brushed, ground + " ground, " + brushed + " brushed");
  }

  @Test
  void carbonIsAccountedForInEveryStep() {
    for (Stage s : Walks.walk(Scenario.of(0.80))) {
      assertEquals(0, s.worstMassError(), 1e-12, s.kind());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{ 'do': 'press', 'thickness': '40 mm', 'heats': HEAT } | only",
        "{ 'do': 'roll', 'thickness': '40 mm', 'heats': HEAT } | only",
        "{ 'do': 'draw', 'thickness': '40 mm', 'width': '40 mm', 'heats': HEAT } | there is only",
        "{ 'do': 'grind', 'depth': '15 mm' } | not that thick",
        "{ 'do': 'unjacket' } | no jacket",
        "{ 'do': 'restack', 'across': 2, 'high': 1, 'turn': 'alternate' } | cannot be turned",
        "{ 'do': 'restack', 'across': 30, 'high': 30 } | does not give 900 pieces",
        "{ 'do': 'tile', 'angle': '45 deg', 'slice': '15 mm', 'count': 40 } | 40 need",
        "{ 'do': 'tile', 'angle': '45 deg', 'slice': '15 mm', 'grind': '14 mm' } | ground that deep",
        "{ 'do': 'restack', 'across': 2, 'high': 1 }, { 'do': 'grind', 'depth': '0.1 mm' } |"
            + " welded first",
      })
  void whatCannotBeDoneIsRefusedWithASentence(String steps, String because) {
    Billet billet = Walks.bar("1084", "20 mm x 25 mm x 200 mm", step(steps));
    Fault fault = assertThrows(Fault.class, () -> Walks.walk(billet));
    assertTrue(fault.getMessage().contains(because), fault.getMessage());
    assertTrue(fault.getMessage().contains("cannot be done"), fault.getMessage());
    assertTrue(fault.place().line() > 0, "it says where");
  }

  @Test
  void visibilityNeedsBothDipAndWidth() {
    LineVisibility usual = LineVisibility.USUAL;
    assertTrue(usual.shows(new Line(0.10, 0.1e-3), 1));
    assertTrue(usual.shows(new Line(0.12, 0.05e-3), 2), "a flat seam shows wider than it is");
    assertTrue(!usual.shows(new Line(0.09, 1e-3), 1));
    assertTrue(!usual.shows(new Line(0.5, 0.09e-3), 1));
  }
}
