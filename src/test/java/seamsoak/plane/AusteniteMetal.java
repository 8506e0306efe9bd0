package seamsoak.plane;

import static seamsoak.support.Analyses.CORRELATIONS;

import seamsoak.property.phase.Agren1986Mobility;
import seamsoak.property.phase.AusteniteActivity;
import seamsoak.property.phase.MetalLattice;
import seamsoak.steel.Composition;

/**
 * One steel as austenite at any temperature and carbon: the published activity and mobility, no
 * other phase. Heats begin at 850 C; the ferrite that a bare face may have up to 912 C is left out.
 */
final class AusteniteMetal implements PlaneMetal {
  private final MetalLattice lattice;
  private final AusteniteActivity activity;
  private final double startRatio;

  AusteniteMetal(Composition analysis) {
    lattice = MetalLattice.of(analysis);
    activity = new AusteniteActivity(CORRELATIONS.phases().activity(), lattice);
    startRatio = lattice.ratio(analysis.carbon());
  }

  @Override
  public double startRatio() {
    return startRatio;
  }

  @Override
  public double percent(double ratio) {
    return lattice.percent(ratio);
  }

  @Override
  public PlaneMetal.Isotherm at(double kelvin) {
    Agren1986Mobility mobility = CORRELATIONS.phases().mobility();
    return new Isotherm(activity.at(kelvin), mobility.dilute(kelvin), mobility.exponent(kelvin));
  }

  /** a = y/(1-y) e, B y(1-y) d ln a/dx = B (1-y)^2/e da/dx with e = exp(c0 + c1 y + c2 y^2). */
  private record Isotherm(AusteniteActivity.Isotherm law, double dilute, double exponent)
      implements PlaneMetal.Isotherm {
    @Override
    public double activity(double y) {
      return y / (1 - y) * Math.exp(law.c0() + y * (law.c1() + y * law.c2()));
    }

    @Override
    public double ratioAt(double activity) {
      return law.ratioAt(Math.log(activity));
    }

    @Override
    public void put(double y, int cell, double[] activity, double[] slope, double[] halfMetre) {
      double e = Math.exp(law.c0() + y * (law.c1() + y * law.c2()));
      double free = 1 / (1 - y);
      activity[cell] = y * free * e;
      slope[cell] = e * free * (free + y * (law.c1() + 2 * law.c2() * y));
      halfMetre[cell] = 0.5 * e * free * free / (dilute * Math.exp(exponent * y));
    }
  }
}
