package seamsoak.carbon;

import seamsoak.property.phase.Agren1986Mobility;
import seamsoak.property.phase.AusteniteActivity;
import seamsoak.property.phase.GustafsonFerrite;
import seamsoak.property.phase.Unary;
import seamsoak.unit.Temperature;

/** Carbon in one steel at one temperature. */
final class SteelIsotherm implements CarbonLaw.Isotherm {
  /** So little carbon that activity is proportional to it; stands in for none, where 0/0 stood. */
  private static final double TRACE = 1e-12;

  /** Less iron than this and a metal is no steel, share of its atoms. */
  private static final double MOSTLY = 0.5;

  /** More than ferrite and cementite come to from 500 C up, ln of the activity. */
  private static final double LN_BEYOND_CEMENTITE = 1.3;

  /** Terms of a series, and from where on they no longer count. */
  private static final int MOST_TERMS = 200;

  private static final double SMALL = 1e-18;

  private final CarbonInSteel steel;
  private final AusteniteActivity.Isotherm activity;
  private final double kelvin;
  private final boolean hasAustenite;
  private final double ferriteDiffusivity;
  private final double dilute;
  private final double k;
  private final double p1;
  private final double p2;
  private final double p3;

  /** Highest carbon of ferrite; lowest and highest of austenite. */
  private final double ferriteMost;

  private final double austeniteLeast;
  private final double austeniteMost;
  private final double lnLevelBelow;
  private final double lnLevelAbove;
  private final double potentialBelow;
  private final double integralAtLeast;
  private final double potentialAbove;

  /** The integral of the austenite's diffusivity is e^(k y) times this cubic, less its constant. */
  private final double q0;

  private final double q1;
  private final double q2;
  private final double q3;

  SteelIsotherm(CarbonInSteel steel, double kelvin) {
    this.steel = steel;
    this.kelvin = kelvin;
    double celsius = kelvin - Temperature.ZERO_CELSIUS;
    hasAustenite = steel.lines.alwaysAustenite() || celsius >= steel.lines.a1Celsius();
    activity = steel.austenite.at(kelvin);
    GustafsonFerrite ferrite = steel.correlations.phases().ferriteActivity();
    ferriteDiffusivity =
        steel.mobilityFactor
            * steel.correlations.phases().ferriteDiffusivity().squareMetresPerSecond(kelvin);
    Agren1986Mobility mobility = steel.correlations.phases().mobility();
    dilute = steel.mobilityFactor * mobility.dilute(kelvin);
    k = mobility.exponent(kelvin);
    // y(1-y) d ln a/dy = 1 + p1 y + p2 y^2 + p3 y^3
    p1 = activity.c1();
    p2 = 2 * activity.c2() - activity.c1();
    p3 = -2 * activity.c2();
    q3 = dilute * p3 / k;
    q2 = (dilute * p2 - 3 * q3) / k;
    q1 = (dilute * p1 - 2 * q2) / k;
    q0 = (dilute - q1) / k;
    if (!hasAustenite) {
      lnLevelBelow = Unary.lnActivityOfFerriteAndCementite(kelvin) + steel.lnCarbidesBelow;
      lnLevelAbove = lnLevelBelow;
      ferriteMost = ferrite.ratioAt(kelvin, lnLevelBelow);
      austeniteLeast = Double.POSITIVE_INFINITY;
      austeniteMost = Double.POSITIVE_INFINITY;
      potentialBelow = ferriteDiffusivity * ferriteMost;
      integralAtLeast = 0;
      potentialAbove = potentialBelow;
      return;
    }
    austeniteLeast = steel.lattice.ratio(steel.lines.austeniteBesideFerritePct(celsius));
    if (austeniteLeast > 0) {
      lnLevelBelow = activity.lnActivity(austeniteLeast);
      ferriteMost = Math.min(ferrite.ratioAt(kelvin, lnLevelBelow), 0.9 * austeniteLeast);
    } else {
      lnLevelBelow = Double.NEGATIVE_INFINITY;
      ferriteMost = 0;
    }
    double most =
        steel.lines.alwaysAustenite() && celsius < steel.lines.a1Celsius()
            ? 0
            : steel.lattice.ratio(steel.lines.austeniteBesideCementitePct(celsius));
    austeniteMost = steel.lines.alwaysAustenite() ? graphiteOr(most) : most;
    lnLevelAbove = activity.lnActivity(austeniteMost);
    potentialBelow = ferriteDiffusivity * ferriteMost;
    integralAtLeast = integral(austeniteLeast);
    potentialAbove = potentialBelow + integral(austeniteMost) - integralAtLeast;
  }

  /**
   * A steel that is always austenite keeps carbon up to where graphite would form. In nickel, which
   * has no carbide, graphite forms too slowly to count: beside steel it comes to the activity of
   * that, and is no sink for its carbon.
   */
  private double graphiteOr(double cementite) {
    if (steel.lattice.iron() < MOSTLY) {
      return activity.ratioAt(LN_BEYOND_CEMENTITE);
    }
    return Math.max(activity.ratioAt(0), Math.min(cementite, activity.ratioAt(0.3)));
  }

  /** Integral of the austenite's diffusivity from 0 to y. */
  private double integral(double y) {
    return Math.exp(k * y) * (q0 + y * (q1 + y * (q2 + y * q3))) - q0;
  }

  /** Most carbon that its austenite holds, per metal atom. */
  double austeniteMost() {
    return austeniteMost;
  }

