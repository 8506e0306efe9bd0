package seamsoak.plane;

/**
 * Carbon moving in a plate whose cells keep their number: fluxes by activity through half cells,
 * time by a two-stage Rosenbrock method of second order in which the matrix is taken apart into one
 * factor for each axis (W. Hundsdorfer, J. Verwer, Numerical Solution of Time-Dependent
 * Advection-Diffusion-Reaction Equations, 2003, chapter IV; the method's coefficients from memory).
 * It is of second order with any matrix, so the slopes of the fluxes need not be exact.
 */
final class Diffusion {
  private static final double GAMMA = 1 - 1 / Math.sqrt(2);

  private final int n;
  private final int m;
  private final PlaneMetal[] kinds;
  private final int[] kind;
  private final boolean ringUp;
  private final PlaneFire fire;
  private final Sides sides;
  private final Sweep rows;
  private final Sweep columns;
  private final double[] activity;
  private final double[] slope;
  private final double[] otherSlope;
  private final double[] half;

  Diffusion(Plate plate, Sides sides, PlaneFire fire) {
    n = plate.across().cells();
    m = plate.up().cells();
    ringUp = plate.up().ring();
    this.sides = sides;
    this.fire = fire;
    Kinds found = Kinds.of(plate);
    kinds = found.metals();
    kind = found.ofCell();
    rows = new Sweep(n, m, 1, n, false);
    columns = new Sweep(m, n, n, 1, ringUp);
    activity = new double[n * m];
    slope = new double[n * m];
    otherSlope = new double[n * m];
    half = new double[n * m];
  }

  /**
   * Changes the carbon by one step; returns what left through the sides, square metres times atoms
   * per metal atom.
   */
  double step(double[] y, Axis across, Axis up, double from, double to, double seconds) {
    double[] first = new double[y.length];
    double[] second = new double[y.length];
    double[] moved = y.clone();
    // the matrix is that of the hotter end: too large a matrix damps, too small a one does not
    double hotter =
        Math.max(1, kinds[0].at(to).diffusivity(0.03) / kinds[0].at(from).diffusivity(0.03));
    double weight = GAMMA * seconds * hotter;

    double left = seconds * rates(y, across, up, from, slope, true, first);
    times(first, seconds);
    left += rows.solve(first, slope, across.width(), up.width(), weight);
    left += columns.solve(first, slope, up.width(), across.width(), weight);
    for (int c = 0; c < y.length; c++) {
      moved[c] += first[c];
    }
    double again = seconds * rates(moved, across, up, to, otherSlope, false, second);
    for (int c = 0; c < y.length; c++) {
      second[c] = seconds * second[c] - 2 * first[c];
    }
    again += rows.solve(second, slope, across.width(), up.width(), weight);
    again += columns.solve(second, slope, up.width(), across.width(), weight);
    again -= 2 * left;
    for (int c = 0; c < y.length; c++) {
      y[c] += 1.5 * first[c] + 0.5 * second[c];
    }
    return 1.5 * left + 0.5 * again;
  }

  private static void times(double[] values, double factor) {
    for (int c = 0; c < values.length; c++) {
      values[c] *= factor;
    }
  }

  private double rates(
      double[] y, Axis across, Axis up, double kelvin, double[] slopes, boolean keep, double[] to) {
    PlaneMetal.Isotherm[] laws = new PlaneMetal.Isotherm[kinds.length];
    for (int k = 0; k < kinds.length; k++) {
      laws[k] = kinds[k].at(kelvin);
    }
    for (int c = 0; c < y.length; c++) {
      laws[kind[c]].put(y[c], c, activity, slopes, half);
    }
    double[] a = across.width();
    double[] u = up.width();
    rows.fluxes(activity, half, a, keep, to);
    columns.fluxes(activity, half, u, keep, to);
    double out = 0;
    out +=
        rows.through(false, held(laws, sides.left(), kelvin), kind, activity, half, a, u, keep, to);
    out +=
        rows.through(true, held(laws, sides.right(), kelvin), kind, activity, half, a, u, keep, to);
    if (!ringUp) {
      out +=
          columns.through(
              false, held(laws, sides.bottom(), kelvin), kind, activity, half, u, a, keep, to);
      out +=
          columns.through(
              true, held(laws, sides.top(), kelvin), kind, activity, half, u, a, keep, to);
    }
    return out;
  }

  /** Activity held at a side for each metal; more than any metal has where nothing leaves. */
  private double[] held(PlaneMetal.Isotherm[] laws, double share, double kelvin) {
    double[] held = new double[laws.length];
    for (int k = 0; k < laws.length; k++) {
      held[k] = share > 0 ? fire.held(share, kinds[k], laws[k], kelvin) : Double.POSITIVE_INFINITY;
    }
    return held;
  }
}
