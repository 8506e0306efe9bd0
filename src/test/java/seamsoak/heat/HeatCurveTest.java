package seamsoak.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import seamsoak.heat.HeatCurve.Segment;

class HeatCurveTest {
  private static final HeatCurve RISE_HOLD_FALL =
      new HeatCurve(
          List.of(
              new Segment(300, 1300, 1000),
              new Segment(1300, 1300, 600),
              new Segment(1300, 300, 500)));

  @Test
  void whatIsHotterThanATemperatureKeepsItsTimes() {
    assertEquals(
        List.of(
            new Segment(800, 1300, 500), new Segment(1300, 1300, 600), new Segment(1300, 800, 250)),
        RISE_HOLD_FALL.above(800).segments());
  }

  @Test
  void nothingIsLeftOfACurveThatStaysCooler() {
    assertEquals(List.of(), RISE_HOLD_FALL.above(1300 + 1e-9).segments());
    assertEquals(RISE_HOLD_FALL, RISE_HOLD_FALL.above(300));
  }

  @Test
  void aHotterCurveTakesAsLong() {
    HeatCurve hotter = RISE_HOLD_FALL.plus(20);
    assertEquals(1320, hotter.peakKelvin());
    assertEquals(320, hotter.endKelvin());
    assertEquals(RISE_HOLD_FALL.seconds(), hotter.seconds());
  }
}
