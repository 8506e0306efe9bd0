package seamsoak.property.etch;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;

/**
 * How light a picture shows etched metal, in 256 even steps of lightness (CIE L*, 0 to 100).
 *
 * <p>level = darkest + layer min(4, a) + line min(4, w), for w below 0 darkest + layer min(4, a +
 * w)
 *
 * <p>a is how much whiter a layer is than the darkest one, far from any line, and w how much whiter
 * a place is than its layer; both as {@link Whiteness} counts, where 4 counts as strong and is as
 * white as it gets. Of the alloy, what differs by 1.5 in brightness is strong. A line is drawn
 * softer than the pattern, so that one of contrast 1, which just shows, is just seen.
 *
 * <p>Judgement, all of it. Range: any. Stated error: none.
 */
public final class Tone extends PublishedFormula {
  /** Levels of lightness. */
  public static final int LEVELS = 256;

  private final double darkest = k.get("darkest");
  private final double layer = k.get("layer");
  private final double line = k.get("line");
  private final double most;

  Tone(Coefficients k, Whiteness whiteness) {
    super(k, "lightness of a picture", "1", List.of(), "none, judgement");
    most = whiteness.strong();
  }

  /**
   * The level, not rounded.
   *
   * @param whiter how much whiter the layer is than the darkest one
   * @param place how much whiter the place is than its layer
   */
  public double level(double whiter, double place) {
    return place > 0
        ? darkest + layer * Math.min(most, whiter) + line * Math.min(most, place)
        : darkest + layer * Math.min(most, whiter + place);
  }

  /** How many levels a line's difference of 1 in whiteness is. */
  public double line() {
    return line;
  }

  /** What a brightness of the alloy counts as in whiteness. */
  public double ofAlloy(double brightness) {
    return brightness * most / k.get("strong alloy");
  }

  /** How many levels the grain of the metal goes up and down. */
  public double grain() {
    return k.get("grain");
  }
}
