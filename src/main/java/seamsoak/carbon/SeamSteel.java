package seamsoak.carbon;

/**
 * Tells the carbon of a strip's cells as the steel of one of its seams would have it at the same
 * activity, so that unlike steels beside each other are told by one scale.
 */
final class SeamSteel {
  private final Metal metal;
  private final CarbonLaw.Isotherm own;
  private final CarbonLaw.Isotherm[] laws;

  /**
   * Between layers the steel on the far side; at other seams, where it is chance which layer meets
   * which, the one that most of the strip is made of.
   */
  static SeamSteel of(Strip strip, Plane plane) {
    return new SeamSteel(strip, index(strip, plane));
  }

  /** Its place among the strip's metals. */
  static int index(Strip strip, Plane plane) {
    return plane.name().kind() == SeamName.Kind.LAYERS
        ? strip.metalIndex(Math.min(plane.face(), strip.cells() - 1))
        : most(strip);
  }

  private static int most(Strip strip) {
    double[] metres = new double[strip.metals().size()];
    int best = 0;
    for (int i = 0; i < strip.cells(); i++) {
      metres[strip.metalIndex(i)] += strip.metres(i);
    }
    for (int m = 1; m < metres.length; m++) {
      best = metres[m] > metres[best] ? m : best;
    }
    return best;
  }

  Metal metal() {
    return metal;
  }

  private SeamSteel(Strip strip, int index) {
    metal = strip.metals().get(index);
    laws = new CarbonLaw.Isotherm[strip.metals().size()];
    boolean one = true;
    for (int i = 0; i < strip.cells() && one; i++) {
      one = strip.metalIndex(i) == index;
    }
    own = one ? null : metal.law().at(CarbonLaw.COMPARED_AT_KELVIN);
    for (int m = 0; m < laws.length && !one; m++) {
      laws[m] = m == index ? null : strip.metals().get(m).law().at(CarbonLaw.COMPARED_AT_KELVIN);
    }
  }

  /** Carbon of a cell, wt% of the seam's steel. */
  double percent(Strip strip, int cell) {
    return metal.percent(ratio(strip, cell, 0));
  }

  double[] percents(Strip strip) {
    double[] all = new double[strip.cells()];
    double before = 0;
    for (int i = 0; i < all.length; i++) {
      before = ratio(strip, i, before);
      all[i] = metal.percent(before);
    }
    return all;
  }

  /** From a first guess, such as the cell before has it. */
  private double ratio(Strip strip, int cell, double guess) {
    CarbonLaw.Isotherm law = laws[strip.metalIndex(cell)];
    double ratio = strip.ratio(cell);
    return law == null ? ratio : own.ratioNear(law.activity(ratio), guess);
  }
}
