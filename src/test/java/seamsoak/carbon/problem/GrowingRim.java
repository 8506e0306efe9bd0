package seamsoak.carbon.problem;

import seamsoak.carbon.Edge;
import seamsoak.carbon.Grid;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;
import seamsoak.numeric.Roots;

/**
 * A rim of the first phase growing into the second as carbon leaves: rim thickness {@code 2 g
 * sqrt(D1 t)} with
 *
 * <pre>
 * (y2 - y1) g sqrt(pi) = (y1 - ys) exp(-g^2)/erf(g)
 *                        - (y0 - y2) sqrt(D2/D1) exp(-g^2 D1/D2)/erfc(g sqrt(D1/D2))
 * </pre>
 *
 * y1 and y2 the ends of the level (Neumann's solution with flow on both sides; from memory, checked
 * by its carbon balance). With y0 on the level there is no flow ahead of the front and y0 stands
 * for y2: Stefan's problem, carbide dissolving.
 *
 * @param law whose second phase has no upper end
 */
public record GrowingRim(PhaseLaw law, double start, double surface, double seconds)
    implements Problem {
  private double far() {
    return 2 * rimMetres() + 12 * Math.sqrt(law.secondDiffusivity() * seconds);
  }

  /** Half the rim over sqrt(D1 t). */
  public double g() {
    double d = Math.sqrt(law.firstDiffusivity() / law.secondDiffusivity());
    return Roots.between(g -> imbalance(g, d), 1e-6, Math.min(5, 20 / d), 1e-15);
  }

  private boolean onLevel() {
    return start <= law.secondLeast();
  }

  private double imbalance(double g, double d) {
    double ahead =
        onLevel()
            ? 0
            : (start - law.secondLeast()) * Math.exp(-g * g * d * d) / (d * Erf.erfc(g * d));
    return (law.firstMost() - surface) * Math.exp(-g * g) / Erf.erf(g)
        - ahead
        - (Math.min(start, law.secondLeast()) - law.firstMost()) * g * Math.sqrt(Math.PI);
  }

  public double rimMetres() {
    return 2 * g() * Math.sqrt(law.firstDiffusivity() * seconds);
  }

  public double carbonLost() {
    return 2
        * (law.firstMost() - surface)
        / Erf.erf(g())
        * Math.sqrt(law.firstDiffusivity() * seconds / Math.PI);
  }

  public StripSolver.Advanced advanced(double relativeTolerance) {
    Strip strip = Strip.of(law.metal("steel", start), far(), new Grid(1e-3, 1.02, false));
    return Problem.hold(strip, seconds, Edge.OPEN, surface / law.firstMost(), 0, relativeTolerance);
  }

  @Override
  public Strip solved(double relativeTolerance) {
    return advanced(relativeTolerance).strip();
  }

  @Override
  public double exact(double x) {
    double d1 = law.firstDiffusivity();
    double d2 = law.secondDiffusivity();
    if (x < rimMetres()) {
      return surface
          + (law.firstMost() - surface) * Erf.erf(x / (2 * Math.sqrt(d1 * seconds))) / Erf.erf(g());
    }
    if (onLevel()) {
      return start;
    }
    return start
        - (start - law.secondLeast())
            * Erf.erfc(x / (2 * Math.sqrt(d2 * seconds)))
            / Erf.erfc(g() * Math.sqrt(d1 / d2));
  }

  /** The front lies somewhere in one cell: there the error is the jump at worst. */
  @Override
  public double allowed() {
    return Math.min(start, law.secondLeast()) - law.firstMost();
  }
}
