package seamsoak.billet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.carbon.Line;
import seamsoak.carbon.Strip;
import seamsoak.data.Fault;
import seamsoak.state.Skin;
import seamsoak.support.Ran;
import seamsoak.support.Scenario;
import seamsoak.support.Seams;
import seamsoak.support.Walks;

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
    assertEquals(15e-3 / 2, end.piece().thickness().toMiddle().metres(), 1e-9);
    assertEquals(20e-3 / 2, end.piece().width().toMiddle().metres(), 1e-9);
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
    assertEquals(10e-3 - end.scaledMetres(), end.piece().thickness().toMiddle().metres(), 1e-9);
  }

  private static final String HELD =
      "{ 'do': 'KIND', TO 'outside': 'open', 'heats': [{ 'at': '900 C', 'for': '40 min' }] }";

  private static Stage held(String steel, String kind, String to, String equipment) {
    return Walks.last(
        Walks.walk(
            Walks.billet(
                step(
                    "{ 'stack': { 'layers': 1, 'steels': ['"
                        + steel
                        + "'], 'thickness': ['12 mm'], 'width': '40 mm', 'length': '100 mm' },"
                        + " 'steps': [ "
                        + HELD.replace("KIND", kind).replace("TO", to)
                        + " ]"
                        + equipment
                        + " }"))));
  }

  /** Depth of the skin on the flats, to 90 % of the core's carbon, mm. */
  private static double skinMm(Stage stage) {
    return 1e3
        * Skin.of(stage.piece(), Walks.CORRELATIONS.hardening().asQuenched()).flats().metres();
  }

  private static final String NO_KILN = ", 'equipment': { 'kiln': 'none' }";
  private static final String COOL_KILN = ", 'equipment': { 'kiln': { 'highest': '850 C' } }";

  /**
   * In the still air of a kiln the scale of silicon and chromium steel lies close: the walk says
   * what {@code decarb} says of it, and a kiln that is not there or does not get there does
   * nothing. Soaks and treatments are done in it, forging is not.
   */
  @ParameterizedTest
  @CsvSource({"9260, 0.4", "5160, 0.95", "52100, 0.75"})
  void compactScaleKeepsCarbonInInTheKilnOnly(String steel, double mostShare) {
    Stage kiln = held(steel, "normalize", "", "");
    Stage forge = held(steel, "normalize", "", NO_KILN);
    assertTrue(skinMm(kiln) < mostShare * skinMm(forge), skinMm(kiln) + " " + skinMm(forge));
    assertTrue(kiln.scaledMetres() < forge.scaledMetres());
    assertEquals(skinMm(forge), skinMm(held(steel, "normalize", "", COOL_KILN)));
    assertEquals(skinMm(kiln), skinMm(held(steel, "soak", "", "")), 0.01);
    String to = "'thickness': '12 mm', 'width': '40 mm',";
    assertEquals(skinMm(held(steel, "draw", to, NO_KILN)), skinMm(held(steel, "draw", to, "")));
    double alone =
        Ran.run(
                "decarb",
                steel,
                "--at",
                "900C",
                "--for",
                "40min",
                "--json",
                "--atmosphere",
                "still-air")
            .number("depthMm.to90Pct");
    assertEquals(alone, skinMm(kiln), 0.15 * alone);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1084", "1095", "75Ni8", "1018"})
  void plainSteelScalesAlikeInKilnAndForge(String steel) {
    Stage kiln = held(steel, "normalize", "", "");
    Stage forge = held(steel, "normalize", "", NO_KILN);
    assertEquals(skinMm(forge), skinMm(kiln));
    assertEquals(forge.scaledMetres(), kiln.scaledMetres());
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
    assertEquals(SectionLine.End.GAP, piece.width().far(), "the two are each other's mirror image");
    assertEquals(SectionLine.End.GAP, piece.thickness().far());
    assertTrue(piece.hasLooseFaces());
  }

  /** The outer piece of four is gone and half of the next: sound metal, then the seam behind it. */
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
                        step("{ 'do': 'grind', 'depth': '30 mm' }"))))
            .piece();
    Strip skin = piece.thickness().toMiddle();
    double due = piece.body().startRatio();
    assertEquals(piece.size().thicknessMetres() / 2, skin.metres(), 0.2e-3);
    assertEquals(due, skin.ratio(0), 1e-6 * due);
    assertTrue(skin.ratio(skin.cells() - 1) < 0.9 * due, "the seam in the middle");
    assertEquals(1, skin.planes().size());
  }

  /** Every seam that the line from side to side meets lies on it, in order. */
  @Test
  void aLineHasAllTheSeamsThatItMeets() {
    String restack = step("{ 'do': 'restack', 'across': 2, 'high': 2, 'turn': 'alternate' }");
    String draw = step("{ 'do': 'draw', 'thickness': '20 mm', 'width': '20 mm', 'heats': HEAT }");
    Workpiece piece =
        Walks.last(
                Walks.walk(
                    Walks.bar(
                        "1084", "20 mm x 20 mm x 400 mm", restack, WELD, draw, restack, WELD)))
            .piece();
    for (SectionLine line : List.of(piece.width(), piece.thickness())) {
      assertEquals(
          List.of(1, 4, 1), line.strip().planes().stream().map(p -> p.name().step()).toList());
    }
    assertEquals(piece.size().widthMetres(), piece.width().strip().metres(), 1e-12);
  }

  /** Three pieces, the middle one turned, are the same from both ends. */
  @Test
  void aRowThatIsTheSameFromBothEndsIsKeptHalf() {
    String restack = step("{ 'do': 'restack', 'across': 3, 'high': 3, 'turn': 'alternate' }");
    Workpiece piece =
        Walks.last(Walks.walk(Walks.bar("1084", "20 mm x 20 mm x 400 mm", restack, WELD))).piece();
    assertEquals(1, piece.width().strip().planes().size());
    assertEquals(piece.size().widthMetres() / 2, piece.width().strip().metres(), 1e-12);
  }

  /** What layers lose at their faces before they are welded, the section loses. */
  @Test
  void thirteenLayersOfOneSteelHaveOneCore() {
    String stack =
        "{ 'stack': { 'layers': 13, 'steels': ['%s', '%s'], 'thickness': ['1/8 in', '3/32 in'],"
            + " 'width': '1-1/2 in', 'length': '9 in' }, 'steps': ["
            + " { 'do': 'weld', 'heats': [{ 'at': '2250 F', 'for': '5 min', 'times': 3 }] },"
            + " { 'do': 'draw', 'thickness': '1 in', 'width': '1 in', 'heats':"
            + " [{ 'at': '2100 F', 'for': '3 min', 'times': 6 }] } ] }";
    for (String other : List.of("1084", "75Ni8")) {
      Workpiece piece =
          Walks.last(Walks.walk(Walks.billet(step(String.format(stack, "1084", other))))).piece();
      Strip width = piece.width().toMiddle();
      Strip up = piece.thickness().toMiddle();
      // over one thick and one thin layer: their seams still leave a ripple
      double pair =
          (1.0 / 8 + 3.0 / 32) / (7.0 / 8 + 6 * 3.0 / 32) * piece.size().thicknessMetres();
      double across = meanOfInner(up, pair);
      assertEquals(across, meanOfInner(width, pair), 0.002, other);
      assertTrue(across < piece.body().percent(piece.body().startRatio()) - 0.05, "it lost some");
    }
  }

  private static double meanOfInner(Strip toMiddle, double innerMetres) {
    double carbon = 0;
    double metres = 0;
    for (int i = toMiddle.cells() - 1; i >= 0 && metres < innerMetres; i--) {
      carbon += toMiddle.metres(i) * toMiddle.percent(i);
      metres += toMiddle.metres(i);
    }
    return carbon / metres;
  }

  @Test
  void aJacketKeepsScaleOffTheBodyButTakesItsCarbon() {
    String tile =
        step(
            "{ 'do': 'tile', 'angle': '45 deg', 'slice': '15 mm', 'grind': '0.3 mm', 'jacket':"
                + " { 'steel': '1008', 'thickness': '1.2 mm', 'coating': 'none' } }");
    List<Stage> stages = Walks.walk(Walks.bar("1084", "25 mm x 25 mm x 200 mm", tile, WELD));
    Workpiece piece = Walks.last(stages).piece();
    double jacket = piece.jacketMetres(piece.thickness());
    assertTrue(jacket > 0.5e-3 && jacket < 1.2e-3, "scale ate some of the jacket");
    double bare =
        Math.sqrt(
            Walks.CORRELATIONS.forging().steelScaling().squareMetresPerSecond(1200 + 273.15) * 300);
    double lost = 7.5e-3 - (piece.thickness().toMiddle().metres() - jacket);
    assertTrue(
        lost > 0.8 * bare && lost < 1.5 * bare,
        "the gap scales half as fast, and only in the first heat: " + lost);
    assertEquals(
        2 * piece.thickness().toMiddle().metres(),
        piece.size().thicknessMetres(),
        1e-9,
        "size and strip");
    int below = 0;
    while (piece.thickness().toMiddle().metal(below).name().equals("1008")) {
      below++;
    }
    assertTrue(piece.thickness().toMiddle().percent(below) < 0.75, "carbon went into the sheet");
    assertTrue(piece.thickness().toMiddle().percent(below - 1) > 0.3, "where it is found");
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
    Direction n = piece.inner().get(0).normal();
    assertEquals(Math.sin(a), n.length(), 1e-12);
    assertEquals(Math.cos(a), n.thickness(), 1e-12);
  }

  @Test
  void aTileSeamPressedThinRunsFlatAndItsTraceGrows() {
    String tile = step("{ 'do': 'tile', 'angle': '45 deg', 'slice': '5/8 in' }");
    String press = step("{ 'do': 'press', 'thickness': '3/16 in', 'heats': HEAT }");
    Workpiece piece =
        Walks.last(Walks.walk(Walks.bar("1084", "1 in x 1 in x 8 in", tile, WELD, press))).piece();
    SectionLine tiles = piece.inner().get(0);
    // by hand: 15.4 mm (scale off) to 4.76 mm, n = (1/fl, 0, 1/ft)/|...|
    double ft = tiles.normal().thickness() / tiles.normal().length();
    double trace = tiles.trace(piece.shownFace());
    assertEquals(Math.hypot(1, ft), trace, 1e-9);
    assertTrue(trace > 5 && trace < 7, "about six times its thickness, not " + trace);
  }

  /** Carbon burns off the faces of unlike steels as it does off those of like ones. */
  @Test
  void unlikeLayersLoseCarbonAtTheirBoundaryAsLikeOnesDo() {
    String two =
        "{ \"stack\": { \"layers\": 5, \"steels\": [%s], \"thickness\": [\"4 mm\"%s], \"width\":"
            + " \"30 mm\", \"length\": \"100 mm\" }, \"steps\": [ "
            + WELD
            + " ] }";
    for (String steels : List.of("\"1084\", \"75Ni8\"", "\"1084\"")) {
      String second = steels.contains(",") ? ", \"3 mm\"" : "";
      Workpiece piece =
          Walks.last(Walks.walk(Walks.billet(String.format(two, steels, second)))).piece();
      Line line = Seams.deepest(piece, 0).carbon();
      assertTrue(line.depthPct() > 0.05, "the covered faces lost carbon: " + line);
    }
  }

  @Test
  void groundFacesLeaveAFainterLineThanBrushedOnes() {
    String draw = step("{ 'do': 'draw', 'thickness': '25 mm', 'width': '25 mm', 'heats': HEAT }");
    String restack = step("{ 'do': 'restack', 'across': 2, 'high': 1 }");
    String grind = step("{ 'do': 'grind', 'depth': '0.4 mm' }");
    double brushed = depth(Walks.bar("1084", "27 mm x 27 mm x 200 mm", draw, restack, WELD), 2);
    double ground =
        depth(Walks.bar("1084", "27 mm x 27 mm x 200 mm", draw, grind, restack, WELD), 3);
    assertTrue(ground < brushed, ground + " ground, " + brushed + " brushed");
  }

  private static double depth(Billet billet, int madeIn) {
    return Seams.deepest(Walks.last(Walks.walk(billet)).piece(), madeIn).carbon().depthPct();
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
        "{ 'do': 'press', 'thickness': '40 mm', 'heats': HEAT } | only | leave the step out",
        "{ 'do': 'roll', 'thickness': '40 mm', 'heats': HEAT } | only | leave the step out",
        "{ 'do': 'draw', 'thickness': '40 mm', 'width': '40 mm', 'heats': HEAT } | there is only | ask for less",
        "{ 'do': 'grind', 'depth': '15 mm' } | not that thick | take less off",
        "{ 'do': 'unjacket' } | no jacket | leave the step out",
        "{ 'do': 'restack', 'across': 2, 'high': 1, 'turn': 'alternate' } | cannot be turned | draw it square before",
        "{ 'do': 'restack', 'across': 30, 'high': 30 } | does not give 900 pieces | cut fewer pieces",
        "{ 'do': 'tile', 'angle': '45 deg', 'slice': '15 mm', 'count': 40 } | 40 need | fewer tiles",
        "{ 'do': 'tile', 'angle': '45 deg', 'slice': '15 mm', 'grind': '14 mm' } | ground that deep | grind less",
        "{ 'do': 'restack', 'across': 2, 'high': 1 }, { 'do': 'grind', 'depth': '0.1 mm' } |"
            + " welded first | put a weld step before it",
      })
  void whatCannotBeDoneIsRefusedWithASentence(String steps, String because, String instead) {
    Billet billet = Walks.bar("1084", "20 mm x 25 mm x 200 mm", step(steps));
    Fault fault = assertThrows(Fault.class, () -> Walks.walk(billet));
    assertTrue(fault.getMessage().contains(because), fault.getMessage());
    assertTrue(fault.getMessage().contains("cannot be done"), fault.getMessage());
    assertTrue(fault.getMessage().contains(instead), fault.getMessage());
    assertTrue(fault.place().line() > 0, "it says where");
  }
}
