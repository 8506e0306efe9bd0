package seamsoak.plane;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import seamsoak.plane.ReferenceTable.Row;
import seamsoak.plane.SectionHistory.Bar;
import seamsoak.plane.SectionHistory.Fineness;
import seamsoak.plane.SectionHistory.Told;

/**
 * The demo's section in two dimensions: against an earlier solver of the kind by other hands,
 * against finer grids, against what is stored for other tests.
 */
class SectionHistoryTest {
  /** The earlier values are printed to 1e-4 or 1e-3; grids differ by as much as this, wt%. */
  private static final double MONO = 3e-3;

  /** With layers the place along the seam matters, wt%. */
  private static final double LAYERED = 6e-3;

  /** What the coarse grid of these tests may cost against the stored fine one, wt%. */
  private static final double COARSE = 2e-3;

  private static List<Row> earlier(Bar bar, int last) {
    return ReferenceTable.earlier().stream()
        .filter(r -> r.bar() == bar && r.step() <= last)
        .toList();
  }

  private static DynamicTest agrees(Row row, List<Told> told, double within) {
    String name = row.history() + " " + row.step() + " " + row.what() + ", " + row.place();
    return DynamicTest.dynamicTest(
        name, () -> assertEquals(row.value(), row.in(told), within, name));
  }

  @TestFactory
  List<DynamicTest> solidBarAgreesWithAnEarlierSolver() {
    List<Told> told = SectionHistory.told(Bar.MONO, Fineness.USUAL, 15);
    return earlier(Bar.MONO, 15).stream().map(r -> agrees(r, told, MONO)).toList();
  }

  @Test
  void widthOfTheTileSeam() {
    List<Told> told = SectionHistory.told(Bar.MONO, Fineness.USUAL, 15);
    String place = "3/8 of the width wide";
    assertEquals(1.19, SectionHistory.value(told, 15, "tile 11", place), 0.015);
  }

  @TestFactory
  List<DynamicTest> firstRestackOfTheLayeredBar() {
    List<Told> told = SectionHistory.told(Bar.LAYERED, Fineness.USUAL, 5);
    return earlier(Bar.LAYERED, 5).stream().map(r -> agrees(r, told, LAYERED)).toList();
  }

  @TestFactory
  @EnabledIfSystemProperty(named = "long", matches = "true")
  List<DynamicTest> layeredBarAgreesWithAnEarlierSolver() {
    List<Told> told = SectionHistory.told(Bar.LAYERED, Fineness.FINE, 15);
    return earlier(Bar.LAYERED, 15).stream().map(r -> agrees(r, told, LAYERED)).toList();
  }

  /** The core is the same wherever it is measured, and welding and drawing leave it alone. */
  @Test
  void thirteenLayersOfOneSteelHaveLostCarbonInside() {
    List<Told> told = SectionHistory.told(Bar.THIRTEEN, Fineness.USUAL, 2);
    double welded = SectionHistory.value(told, 1, "core", "mean over two layers");
    double drawn = SectionHistory.value(told, 2, "core", "mean over two layers");
    assertEquals(welded, drawn, 1e-3);
    Plate plate = SectionHistory.plates(Bar.THIRTEEN, Fineness.USUAL, 2).get(2);
    double halfWay = Places.meanOfTwoLayers(plate, 0.5 * plate.across().metres());
    assertEquals(drawn, halfWay, 2e-3);
    double start = SectionHistory.BODY.percent(SectionHistory.BODY.startRatio());
    assertTrue(start - welded > 0.08 && start - welded < 0.11, () -> "welded " + welded);
  }

  /** Twice and four times as fine: the stored values are those of the finest grid. */
  @TestFactory
  List<DynamicTest> coarseGridIsGoodEnoughForTheseTests() {
    return ReferenceTable.demo().stream()
        .filter(r -> r.bar() != Bar.LAYERED)
        .map(r -> agrees(r, SectionHistory.told(r.bar(), Fineness.USUAL, 15), within(r)))
        .toList();
  }

  /** A width is off as the carbon on its flanks, which there rises by 0.2 wt% in 1 mm. */
  private static double within(Row row) {
    return row.place().endsWith("wide") ? 10 * COARSE : COARSE;
  }

  @Test
  @EnabledIfSystemProperty(named = "long", matches = "true")
  void halvingTheGridBringsItNearer() {
    List<Told> fine = SectionHistory.told(Bar.MONO, Fineness.FINE, 15);
    List<Told> usual = SectionHistory.told(Bar.MONO, Fineness.USUAL, 15);
    Map<Boolean, List<Row>> rows =
        ReferenceTable.demo().stream()
            .filter(r -> r.bar() == Bar.MONO)
            .collect(Collectors.partitioningBy(r -> r.place().endsWith("wide")));
    double finer = rms(rows.get(false), fine);
    double coarser = rms(rows.get(false), usual);
    assertTrue(finer < 0.5 * coarser, () -> finer + " against " + coarser);
    assertTrue(finer < 5e-4, () -> "rms " + finer);
  }

  private static double rms(List<Row> rows, List<Told> told) {
    return Math.sqrt(
        rows.stream()
            .mapToDouble(r -> Math.pow(r.value() - r.in(told), 2))
            .average()
            .orElseThrow());
  }

  @Test
  @EnabledIfSystemProperty(named = "long", matches = "true")
  void storedValuesAreWhatTheSolverGives() {
    for (Bar bar : Bar.values()) {
      List<Told> told = SectionHistory.told(bar, ReferenceTable.fineness(bar), 15);
      List<Row> rows = ReferenceTable.demo().stream().filter(r -> r.bar() == bar).toList();
      assertEquals(told.size(), rows.size());
      rows.forEach(r -> assertEquals(r.value(), r.in(told), 2e-5, r::toString));
    }
  }

  /** Writes the stored values anew, when asked. */
  @Test
  @EnabledIfSystemProperty(named = "regenerate", matches = "reference-2d")
  void writeReference() throws IOException {
    Files.writeString(
        Path.of("src/test/resources/reference-2d/demo.csv"), ReferenceTable.computed());
  }
}
