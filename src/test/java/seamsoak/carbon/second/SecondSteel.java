package seamsoak.carbon.second;

import static seamsoak.support.Analyses.CORRELATIONS;

import seamsoak.property.phase.AusteniteActivity;
import seamsoak.property.phase.MetalLattice;
import seamsoak.property.phase.PhaseLines;
import seamsoak.steel.Composition;

/**
 * One steel above A1 by the same published correlations as the engine's, put together anew: carbon
 * is driven by differences of activity, phase by phase, with the mobility half-way.
 */
final class SecondSteel {
  private final MetalLattice lattice;
  private final AusteniteActivity austenite;
  private final PhaseLines lines;
  private final double startPct;

  SecondSteel(Composition analysis) {
    lattice = MetalLattice.of(analysis);
    austenite = new AusteniteActivity(CORRELATIONS.phases().activity(), lattice);
    lines = CORRELATIONS.lines(analysis);
    startPct = analysis.carbon();
  }

  double ratio(double percent) {
    return lattice.ratio(percent);
  }

  double percent(double ratio) {
    return lattice.percent(ratio);
  }

  double startPct() {
    return startPct;
  }

  Isotherm at(double kelvin) {
    return new Isotherm(kelvin);
  }

  /** At one temperature. */
  final class Isotherm {
    private final double kelvin;
    private final AusteniteActivity.Isotherm law;

    /** Most carbon of ferrite, then least and most of austenite, per metal atom. */
    private final double ferrite;

    private final double least;
    private final double most;
    private final double levelBelow;
    private final double levelAbove;
    private final double ferriteFactor;

    private Isotherm(double kelvin) {
      double celsius = kelvin - 273.15;
      if (lines.alwaysAustenite() || celsius < lines.a1Celsius()) {
        throw new IllegalArgumentException("written for steels above A1");
      }
      this.kelvin = kelvin;
      law = austenite.at(kelvin);
      least = lattice.ratio(lines.austeniteBesideFerritePct(celsius));
      most = lattice.ratio(lines.austeniteBesideCementitePct(celsius));
      levelBelow = least > 0 ? inAustenite(least) : 0;
      levelAbove = inAustenite(most);
      ferrite =
          least > 0
              ? CORRELATIONS.phases().ferriteActivity().ratioAt(kelvin, Math.log(levelBelow))
              : 0;
      ferriteFactor = least > 0 ? levelBelow / inFerrite(ferrite) : 0;
    }

    private double inAustenite(double y) {
      return y / (1 - y) * Math.exp(law.c0() + law.c1() * y + law.c2() * y * y);
    }

    private double inFerrite(double y) {
      return Math.exp(CORRELATIONS.phases().ferriteActivity().lnActivity(kelvin, y));
    }

    double mostActivity() {
      return levelAbove;
    }

    /** Carbon of ferrite and austenite at the two ends of the lower level. */
    double ferriteMost() {
      return ferrite;
    }

    double austeniteLeast() {
      return least;
    }

    double activity(double y) {
      if (y <= 0) {
        return least > 0 ? 0 : y * Math.exp(law.c0());
      }
      if (y < ferrite) {
        return ferriteFactor * inFerrite(y);
      }
      return y <= least ? levelBelow : y < most ? inAustenite(y) : levelAbove;
    }

    /** Least carbon with that activity. */
    double ratioAt(double activity) {
      if (activity <= 0) {
        return 0;
      }
      if (activity <= levelBelow) {
        return Math.min(
            ferrite,
            CORRELATIONS
                .phases()
                .ferriteActivity()
                .ratioAt(kelvin, Math.log(activity / ferriteFactor)));
      }
      return Math.max(least, Math.min(most, law.ratioAt(Math.log(activity))));
    }

    /**
     * Flux times distance from one carbon content to another: in ferrite the diffusivity is
     * constant; in austenite mobility half-way times the difference of activity; nothing between.
     */
    double drive(double from, double to) {
      double a = Math.min(most, Math.max(least, from));
      double b = Math.min(most, Math.max(least, to));
      double flux = 0;
      if (a != b) {
        double half = 0.5 * (a + b);
        double b0 = CORRELATIONS.phases().mobility().squareMetresPerSecond(kelvin, half);
        flux = b0 * half * (1 - half) / inAustenite(half) * (inAustenite(a) - inAustenite(b));
      }
      if (least > 0) {
        double inFerrite = Math.min(ferrite, from) - Math.min(ferrite, to);
        flux +=
            CORRELATIONS.phases().ferriteDiffusivity().squareMetresPerSecond(kelvin) * inFerrite;
      } else if (a == 0 || b == 0) {
        // below nothing, where a stage may stray, as in a dilute solution
        flux +=
            CORRELATIONS.phases().mobility().dilute(kelvin) * (Math.min(0, from) - Math.min(0, to));
      }
      return flux;
    }
  }
}
