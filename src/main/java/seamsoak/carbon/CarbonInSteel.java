package seamsoak.carbon;

import seamsoak.property.Agren1986Mobility;
import seamsoak.property.AusteniteActivity;
import seamsoak.property.Correlations;
import seamsoak.property.GustafsonFerrite;
import seamsoak.property.MetalLattice;
import seamsoak.property.PhaseLines;
import seamsoak.property.Unary;
import seamsoak.steel.Composition;

/**
 * Carbon in one steel, from ferrite through austenite to undissolved cementite.
 *
 * <p>Above A1, by rising carbon: ferrite, ferrite with austenite (level), austenite, austenite with
 * cementite (level). The ends of the levels are the steel's own A3 and Accm lines ({@link
 * PhaseLines}); their activity is the alloyed austenite's at these ends. Below A1: ferrite, then
 * ferrite with cementite (level, at the activity of plain ferrite and cementite). Ferrite is taken
 * as plain iron with carbon.
 */
public final class CarbonInSteel implements CarbonLaw {
  /** So little carbon that activity is proportional to it; stands in for none, where 0/0 stood. */
  private static final double TRACE = 1e-12;

  private final Correlations correlations;
  private final MetalLattice lattice;
  private final AusteniteActivity austenite;
  private final PhaseLines lines;
  private final double mobilityFactor;

  /**
   * @param correlations the published correlations
   * @param steel analysis; its carbon figure plays no part
   * @param mobilityFactor multiplies the mobility of carbon, 1 as published
   */
  public CarbonInSteel(Correlations correlations, Composition steel, double mobilityFactor) {
    this.correlations = correlations;
    this.lattice = MetalLattice.of(steel);
    this.austenite = new AusteniteActivity(correlations.activity(), lattice);
    this.lines = new PhaseLines(correlations, steel);
    this.mobilityFactor = mobilityFactor;
  }

  public MetalLattice lattice() {
    return lattice;
  }

  public PhaseLines lines() {
    return lines;
  }

  @Override
  public At at(double kelvin) {
    return new AtTemperature(kelvin);
  }

  private final class AtTemperature implements At {
    private final AusteniteActivity.At activity;
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
    private double lastRatio = Double.NaN;
    private double lastGrowth;

    AtTemperature(double kelvin) {
      this.kelvin = kelvin;
      double celsius = kelvin - 273.15;
      hasAustenite = lines.alwaysAustenite() || celsius >= lines.a1Celsius();
      activity = austenite.at(kelvin);
      GustafsonFerrite ferrite = correlations.ferriteActivity();
      ferriteDiffusivity =
          mobilityFactor * correlations.ferriteDiffusivity().squareMetresPerSecond(kelvin);
      Agren1986Mobility mobility = correlations.mobility();
      dilute = mobilityFactor * mobility.dilute(kelvin);
      k = mobility.exponent(kelvin);
      // y(1-y) d ln a/dy = 1 + p1 y + p2 y^2 + p3 y^3
      p1 = activity.c1();
      p2 = 2 * activity.c2() - activity.c1();
      p3 = -2 * activity.c2();
      if (!hasAustenite) {
        lnLevelBelow = Unary.lnActivityOfFerriteAndCementite(kelvin);
        lnLevelAbove = lnLevelBelow;
        ferriteMost = ferrite.ratioAt(kelvin, lnLevelBelow);
        austeniteLeast = Double.POSITIVE_INFINITY;
        austeniteMost = Double.POSITIVE_INFINITY;
        potentialBelow = ferriteDiffusivity * ferriteMost;
        integralAtLeast = 0;
        potentialAbove = potentialBelow;
        return;
      }
      austeniteLeast = lattice.ratio(lines.austeniteBesideFerritePct(celsius));
      if (austeniteLeast > 0) {
        lnLevelBelow = activity.lnActivity(austeniteLeast);
        ferriteMost = Math.min(ferrite.ratioAt(kelvin, lnLevelBelow), 0.9 * austeniteLeast);
      } else {
        lnLevelBelow = Double.NEGATIVE_INFINITY;
        ferriteMost = 0;
      }
      double most =
          lines.alwaysAustenite() && celsius < lines.a1Celsius()
              ? 0
              : lattice.ratio(lines.austeniteBesideCementitePct(celsius));
      austeniteMost = lines.alwaysAustenite() ? graphiteOr(most) : most;
      lnLevelAbove = activity.lnActivity(austeniteMost);
      potentialBelow = ferriteDiffusivity * ferriteMost;
      integralAtLeast = integral(austeniteLeast);
      potentialAbove = potentialBelow + integral(austeniteMost) - integralAtLeast;
    }

    /** A steel that is always austenite keeps carbon up to where graphite would form. */
    private double graphiteOr(double cementite) {
      return Math.max(activity.ratioAt(0), Math.min(cementite, activity.ratioAt(0.3)));
    }

    /** exp(k y); the solver asks for the potential and its slope at one y after the other. */
    private double growth(double y) {
      if (y != lastRatio) {
        lastRatio = y;
        lastGrowth = Math.exp(k * y);
      }
      return lastGrowth;
    }

    /** Integral of the austenite's diffusivity from 0 to y. */
    private double integral(double y) {
      double e = growth(y);
      double i0 = (e - 1) / k;
      double i1 = (y * e - i0) / k;
      double i2 = (y * y * e - 2 * i1) / k;
      double i3 = p3 == 0 ? 0 : (y * y * y * e - 3 * i2) / k;
      return dilute * (i0 + p1 * i1 + p2 * i2 + p3 * i3);
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
      return dilute * growth(y) * (1 + y * (p1 + y * (p2 + y * p3)));
    }

    @Override
    public double activity(double y) {
      if (y <= 0) {
        return 0;
      }
      if (y < ferriteMost) {
        // scaled so that it meets the level exactly; the two differ by the fit of the A3 line
        double atMost = correlations.ferriteActivity().lnActivity(kelvin, ferriteMost);
        double here = correlations.ferriteActivity().lnActivity(kelvin, y);
        return Math.exp(lnLevelBelow + here - atMost);
      }
      if (y < austeniteLeast) {
        return Math.exp(lnLevelBelow);
      }
      return Math.exp(y < austeniteMost ? activity.lnActivity(y) : lnLevelAbove);
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
        double atMost = correlations.ferriteActivity().lnActivity(kelvin, ferriteMost);
        return Math.min(
            ferriteMost,
            correlations.ferriteActivity().ratioAt(kelvin, ln - lnLevelBelow + atMost));
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
}
