package seamsoak.chart;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.font.FontRenderContext;
import java.awt.font.LineMetrics;
import java.text.AttributedCharacterIterator.Attribute;
import java.util.Map;

/**
 * A {@link Print} as the font that JFreeChart and Batik ask for. It answers by our own {@link
 * Typeface}: Java's fonts depend on those of the machine.
 */
final class Lettering extends Font {
  private static final long serialVersionUID = 1;
  static final String FAMILY = "DejaVu Sans";

  final transient Print print;
  final Letters.Anchor anchor;

  /**
   * @param anchor which end of each text is to stand where the chart sets it
   */
  Lettering(Print print, Letters.Anchor anchor) {
    super(FAMILY, PLAIN, (int) Math.round(print.size()));
    this.print = print;
    this.anchor = anchor;
  }

  @Override
  public String getFamily() {
    return FAMILY;
  }

  @Override
  public Font deriveFont(Map<? extends Attribute, ?> changes) {
    return this;
  }

  @Override
  public LineMetrics getLineMetrics(String text, FontRenderContext context) {
    return new Heights(0.93f * size, 0.24f * size);
  }

  FontMetrics metrics() {
    return new FontMetrics(this) {
      private static final long serialVersionUID = 1;

      @Override
      public int stringWidth(String text) {
        return (int) Math.round(print.width(text));
      }

      @Override
      public int getHeight() {
        return Math.round(1.17f * size);
      }
    };
  }

  /** What a line of the typeface takes above and below its baseline. */
  private static final class Heights extends LineMetrics {
    private final float ascent;
    private final float descent;

    Heights(float ascent, float descent) {
      this.ascent = ascent;
      this.descent = descent;
    }

    @Override
    public int getNumChars() {
      return 0;
    }

    @Override
    public float getAscent() {
      return ascent;
    }

    @Override
    public float getDescent() {
      return descent;
    }

    @Override
    public float getLeading() {
      return 0;
    }

    @Override
    public float getHeight() {
      return ascent + descent;
    }

    @Override
    public int getBaselineIndex() {
      return Font.ROMAN_BASELINE;
    }

    @Override
    public float[] getBaselineOffsets() {
      return new float[3];
    }

    @Override
    public float getStrikethroughOffset() {
      return 0;
    }

    @Override
    public float getStrikethroughThickness() {
      return 0;
    }

    @Override
    public float getUnderlineOffset() {
      return 0;
    }

    @Override
    public float getUnderlineThickness() {
      return 0;
    }
  }
}
