package seamsoak.carbon;

import seamsoak.carbon.problem.GrowingRim;
import seamsoak.carbon.problem.PhaseLaw;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;
import seamsoak.support.Analyses;
import seamsoak.support.Depths;

/** The ferrite rim of plain steel after an hour whose scale does not eat metal. */
record FerriteRim(double carbonPct, double celsius, double carbonMonoxideAtm) {
  private static final double SECONDS = 3600;

  private Metal plain() {
    return Steels.of("C" + carbonPct);
  }

  private CarbonLaw.Isotherm law() {
    return plain().law().at(celsius + 273.15);
  }

  /** Least carbon of austenite beside ferrite; 0 where there is no ferrite. */
  private double leastAustenite() {
    return plain()
        .lattice()
        .ratio(plain().law().phases().orElseThrow().austeniteBesideFerritePct(celsius));
  }

  private double mostFerrite() {
    return law().ratioAt(law().activity(0.5 * leastAustenite()));
  }

  private double outside() {
    return carbonMonoxideAtm == 0
        ? 0
        : Math.exp(
            Analyses.CORRELATIONS
                .phases()
                .scaledSurface()
                .lnActivity(celsius + 273.15, carbonMonoxideAtm));
  }

  /** As the engine has it, um. */
  double engine() {
    if (leastAustenite() == 0) {
      return 0;
    }
    Strip end =
        new StripSolver(new Surroundings(t -> outside(), t -> 0), 1e-4)
            .advance(
                Strip.of(plain(), 2.5e-3, new Grid(3e-4, 1.03, false)),
                HeatCurve.hold(celsius + 273.15, SECONDS),
                Edge.OPEN)
            .strip();
    return 1e6 * Depths.rim(end, mostFerrite(), leastAustenite());
  }

  /** By the closed form, with the diffusivity that austenite of some carbon has throughout, um. */
  double closed(double austeniteRatio) {
    PhaseLaw constant =
        new PhaseLaw(
            law().potentialSlope(0),
            mostFerrite(),
            leastAustenite(),
            law().potentialSlope(austeniteRatio),
            Double.POSITIVE_INFINITY);
    double surface = outside() == 0 ? 0 : law().ratioAt(outside());
    return 1e6 * new GrowingRim(constant, plain().startRatio(), surface, SECONDS).rimMetres();
  }

  double fedAsBulk() {
    return closed(Math.min(plain().startRatio(), mostAustenite()));
  }

  double fedAsFront() {
    return closed(leastAustenite());
  }

  private double mostAustenite() {
    return 0.999
        * plain()
            .lattice()
            .ratio(plain().law().phases().orElseThrow().austeniteBesideCementitePct(celsius));
  }
}