  /**
   * Integral of the austenite's diffusivity over y, but for a constant: the exponential over y as a
   * series, what is left of the cubic as {@link #integral} has it.
   */
  double integralPerCarbon(double y) {
    double series = Math.log(y);
    double term = 1;
    for (int n = 1; n <= MOST_TERMS && term > SMALL; n++) {
      term *= k * y / n;
      series += term / n;
    }
    double r2 = p3 / k;
    double r1 = (p2 - 2 * r2) / k;
    double r0 = (p1 - r1) / k;
    return dilute * (series + Math.exp(k * y) * (r0 + y * (r1 + y * r2)));
  }

  @Override
  public void potentials(double[] y, int from, int to, double[] potential, double[] slope) {
    double ferrite = ferriteMost > 0 ? ferriteDiffusivity : dilute;
    double base = potentialBelow - integralAtLeast - q0;
    for (int i = from; i < to; i++) {
      double c = y[i];
      if (c >= austeniteLeast && c > ferriteMost && c < austeniteMost) {
        double growth = Math.exp(k * c);
        potential[i] = base + growth * (q0 + c * (q1 + c * (q2 + c * q3)));
        slope[i] = dilute * growth * (1 + c * (p1 + c * (p2 + c * p3)));
      } else if (c <= ferriteMost) {
        potential[i] = ferrite * c;
        slope[i] = ferrite;
      } else {
        potential[i] = c < austeniteLeast ? potentialBelow : potentialAbove;
        slope[i] = 0;
      }
    }
  }

  @Override
  public boolean stopAtBends(double[] from, double[] to, int first, int end) {
    boolean any = false;
    for (int i = first; i < end; i++) {
      double was = from[i];
      double is = to[i];
      // as in most cells at most times
      if (isSmooth(was) && isSmooth(is)) {
        continue;
      }
      to[i] = is < was ? stoppedFalling(was, is) : stoppedRising(was, is);
      any |= to[i] != is;
    }
    return any;
  }

  private double stoppedFalling(double from, double to) {
    if (from >= austeniteMost && to < austeniteMost) {
      return Math.nextDown(austeniteMost);
    }
    if (from >= austeniteLeast && to < austeniteLeast) {
      return Math.nextDown(austeniteLeast);
    }
    return from > ferriteMost && to < ferriteMost ? ferriteMost : to;
  }

  private double stoppedRising(double from, double to) {
    if (from <= ferriteMost && to > ferriteMost && ferriteMost > 0) {
      return Math.nextUp(ferriteMost);
    }
    if (from < austeniteLeast && to >= austeniteLeast) {
      return austeniteLeast;
    }
    return from < austeniteMost && to >= austeniteMost ? austeniteMost : to;
  }

  @Override
  public double potential(double y) {
    if (y <= ferriteMost) {
      return ferriteMost > 0 ? ferriteDiffusivity * y : dilute * y;
    }
    if (y < austeniteLeast) {
      return potentialBelow;
    }
    return y < austeniteMost ? potentialBelow + integral(y) - integralAtLeast : potentialAbove;
  }

  @Override
  public double potentialSlope(double y) {
    if (y <= ferriteMost) {
      return ferriteMost > 0 ? ferriteDiffusivity : dilute;
    }
    return y < austeniteLeast || y >= austeniteMost ? 0 : austeniteDiffusivity(y);
  }

  private double austeniteDiffusivity(double y) {
    return dilute * Math.exp(k * y) * (1 + y * (p1 + y * (p2 + y * p3)));
  }

  @Override
  public double activity(double y) {
    if (y <= 0) {
      return 0;
    }
    if (y < ferriteMost) {
      // scaled so that it meets the level exactly; the two differ by the fit of the A3 line
      double atMost = steel.correlations.phases().ferriteActivity().lnActivity(kelvin, ferriteMost);
      double here = steel.correlations.phases().ferriteActivity().lnActivity(kelvin, y);
      return Math.exp(lnLevelBelow + here - atMost);
    }
    if (y < austeniteLeast) {
      return Math.exp(lnLevelBelow);
    }
    return Math.exp(y < austeniteMost ? activity.lnActivity(y) : lnLevelAbove);
  }

  @Override
  public boolean isSmooth(double y) {
    return y > austeniteLeast && y > ferriteMost && y < austeniteMost;
  }

  @Override
  public double lnActivity(double y) {
    return activity.lnActivity(y);
  }

  @Override
  public double lnActivitySlope(double y) {
    return activity.thermodynamicFactor(y) / (y * (1 - y));
  }

  @Override
  public double ratioNear(double a, double guess) {
    double ln = Math.log(a);
    return hasAustenite && ln > lnLevelBelow && guess > 0 && guess < 1
        ? Math.min(austeniteMost, Math.max(austeniteLeast, activity.ratioNear(ln, guess)))
        : ratioAt(a);
  }

  @Override
  public double ratioAt(double a) {
    if (a <= 0) {
      return 0;
    }
    double ln = Math.log(a);
    // on the level itself the answer must be its lower end, whatever rounding did to the
    // logarithm
    if (a <= Math.exp(lnLevelBelow)) {
      double atMost = steel.correlations.phases().ferriteActivity().lnActivity(kelvin, ferriteMost);
      return Math.min(
          ferriteMost,
          steel
              .correlations
              .phases()
              .ferriteActivity()
              .ratioAt(kelvin, ln - lnLevelBelow + atMost));
    }
    return hasAustenite
        ? Math.min(austeniteMost, Math.max(austeniteLeast, activity.ratioAt(ln)))
        : ferriteMost;
  }

  @Override
  public double mobility(double y) {
    double at = Math.max(y, TRACE);
    if (at <= ferriteMost) {
      return ferriteDiffusivity * at / activity(at);
    }
    if (at > austeniteMost || !hasAustenite) {
      return 0;
    }
    at = Math.max(at, austeniteLeast);
    return dilute * Math.exp(k * at) * at * (1 - at) / activity(at);
  }
}
