package seamsoak.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.text.AttributedString;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What JFreeChart does not ask for today goes where it belongs all the same. */
class CanvasTest {
  private static final int INK = Color.RED.getRGB();

  private final BufferedImage page = new BufferedImage(20, 20, BufferedImage.TYPE_INT_RGB);
  private final Graphics2D graphics = page.createGraphics();
  private final Canvas canvas = new Canvas(graphics);

  @AfterEach
  void close() {
    graphics.dispose();
  }

  private static BufferedImage dot() {
    BufferedImage dot = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
    dot.setRGB(0, 0, INK);
    return dot;
  }

  @Test
  void imagesAreDrawnOnThePageWhereTheyAreSet() {
    assertTrue(canvas.drawImage(dot(), 2, 3, null));
    assertTrue(canvas.drawImage(dot(), 5, 5, 4, 4, null));
    canvas.drawRenderedImage(dot(), AffineTransform.getTranslateInstance(12, 13));
    for (int[] at : new int[][] {{2, 3}, {5, 5}, {8, 8}, {12, 13}}) {
      assertEquals(INK, page.getRGB(at[0], at[1]), at[0] + " " + at[1]);
    }
    assertEquals(Color.BLACK.getRGB(), page.getRGB(0, 0));
    assertTrue(canvas.letters().isEmpty());
  }

  @Test
  void textWithAttributesIsKeptAsText() {
    canvas.setFont(new Lettering(Ink.NUMBER, Letters.Anchor.START));
    canvas.drawString(new AttributedString("1/8 in").getIterator(), 4, 9);
    assertEquals(
        new Letters("1/8 in", 4, 9, Letters.Anchor.START, Ink.NUMBER), canvas.letters().get(0));
  }
}
