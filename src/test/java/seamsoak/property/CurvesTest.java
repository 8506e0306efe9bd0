package seamsoak.property;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.data.DataFolder;
import seamsoak.heat.HeatCurve;
import seamsoak.heat.Section;
import seamsoak.heat.SectionCurve;
import seamsoak.property.hardening.HollomonJaffe1945;
import seamsoak.property.hardening.TemperingCurve;
import seamsoak.source.Estimate;

/** Sections, and what is read off a cooling and a tempering curve of a few made-up points. */
class CurvesTest {
  /** Core and face from 1000 to 400 K. */
  private static final SectionCurve COOLING =
      new SectionCurve(
          List.of(
              new SectionCurve.Moment(0, 1000, 1000),
              new SectionCurve.Moment(10, 900, 700),
              new SectionCurve.Moment(20, 600, 500),
              new SectionCurve.Moment(40, 400, 400)));

  private final HollomonJaffe1945 law =
      Correlations.load(DataFolder.packed()).hardening().parameter();

  @ParameterizedTest
  @CsvSource({
    "-5, 1000, 1000",
    "0, 1000, 1000",
    "5, 950, 850",
    "10, 900, 700",
    "15, 750, 600",
    "20, 600, 500",
    "30, 500, 450",
    "40, 400, 400",
    "99, 400, 400"
  })
  void temperaturesRunStraightBetweenMoments(double seconds, double core, double face) {
    assertEquals(core, COOLING.coreKelvin(seconds), 1e-9);
    assertEquals(face, COOLING.faceKelvin(seconds), 1e-9);
  }

  @Test
  void timesBetweenTemperatures() {
    assertEquals(OptionalDouble.of(5), COOLING.coreSecondsBetween(1000, 950));
    assertEquals(OptionalDouble.of(10), COOLING.coreSecondsBetween(1000, 900));
    assertTrue(COOLING.coreSecondsBetween(1000, 399).isEmpty());
    assertEquals(15, COOLING.coreSecondsBetween(900, 550).orElseThrow(), 1e-9);
    assertEquals(15, COOLING.faceSecondsBetween(850, 500).orElseThrow(), 1e-9);
    assertTrue(COOLING.coreSecondsBetween(900, 300).isEmpty());
    // it begins within the two: counted from the start
    assertEquals(10, COOLING.faceSecondsBetween(1100, 700).orElseThrow(), 1e-9);
    assertEquals(5, COOLING.faceSecondsBetween(1000, 850).orElseThrow(), 1e-9);
    assertTrue(COOLING.faceSecondsBetween(1200, 1100).isEmpty());
  }

  @Test
  void lengthEndAndDifference() {
    assertEquals(40, COOLING.seconds());
    assertEquals(new SectionCurve.Moment(40, 400, 400), COOLING.end());
    assertEquals(200, COOLING.greatestDifferenceKelvin());
  }

  @Test
  void segmentsAreAsCoarseAsAskedFor() {
    assertEquals(
        List.of(
            new HeatCurve.Segment(1000, 900, 10),
            new HeatCurve.Segment(900, 600, 10),
            new HeatCurve.Segment(600, 400, 20)),
        COOLING.core(100).segments());
    assertEquals(
        List.of(new HeatCurve.Segment(1000, 600, 20), new HeatCurve.Segment(600, 400, 20)),
        COOLING.core(101).segments());
    assertEquals(
        List.of(new HeatCurve.Segment(1000, 700, 10), new HeatCurve.Segment(700, 400, 30)),
        COOLING.face(300).segments());
  }

  /** 60 HRC to a parameter of 10, 40 at 16, 30 at 18 and on along that line. */
  private TemperingCurve tempering() {
    return new TemperingCurve(
        law, new TreeMap<>(Map.of(10.0, 60.0, 16.0, 40.0, 18.0, 30.0)), 3, "x");
  }

  @ParameterizedTest
  @CsvSource({"5, 60", "10, 60", "13, 50", "16, 40", "17, 35", "18, 30", "18.4, 28"})
  void hardnessRunsStraightBetweenPoints(double parameter, double expected) {
    assertEquals(expected, tempering().hrcAt(parameter).value(), 1e-9);
  }

  @Test
  void beyondItsPointsItSaysSo() {
    assertTrue(tempering().hrcAt(10).exceeded().isEmpty());
    assertTrue(tempering().hrcAt(18).exceeded().isEmpty());
    assertEquals(1, tempering().hrcAt(9.99).exceeded().size());
    assertEquals(1, tempering().hrcAt(18.01).exceeded().size());
  }

  @Test
  void bandAndMove() {
    Estimate e = tempering().movedBy(2).hrcAt(13);
    assertEquals(49, e.low(), 1e-9);
    assertEquals(52, e.value(), 1e-9);
    assertEquals(55, e.high(), 1e-9);
  }

  @Test
  void temperaturesTurnTheHardnessRound() {
    for (double hrc : new double[] {58, 50, 41, 36}) {
      Estimate kelvin = tempering().kelvinFor(hrc, 2);
      assertEquals(hrc, tempering().hrc(kelvin.value(), 2).value(), 1e-6);
      assertTrue(kelvin.low() < kelvin.value() && kelvin.value() < kelvin.high());
      assertTrue(kelvin.exceeded().isEmpty());
    }
    assertEquals(
        tempering().hrc(500, 4).value(), tempering().hrc(500, 2, 2).value(), 1e-12, "two of 2 h");
  }

  /** 100 C and 1000 K are the ends, and what no heat between gives is told. */
  @Test
  void hardnessThatNoTemperGives() {
    Estimate harder = tempering().kelvinFor(61, 2);
    assertEquals(373.15, harder.value(), 1e-9);
    assertEquals(1, harder.exceeded().size());
    Estimate softer = tempering().kelvinFor(-20, 2);
    assertEquals(1000, softer.value(), 1e-9);
    assertEquals(1, softer.exceeded().size());
  }

  /** The smaller side is the thickness, whichever comes first; neither may be nothing. */
  @Test
  void sidesOfASection() {
    assertEquals(new Section(0.005, 0.03), new Section(0.03, 0.005));
    assertEquals(0.005, new Section(0.03, 0.005).thicknessMetres());
    assertThrows(IllegalArgumentException.class, () -> new Section(0, 0.03));
    assertThrows(IllegalArgumentException.class, () -> new Section(0.03, 0));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Section(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY));
  }
}
