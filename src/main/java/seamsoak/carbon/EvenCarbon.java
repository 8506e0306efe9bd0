package seamsoak.carbon;

import seamsoak.numeric.Roots;

/**
 * What a strip's carbon would be evened out: one activity throughout, so each metal has its own
 * share. Reckoned where all is austenite.
 */
public final class EvenCarbon {
  /** Of the activity, relative: far below what a dip is told to. */
  private static final double TOLERANCE = 1e-9;

  private final Strip strip;
  private final CarbonLaw.Isotherm[] laws;
  private final double[] ratio;

  /** Evens a strip out at a temperature, keeping its carbon. */
  public EvenCarbon(Strip strip, double kelvin) {
    this.strip = strip;
    int metals = strip.metals().size();
    laws = new CarbonLaw.Isotherm[metals];
    double[] metres = new double[metals];
    double[] each = new double[strip.cells()];
    for (int i = 0; i < each.length; i++) {
      metres[strip.metalIndex(i)] += strip.metres(i);
      each[i] = strip.metres(i) * strip.ratio(i);
    }
    ratio = new double[metals];
    double carbon = Sums.of(each);
    int present = 0;
    int only = 0;
    for (int m = 0; m < metals; m++) {
      if (metres[m] > 0) {
        present++;
        only = m;
      }
    }
    if (present == 1) {
      ratio[only] = carbon / metres[only];
      return;
    }
    for (int m = 0; m < metals; m++) {
      laws[m] = strip.metals().get(m).law().at(kelvin);
    }
    double low = Double.POSITIVE_INFINITY;
    double high = 0;
    double full = Double.POSITIVE_INFINITY;
    for (int i = 0; i < each.length; i++) {
      double here = laws[strip.metalIndex(i)].activity(strip.ratio(i));
      low = Math.min(low, here);
      high = Math.max(high, here);
      full = Math.min(full, laws[strip.metalIndex(i)].mostActivity());
    }
    // the metal that is full first, a die steel, keeps all the rest as carbide at its own activity:
    // no activity above that lasts, and what is over stays out of the comparison
    double most = Math.min(high * (1 + 1e-9) + 1e-12, full);
    double a =
        held(most, metres) <= carbon
            ? most
            : Roots.between(
                x -> held(x, metres) - carbon, low * (1 - 1e-9), most, TOLERANCE * most);
    for (int m = 0; m < metals; m++) {
      ratio[m] = laws[m].ratioAt(a);
    }
  }

  private double held(double activity, double[] metres) {
    double sum = 0;
    for (int m = 0; m < metres.length; m++) {
      sum += metres[m] == 0 ? 0 : metres[m] * laws[m].ratioAt(activity);
    }
    return sum;
  }

  /** Carbon per metal atom that a cell would have. */
  public double ratio(int cell) {
    return ratio[strip.metalIndex(cell)];
  }

  /** Carbon that a cell would have, wt%. */
  public double percent(int cell) {
    return strip.metal(cell).percent(ratio(cell));
  }
}
