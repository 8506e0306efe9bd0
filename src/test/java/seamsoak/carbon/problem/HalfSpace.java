package seamsoak.carbon.problem;

import seamsoak.carbon.Edge;
import seamsoak.carbon.Grid;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;

/**
 * A thick piece whose surface is held at one carbon: {@code y = ys + (y0 - ys) erf(x/(2 sqrt(D
 * t)))} (J. Crank, The Mathematics of Diffusion; from memory).
 */
public record HalfSpace(double diffusivity, double start, double surface, double seconds)
    implements Problem {
  @Override
  public Strip solved(double relativeTolerance) {
    return solved(12 * Math.sqrt(diffusivity * seconds), relativeTolerance);
  }

  /** The same in a piece of a given thickness. */
  Strip solved(double metres, double relativeTolerance) {
    Metal metal = PhaseLaw.single(diffusivity, 2).metal("plain", start);
    Strip strip = Strip.of(metal, metres, new Grid(2e-4, 1.03, false));
    return Problem.hold(strip, seconds, Edge.OPEN, 2 * surface, 0, relativeTolerance).strip();
  }

  @Override
  public double exact(double x) {
    return surface + (start - surface) * Erf.erf(x / (2 * Math.sqrt(diffusivity * seconds)));
  }

  @Override
  public double allowed() {
    return 2e-4 * (start - surface);
  }
}
