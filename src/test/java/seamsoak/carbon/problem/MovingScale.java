package seamsoak.carbon.problem;

import seamsoak.carbon.Edge;
import seamsoak.carbon.Grid;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;

/**
 * Carbon lost while scale eats the surface: with x from the original surface and {@code X = sqrt(2
 * kc t)}, {@code y = y0 - (y0 - ys) erfc(x/(2 sqrt(D t))) / erfc(sqrt(kc/(2 D)))} for x above X (N.
 * Birks, W. Jackson, J. Iron Steel Inst. 208 (1970) 81; equation from memory).
 */
public record MovingScale(
    double diffusivity, double scaling, double start, double surface, double seconds)
    implements Problem {
  private static final double G = 3;

  public double metalLost() {
    return Math.sqrt(2 * scaling * seconds);
  }

  /** Carbon that left by the fire and with the scale: what the profile below the scale lacks. */
  public double carbonLost() {
    double s = 2 * Math.sqrt(diffusivity * seconds);
    double a = metalLost() / s;
    double integral = Math.exp(-a * a) / Math.sqrt(Math.PI) - a * Erf.erfc(a);
    return start * metalLost() + (start - surface) * s * integral / Erf.erfc(a);
  }

  public StripSolver.Advanced advanced(double relativeTolerance) {
    return advanced(1.03, relativeTolerance);
  }

  /** The same on cells that grow by a factor inward: the finer, the better depths can be read. */
  public StripSolver.Advanced advanced(double growth, double relativeTolerance) {
    double metres = metalLost() + 12 * Math.sqrt(diffusivity * seconds);
    Strip strip =
        Strip.of(
            PhaseLaw.single(diffusivity, G).metal("steel", start),
            metres,
            new Grid(2e-4, growth, false));
    return Problem.hold(strip, seconds, Edge.OPEN, G * surface, scaling, relativeTolerance);
  }

  @Override
  public Strip solved(double relativeTolerance) {
    return advanced(relativeTolerance).strip();
  }

  @Override
  public double exact(double below) {
    double x = metalLost() + below;
    return start
        - (start - surface)
            * Erf.erfc(x / (2 * Math.sqrt(diffusivity * seconds)))
            / Erf.erfc(Math.sqrt(scaling / (2 * diffusivity)));
  }

  @Override
  public double allowed() {
    return 3e-4 * (start - surface);
  }
}
