package seamsoak.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.InputStream;
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

  /** Java's own reader of fonts must see the same widths and shapes in the same files. */
  @Test
  void lettersAreThoseOfTheFont() throws Exception {
    FontRenderContext context = new FontRenderContext(null, true, true);
    for (boolean bold : new boolean[] {false, true}) {
      Typeface face = bold ? Typeface.bold() : Typeface.regular();
      Font font = java(bold ? "DejaVuSans-Bold.ttf" : "DejaVuSans.ttf").deriveFont(2048f);
      for (String text : List.of("Ac1 80CrV2", "1390–1435 F (755–780 C)", "≤ °…ÄÖß%\"'&<>éŵ½")) {
        assertEquals(
            font.getStringBounds(text, context).getWidth(), face.width(text, 2048), 1, text);
        Rectangle2D theirs = font.createGlyphVector(context, text).getOutline().getBounds2D();
        Path2D outline = face.outline(text, 2048, 0, 0);
        Rectangle2D ours = outline.getBounds2D();
        assertEquals(theirs.getMinX(), ours.getMinX(), 2, text);
        assertEquals(theirs.getMaxX(), ours.getMaxX(), 2, text);
        assertEquals(theirs.getMinY(), ours.getMinY(), 2, text);
        assertEquals(theirs.getMaxY(), ours.getMaxY(), 2, text);
        Area difference = new Area(font.createGlyphVector(context, text).getOutline());
        double whole = size(difference);
        difference.exclusiveOr(new Area(outline));
        assertTrue(size(difference) < 0.01 * whole, text);
      }
    }
  }

  private static Font java(String name) throws Exception {
    try (InputStream in =
        Typeface.class.getResourceAsStream("/net/sf/jasperreports/fonts/dejavu/" + name)) {
      return Font.createFont(Font.TRUETYPE_FONT, in);
    }
  }

  /** Area by the shoelace rule over a flattened outline. */
  private static double size(Area area) {
    double twice = 0;
    double[] at = new double[6];
    double[] last = new double[2];
    double[] start = new double[2];
    for (PathIterator i = area.getPathIterator(null, 0.5); !i.isDone(); i.next()) {
      int kind = i.currentSegment(at);
      double[] to = kind == PathIterator.SEG_CLOSE ? start : at;
      if (kind == PathIterator.SEG_MOVETO) {
        start = new double[] {at[0], at[1]};
      } else {
        twice += last[0] * to[1] - to[0] * last[1];
      }
      last = new double[] {to[0], to[1]};
    }
    return Math.abs(twice) / 2;
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
