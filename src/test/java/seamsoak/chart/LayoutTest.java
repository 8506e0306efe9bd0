package seamsoak.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The helpers that place and measure. */
class LayoutTest {

  @Test
  void labelsMoveJustFarEnough() {
    double[] size = {10, 10, 10};
    assertArrayEquals(
        new double[] {20, 50, 90},
        Spread.middles(new double[] {20, 50, 90}, size, 0, 100),
        1e-9,
        "free labels stay");
    assertArrayEquals(
        new double[] {40, 50, 60},
        Spread.middles(new double[] {50, 50, 50}, size, 0, 100),
        1e-9,
        "one heap spreads about its middle");
    assertArrayEquals(
        new double[] {5, 15, 25},
        Spread.middles(new double[] {-50, 0, 1}, size, 0, 100),
        1e-9,
        "the end holds");
  }

  @Test
  void axisNumbersAreRoundInTheirOwnUnit() {
    List<String> fahrenheit =
        Tick.round(700, 1150, 6, Tick.Unit.FAHRENHEIT).stream().map(Tick::label).toList();
    assertEquals(List.of("1400", "1600", "1800", "2000"), fahrenheit);
    assertEquals(
        760, Tick.round(700, 1150, 6, Tick.Unit.FAHRENHEIT).get(0).at(), 1e-9, "1400 F is 760 C");
    List<String> inches = Tick.round(0, 1.5, 5, Tick.Unit.INCH).stream().map(Tick::label).toList();
    assertEquals(List.of("0.00", "0.02", "0.04"), inches);
  }

  @Test
  void timeIsSaidAsPeopleSayIt() {
    assertEquals("0.5 min", Tick.duration(0.5));
    assertEquals("7.5 min", Tick.duration(7.5));
    assertEquals("12 min", Tick.duration(12));
    assertEquals("1 h", Tick.duration(59.7));
    assertEquals("10 h 9 min", Tick.duration(609));
  }

  @Test
  void numbersStayWithTheirUnits() {
    Type type = Type.load();
    assertEquals(
        List.of("1580 F (860 C),", "10 min, air"),
        type.wrap("1580 F (860 C), 10 min, air", 115, 4, 12, false));
  }

  @Test
  void widthsAreThoseOfTheFont() {
    FontRenderContext context = new FontRenderContext(null, true, true);
    for (boolean bold : new boolean[] {false, true}) {
      Typeface face = bold ? Typeface.bold() : Typeface.regular();
      Font font = face.awt().deriveFont(2048f);
      for (String text : List.of("Ac1 80CrV2", "1390–1435 F (755–780 C)", "≤ °…ÄÖß%\"'&<>")) {
        assertEquals(
            font.getStringBounds(text, context).getWidth(), face.width(text, 2048), 1, text);
      }
    }
  }

  @Test
  void aLongSoakLeavesRoomForShortCycles() {
    List<ScheduleFigure.Step> steps =
        List.of(Samples.step("soak", 1100, 600, 5, 5), Samples.step("refine", 800, 5, 4, 4));
    Panels panels = Panels.of(steps, 0, 600);
    double shortOne = panels.list().get(1).width();
    assertTrue(shortOne >= 96 && shortOne < panels.list().get(0).width());
    assertEquals(600, panels.list().get(1).left() + shortOne, 1e-9);
  }
}
