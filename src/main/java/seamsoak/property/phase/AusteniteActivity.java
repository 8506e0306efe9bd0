package seamsoak.property.phase;

import seamsoak.steel.Element;

/**
 * Activity of carbon in austenite of one steel, against graphite: a two-sublattice regular solution
 * (metals)1(C,Va)1.
 *
 * <pre>
 * RT ln a = RT ln(y/(1-y)) + sum u_i dG_i + (1-2y) sum u_i L_i
 *           + sum_M u_Fe u_M [sum_k d^k LC_k - sum_k d^k LV_k]
 *           + u_V L1_V (6y - 6y^2 - 1) + u_Fe u_V (1-2y) LCV_V
 * </pre>
 *
 * y carbon per metal atom; u_i metal fractions; d = u_M - u_Fe for Cr, u_Fe - u_M for the others
 * (alphabetical order); dG, L, LC, LV assessed functions of temperature, J/mol ({@link
 * ActivityParameters}). Iron part: P. Gustafson, Scand. J. Metall. 14 (1985) 259; each alloying
 * element's source stands in the table.
 *
 * <p>Range: austenite of steels with up to a few percent of alloy, 700 to 1300 C; stainless steels
 * give finite values outside what the parameters were fitted to; metal that is nickel for the most
 * part has a term of its own, after what graphite gives it. Cross terms between alloying elements
 * are left out. Error: log10 of activity within about 0.006 per wt% of Si, Mn, Cr, Ni, Mo of the
 * published alloy factors.
 *
 * <p>For one temperature it is {@code ln a = ln(y/(1-y)) + c0 + c1 y + c2 y^2}, which is what
 * {@link #at} returns.
 */
public final class AusteniteActivity {
  private static final double R = 8.314463;

  /** From so much of it on, share of the atoms, a metal is nickel and no steel. */
  private static final double MOSTLY = 0.5;

  private static final Element[] ALLOYING = {
    Element.SI, Element.MN, Element.CR, Element.NI, Element.MO, Element.V, Element.W
  };

  /** RT c0, RT c1 and RT c2 as functions of temperature. */
  private final double[] constant;

  private final double[] linear;
  private final double[] square;

  public AusteniteActivity(ActivityParameters parameters, MetalLattice lattice) {
    double iron = lattice.iron();
    double[] level = new double[ActivityParameters.TERMS];
    double[] interaction = new double[ActivityParameters.TERMS];
    double[] vanadiumOrder1 = new double[ActivityParameters.TERMS];
    parameters.add("Fe", "dG", iron, level);
    parameters.add("Fe", "L0", iron, interaction);
    for (Element e : ALLOYING) {
      double u = lattice.share(e);
      String m = e.symbol();
      double d = e == Element.CR ? u - iron : iron - u;
      parameters.add(m, "dG", u, level);
      parameters.add(m, "LC0", iron * u, level);
      parameters.add(m, "LC1", iron * u * d, level);
      parameters.add(m, "LV0", -iron * u, level);
      parameters.add(m, "LV1", -iron * u * d, level);
      parameters.add(m, "LV2", -iron * u * d * d, level);
      parameters.add(m, "L0", u, interaction);
      parameters.add(m, "LCV0", iron * u, interaction);
      parameters.add(m, "L1", u, vanadiumOrder1);
    }
    if (lattice.share(Element.NI) > MOSTLY) {
      parameters.add("Ni", "dG in nickel", lattice.share(Element.NI), level);
    }
    int n = ActivityParameters.TERMS;
    constant = new double[n];
    linear = new double[n];
    square = new double[n];
    for (int i = 0; i < n; i++) {
      constant[i] = level[i] + interaction[i] - vanadiumOrder1[i];
      linear[i] = -2 * interaction[i] + 6 * vanadiumOrder1[i];
      square[i] = -6 * vanadiumOrder1[i];
    }
  }

  /** The activity at one temperature. */
  public Isotherm at(double kelvin) {
    double rt = R * kelvin;
    return new Isotherm(
        ActivityParameters.value(constant, kelvin) / rt,
        ActivityParameters.value(linear, kelvin) / rt,
        ActivityParameters.value(square, kelvin) / rt);
  }

  /** ln a = ln(y/(1-y)) + c0 + c1 y + c2 y^2. */
  public record Isotherm(double c0, double c1, double c2) {
    private static final int MOST_STEPS = 50;
    private static final double LEAST_SLOPE = 0.2;

    /** ln of the activity at y carbon atoms per metal atom, y above 0. */
    public double lnActivity(double y) {
      return Math.log(y / (1 - y)) + c0 + y * (c1 + y * c2);
    }

    /** y(1-y) d ln a/dy, the thermodynamic factor; 1 in a dilute solution. */
    public double thermodynamicFactor(double y) {
      return 1 + y * (1 - y) * (c1 + 2 * c2 * y);
    }

    /** Carbon per metal atom at which ln a has a value. */
    public double ratioAt(double lnActivity) {
      double w = Math.min(lnActivity - c0, -1);
      return ratioNear(lnActivity, 1 / (1 + Math.exp(-w)));
    }

    /**
     * The same from a first guess at it: Newton on w = ln(y/(1-y)), in which the function is smooth
     * and nearly straight.
     */
    public double ratioNear(double lnActivity, double guess) {
      double y = guess;
      double w = Math.log(y / (1 - y));
      for (int i = 0; i < MOST_STEPS; i++) {
        double f = w + c0 + y * (c1 + y * c2) - lnActivity;
        double slope = 1 + y * (1 - y) * (c1 + 2 * c2 * y);
        double change = -f / Math.max(slope, LEAST_SLOPE);
        w += Math.max(-2, Math.min(2, change));
        y = 1 / (1 + Math.exp(-w));
        // the next change would be about the square of this one
        if (Math.abs(change) < 1e-7) {
          break;
        }
      }
      return y;
    }
  }
}
