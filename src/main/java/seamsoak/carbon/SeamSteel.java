package seamsoak.carbon;

/**
 * Tells the carbon of a strip's cells as the steel of one of its seams would have it at the same
 * activity, so that unlike steels beside each other are told by one scale.
 */
final class SeamSteel {
  /** Temperature of the comparison: all is austenite, K. */
  static final double COMPARED_AT_KELVIN = 1373.15;

  private final Metal metal;
  private final CarbonLaw.At own;
  private final CarbonLaw.At[] laws;

  /** The steel on the far side of the seam; the same on both where faces of one metal meet. */
  static SeamSteel of(Strip strip, Plane plane) {
    return new SeamSteel(strip, strip.metalIndex(Math.min(plane.face(), strip.cells() - 1)));
  }

  private SeamSteel(Strip strip, int index) {
    metal = strip.metals().get(index);
    laws = new CarbonLaw.At[strip.metals().size()];
    boolean one = true;
    for (int i = 0; i < strip.cells() && one; i++) {
      one = strip.metalIndex(i) == index;
    }
    own = one ? null : metal.law().at(COMPARED_AT_KELVIN);
    for (int m = 0; m < laws.length && !one; m++) {
      laws[m] = m == index ? null : strip.metals().get(m).law().at(COMPARED_AT_KELVIN);
    }
  }

  /** Carbon of a cell, wt% of the seam's steel. */
  double percent(Strip strip, int cell) {
    CarbonLaw.At law = laws[strip.metalIndex(cell)];
    double ratio = strip.ratio(cell);
    return metal.percent(law == null ? ratio : own.ratioAt(law.activity(ratio)));
  }

  double[] percents(Strip strip) {
    double[] all = new double[strip.cells()];
    for (int i = 0; i < all.length; i++) {
      all[i] = percent(strip, i);
    }
    return all;
  }
}
