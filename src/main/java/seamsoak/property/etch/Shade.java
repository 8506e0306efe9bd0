package seamsoak.property.etch;

import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/**
 * How white one steel etches in one state, by the carbon that is there: a band of tables, since the
 * share of ferrite is one.
 */
public final class Shade {
  /** Where all carbon looks alike. */
  static final Shade FLAT = of(carbon -> Band.of(0));

  private static final double STEP_PCT = 0.005;
  private static final int POINTS = 401;

  private final double[] low = new double[POINTS];
  private final double[] middle = new double[POINTS];
  private final double[] high = new double[POINTS];

  private Shade(DoubleFunction<Band> whiteness) {
    for (int i = 0; i < POINTS; i++) {
      Band w = whiteness.apply(i * STEP_PCT);
      low[i] = w.low();
      middle[i] = w.middle();
      high[i] = w.high();
    }
  }

  static Shade of(DoubleFunction<Band> whiteness) {
    return new Shade(whiteness);
  }

  /** Whiteness by carbon at a place in the band, 0 its low end, 1 its high end. */
  public DoubleUnaryOperator at(double place) {
    double[] table = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      table[i] = new Band(low[i], middle[i], high[i]).at(place);
    }
    return percent -> {
      double x = Math.max(0, percent / STEP_PCT);
      int k = (int) Math.min(POINTS - 2, x);
      return table[k] + Math.min(1, x - k) * (table[k + 1] - table[k]);
    };
  }
}
