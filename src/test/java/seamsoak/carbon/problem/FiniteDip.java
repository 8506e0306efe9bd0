package seamsoak.carbon.problem;

import java.util.Arrays;
import seamsoak.carbon.Grid;
import seamsoak.carbon.Strip;

/**
 * A square dip of half-width h and depth d spreading in a thick piece: {@code y = y0 - d/2 [erf((h
 * - x)/(2 sqrt tau)) + erf((h + x)/(2 sqrt tau))]} (Crank; from memory).
 */
public record FiniteDip(
    double diffusivity, double start, double depth, double halfWidth, double seconds)
    implements Problem {
  @Override
  public Strip solved(double relativeTolerance) {
    return Problem.sealed(unspread(), seconds, relativeTolerance);
  }

  /** The dip before it spreads, in a piece thick enough. */
  public Strip unspread() {
    var metal = PhaseLaw.single(diffusivity, 1).metal("plain", start);
    double[] inside = new double[200];
    double[] low = new double[200];
    Arrays.fill(inside, halfWidth / inside.length);
    Arrays.fill(low, start - depth);
    double rest = halfWidth + 12 * Math.sqrt(diffusivity * seconds);
    Strip outside = Strip.of(metal, rest, new Grid(halfWidth / inside.length / rest, 1.02, false));
    return Strip.of(metal, inside, low).followedBy(outside);
  }

  @Override
  public double exact(double x) {
    double s = 2 * Math.sqrt(diffusivity * seconds);
    return start - 0.5 * depth * (Erf.erf((halfWidth - x) / s) + Erf.erf((halfWidth + x) / s));
  }

  @Override
  public double allowed() {
    return 2e-4 * depth;
  }
}
