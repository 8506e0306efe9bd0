package seamsoak.carbon.problem;

import seamsoak.carbon.Edge;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;
import seamsoak.carbon.Surroundings;
import seamsoak.heat.HeatCurve;

/** A strip and its heat, with the exact answer. */
public interface Problem {
  /** Any temperature: the made-up metals do not mind. */
  double KELVIN = 1273.15;

  /** The strip as the engine computes it. */
  Strip solved(double relativeTolerance);

  /** Exact carbon per metal atom at a depth below the strip's near edge as it is at the end. */
  double exact(double metres);

  /** What the grid costs, carbon per metal atom: largest error allowed in any cell. */
  double allowed();

  /** A hold in a fire that keeps the surface at an activity and eats metal with a constant k_c. */
  static StripSolver.Advanced hold(
      Strip strip, double seconds, Edge edge, double activity, double scaling, double tolerance) {
    return new StripSolver(new Surroundings(t -> activity, t -> scaling), tolerance)
        .advance(strip, HeatCurve.hold(KELVIN, seconds), edge);
  }

  /** A hold in which nothing leaves. */
  static Strip sealed(Strip strip, double seconds, double tolerance) {
    return hold(strip, seconds, Edge.SEALED, 0, 0, tolerance).strip();
  }

  /** Largest difference from the exact answer at the cells' middles. */
  default double worstError(double relativeTolerance) {
    return worstError(solved(relativeTolerance));
  }

  /** The same for a strip however computed. */
  default double worstError(Strip end) {
    double worst = 0;
    double x = 0;
    for (int i = 0; i < end.cells(); i++) {
      worst = Math.max(worst, Math.abs(end.ratio(i) - exact(x + 0.5 * end.metres(i))));
      x += end.metres(i);
    }
    return worst;
  }
}
