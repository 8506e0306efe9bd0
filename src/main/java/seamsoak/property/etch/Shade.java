package seamsoak.property.etch;

import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/**
 * How white one steel etches in one state, by the carbon that is there: straight between the points
 * of a table, whose points are bands, since the share of ferrite is one.
 */
public final class Shade {
  /** Where all carbon looks alike. */
  static final Shade FLAT = of(carbon -> Band.of(0));

  private static final double STEP_PCT = 0.005;
  private static final int POINTS = 401;

  private final DoubleFunction<Band> whiteness;

  /** Reckoned when first asked for: of most carbons nobody ever asks. */
  private final Band[] known = new Band[POINTS];

  private Shade(DoubleFunction<Band> whiteness) {
    this.whiteness = whiteness;
  }

  static Shade of(DoubleFunction<Band> whiteness) {
    return new Shade(whiteness);
  }

  private Band point(int i) {
    Band band = known[i];
    if (band == null) {
      band = whiteness.apply(i * STEP_PCT);
      known[i] = band;
    }
    return band;
  }

  /** Whiteness by carbon at a place in the band, 0 its low end, 1 its high end. */
  public DoubleUnaryOperator at(double place) {
    return percent -> {
      double x = percent > 0 ? percent / STEP_PCT : 0;
      int k = x < POINTS - 2 ? (int) x : POINTS - 2;
      double part = x - k < 1 ? x - k : 1;
      double from = point(k).at(place);
      return from + part * (point(k + 1).at(place) - from);
    };
  }
}
