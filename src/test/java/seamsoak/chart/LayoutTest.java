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
import java.awt.image.BufferedImage;
import java.io.InputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import seamsoak.chart.figure.ScheduleFigure;
import seamsoak.chart.figure.Unit;
import seamsoak.unit.UnitSystem;

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
    assertEquals(
        List.of("1400", "1600", "1800", "2000"),
        numbersAtTheLeft(Axes.of(700, 1150, UnitSystem.US, Unit.FAHRENHEIT, Unit.CELSIUS), 180));
    assertEquals(
        List.of("700", "800", "900", "1000", "1100"),
        numbersAtTheLeft(
            Axes.of(700, 1150, UnitSystem.METRIC, Unit.FAHRENHEIT, Unit.CELSIUS), 180));
    assertEquals(
        List.of("0.00", "0.02", "0.04"),
        numbersAtTheLeft(Axes.of(0, 1.5, UnitSystem.US, Unit.INCH, Unit.MILLIMETRE), 120));
    assertEquals(
        List.of("1.0", "0.5", "0.0", "0.5", "1.0"),
        numbersAtTheLeft(Axes.distances(-1, 1, UnitSystem.METRIC), 200),
        "a distance has no sign");
  }

  private static List<String> numbersAtTheLeft(Axes up, double height) {
    Rectangle2D area = new Rectangle2D.Double(100, 100, 300, height);
    Canvas canvas =
        new Canvas(new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics());
    new Frame(area, Axes.unseen(0, 1), up).draw(canvas);
    return canvas.letters().stream().map(Letters::text).toList();
  }

  @Test
  void aNumberStandsAtItsPlaceInEitherUnit() {
    Rectangle2D area = new Rectangle2D.Double(100, 100, 300, 200);
    Canvas canvas =
        new Canvas(new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics());
    Axes up = Axes.of(700, 1150, UnitSystem.BOTH, Unit.FAHRENHEIT, Unit.CELSIUS);
    Frame frame = new Frame(area, Axes.unseen(0, 1), up);
    frame.draw(canvas);
    double off = 0.345 * Ink.NUMBER.size();
    for (Letters number : canvas.letters()) {
      double value = Double.parseDouble(number.text());
      boolean left = number.anchor() == Letters.Anchor.END;
      double celsius = left ? (value - 32) / 1.8 : value;
      assertEquals(frame.y(celsius), number.y() - off, 0.5, "heights count in whole dots");
      assertTrue(left ? number.x() < 95 : number.x() > 405, "beyond the marks: " + number);
    }
    assertEquals(9, canvas.letters().size(), "four in Fahrenheit, five in Celsius");
  }

  @Test
  void timeIsSaidAsPeopleSayIt() {
    assertEquals("0.5 min", DurationAxis.words(0.5));
    assertEquals("7.5 min", DurationAxis.words(7.5));
    assertEquals("12 min", DurationAxis.words(12));
    assertEquals("1 h", DurationAxis.words(59.7));
    assertEquals("10 h 9 min", DurationAxis.words(609));
  }

  @Test
  void numbersStayWithTheirUnits() {
    assertEquals(
        List.of("1580 F (860 C),", "10 min, air"),
        Ink.NOTE.wrap("1580 F (860 C), 10 min, air", 115, 4));
  }

  /** Java's own reader of fonts must see the same widths and shapes in the same files. */
  @Test
  void lettersAreThoseOfTheFont() throws Exception {
    FontRenderContext context = new FontRenderContext(null, true, true);
    for (boolean bold : new boolean[] {false, true}) {
      Typeface face = Typeface.of(bold);
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
    List<ScheduleFigure.Treatment> steps =
        List.of(Samples.step("soak", 1100, 600, 5, 5), Samples.step("refine", 800, 5, 4, 4));
    List<Panels.Panel> panels = Panels.of(steps, 0, 600);
    double shortOne = panels.get(1).width();
    assertTrue(shortOne >= 96 && shortOne < panels.get(0).width());
    assertEquals(600, panels.get(1).left() + shortOne, 1e-9);
  }
}
