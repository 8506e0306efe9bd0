package seamsoak.carbon;

import java.util.Optional;
import seamsoak.property.Correlations;
import seamsoak.property.phase.Agren1986Mobility;
import seamsoak.property.phase.AusteniteActivity;
import seamsoak.property.phase.GustafsonFerrite;
import seamsoak.property.phase.MetalLattice;
import seamsoak.property.phase.PhaseLines;
import seamsoak.property.phase.Unary;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.unit.Temperature;

/**
 * Carbon in one steel, from ferrite through austenite to undissolved cementite.
 *
 * <p>Above A1, by rising carbon: ferrite, ferrite with austenite (level), austenite, austenite with
 * cementite (level). The ends of the levels are the steel's own A3 and Accm lines ({@link
 * PhaseLines}); their activity is the alloyed austenite's at these ends. Where three phases stand
 * side by side the two ends are one. Below A1: ferrite, then ferrite with carbide (level, at the
 * activity of plain ferrite and cementite; from 2 % chromium on, whose carbides hold carbon far
 * better, lower by as much as it is at A1, where austenite stands beside them). So carbon goes from
 * mild steel into chromium steel below A1 as it does above it (observed from 2.25 to 12 % Cr: Race
 * and Bhadeshia 1992). Ferrite is taken as plain iron with carbon.
 */
public final class CarbonInSteel implements CarbonLaw {
  /** So little carbon that activity is proportional to it; stands in for none, where 0/0 stood. */
  private static final double TRACE = 1e-12;

  /** From so much chromium on carbides other than cementite hold the carbon, wt%; judgement. */
  private static final double CHROMIUM_CARBIDES_PCT = 2;

  /** Less iron than this and a metal is no steel, share of its atoms. */
  private static final double MOSTLY = 0.5;

  /** More than ferrite and cementite come to from 500 C up, ln of the activity. */
  private static final double LN_BEYOND_CEMENTITE = 1.3;

  private final Correlations correlations;
  private final MetalLattice lattice;
  private final AusteniteActivity austenite;
  private final PhaseLines lines;
  private final double mobilityFactor;
  private final double lnCarbidesBelow;

  /**
   * @param steel analysis; its carbon figure plays no part
   * @param mobilityFactor multiplies the mobility of carbon, 1 as published
   */
  public CarbonInSteel(Correlations correlations, Composition steel, double mobilityFactor) {
    this.correlations = correlations;
    this.lattice = MetalLattice.of(steel);
    this.austenite = new AusteniteActivity(correlations.phases().activity(), lattice);
    this.lines = correlations.lines(steel);
    this.mobilityFactor = mobilityFactor;
    this.lnCarbidesBelow =
        steel.percent(Element.CR) >= CHROMIUM_CARBIDES_PCT && !lines.alwaysAustenite()
            ? lnCarbidesBelow()
            : 0;
  }

  /** How far below plain cementite the activity lies at A1, where austenite stands beside it. */
  private double lnCarbidesBelow() {
    double kelvin = lines.a1Celsius() + Temperature.ZERO_CELSIUS;
    double beside = lattice.ratio(lines.austeniteBesideCementitePct(lines.a1Celsius()));
    return Math.min(
        0, austenite.at(kelvin).lnActivity(beside) - Unary.lnActivityOfFerriteAndCementite(kelvin));
  }

  public MetalLattice lattice() {
    return lattice;
  }

  @Override
  public Optional<PhaseLines> phases() {
    return Optional.of(lines);
  }

  @Override
  public Isotherm at(double kelvin) {
    return new AtTemperature(kelvin);
  }

  @Override
  public double jumpKelvin() {
    return lines.alwaysAustenite() ? Double.NaN : lines.a1Celsius() + Temperature.ZERO_CELSIUS;
  }

  private final class AtTemperature implements Isotherm {
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

    /**
     * The integral of the austenite's diffusivity is e^(k y) times this cubic, less its constant.
     */
    private final double q0;

    private final double q1;
    private final double q2;
    private final double q3;

    AtTemperature(double kelvin) {
      this.kelvin = kelvin;
      double celsius = kelvin - Temperature.ZERO_CELSIUS;
      hasAustenite = lines.alwaysAustenite() || celsius >= lines.a1Celsius();
      activity = austenite.at(kelvin);
      GustafsonFerrite ferrite = correlations.phases().ferriteActivity();
      ferriteDiffusivity =
          mobilityFactor * correlations.phases().ferriteDiffusivity().squareMetresPerSecond(kelvin);
      Agren1986Mobility mobility = correlations.phases().mobility();
      dilute = mobilityFactor * mobility.dilute(kelvin);
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
        lnLevelBelow = Unary.lnActivityOfFerriteAndCementite(kelvin) + lnCarbidesBelow;
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

    /**
     * A steel that is always austenite keeps carbon up to where graphite would form. In nickel,
     * which has no carbide, graphite forms too slowly to count: beside steel it comes to the
     * activity of that, and is no sink for its carbon.
     */
    private double graphiteOr(double cementite) {
      if (lattice.iron() < MOSTLY) {
        return activity.ratioAt(LN_BEYOND_CEMENTITE);
      }
      return Math.max(activity.ratioAt(0), Math.min(cementite, activity.ratioAt(0.3)));
    }

    /** Integral of the austenite's diffusivity from 0 to y. */
    private double integral(double y) {
      return Math.exp(k * y) * (q0 + y * (q1 + y * (q2 + y * q3))) - q0;
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
        double y = to[i] < from[i] ? stoppedFalling(from[i], to[i]) : stoppedRising(from[i], to[i]);
        any |= y != to[i];
        to[i] = y;
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
        double atMost = correlations.phases().ferriteActivity().lnActivity(kelvin, ferriteMost);
        double here = correlations.phases().ferriteActivity().lnActivity(kelvin, y);
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
        double atMost = correlations.phases().ferriteActivity().lnActivity(kelvin, ferriteMost);
        return Math.min(
            ferriteMost,
            correlations.phases().ferriteActivity().ratioAt(kelvin, ln - lnLevelBelow + atMost));
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
