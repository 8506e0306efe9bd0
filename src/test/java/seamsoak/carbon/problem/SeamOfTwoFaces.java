package seamsoak.carbon.problem;

import seamsoak.carbon.Strip;

/**
 * Two faces that lost carbon alike for tau1, welded and soaked for tau2. At the seam {@code y = ys
 * + (y0 - ys) (2/pi) arctan(sqrt(tau2/tau1))} (worked out by integrating erf against the Gaussian);
 * away from it the same integral is taken numerically.
 */
public record SeamOfTwoFaces(HalfSpace face, double soakSeconds) implements Problem {
  private static final int POINTS = 4000;

  @Override
  public Strip solved(double relativeTolerance) {
    return solved(1, relativeTolerance);
  }

  /** The same with the piece thinned by a factor between weld and soak. */
  public Strip solved(double thinning, double relativeTolerance) {
    double thick =
        12 * Math.sqrt(face.diffusivity() * (face.seconds() + thinning * thinning * soakSeconds));
    Strip thinned = face.solved(thick, relativeTolerance).scaled(1 / thinning);
    return Problem.sealed(thinned, soakSeconds, relativeTolerance);
  }

  /** The carbon at the seam in closed form. */
  public double exactAtSeam() {
    return face.surface()
        + (face.start() - face.surface())
            * (2 / Math.PI)
            * Math.atan(Math.sqrt(soakSeconds / face.seconds()));
  }

  @Override
  public double exact(double x) {
    double s = 2 * Math.sqrt(face.diffusivity() * soakSeconds);
    double sum = 0;
    double step = 12.0 / POINTS;
    for (int i = 0; i <= POINTS; i++) {
      double u = -6 + i * step;
      double weight = i == 0 || i == POINTS ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * face.exact(Math.abs(x + s * u)) * Math.exp(-u * u);
    }
    return sum * step / 3 / Math.sqrt(Math.PI);
  }

  @Override
  public double allowed() {
    return 4e-4 * (face.start() - face.surface());
  }
}
