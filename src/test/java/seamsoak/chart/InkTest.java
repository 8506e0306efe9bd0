package seamsoak.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class InkTest {

  @Test
  void everyLineStandsOutFromItsGround() {
    for (Color line : Ink.LINES) {
      for (Color ground : List.of(Ink.PAPER, Ink.PANEL)) {
        assertTrue(contrast(line, ground) >= 3, line + " on " + ground);
      }
    }
  }

  @Test
  void smallPrintIsReadable() {
    for (Color letters : Ink.LINES) {
      assertTrue(contrast(letters, Ink.PAPER) >= 4.5, letters.toString());
    }
  }

  @Test
  void curvesDifferInMoreThanColor() {
    Set<Object> dashes = new HashSet<>();
    Set<Object> markers = new HashSet<>();
    for (Ink.Style style : Ink.STYLES) {
      float[] dash = style.stroke().getDashArray();
      dashes.add(dash == null ? "solid" : java.util.Arrays.toString(dash));
      markers.add(style.marker());
      assertTrue(Ink.LINES.contains(style.color()));
    }
    assertEquals(Ink.STYLES.size(), dashes.size());
    assertEquals(Ink.STYLES.size(), markers.size());
  }

  @Test
  void contrastAgreesWithTheDefinition() {
    assertEquals(21, contrast(Color.BLACK, Color.WHITE), 1e-9);
    // WCAG 2.1 understanding document: #767676 on white is just 4.54 to 1 (from memory).
    assertEquals(4.54, contrast(new Color(0x767676), Color.WHITE), 0.005);
  }

  /** WCAG 2.1, "contrast ratio" and "relative luminance". */
  private static double contrast(Color one, Color other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(Color color) {
    double[] linear =
        DoubleStream.of(color.getRed(), color.getGreen(), color.getBlue())
            .map(c -> c / 255)
            .map(c -> c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4))
            .toArray();
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
  }
}
