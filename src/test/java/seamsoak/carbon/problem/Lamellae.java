package seamsoak.carbon.problem;

import java.util.Arrays;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;

/**
 * A repeating stack of two carbons in one metal, from the middle of one layer to the middle of its
 * neighbor: period P, share f of the first, {@code y = f y1 + (1-f) y2 + sum 2(y1-y2)/(k pi) sin(k
 * pi f) cos(2 pi k x/P) exp(-(2 pi k/P)^2 tau)} (Fourier; from memory).
 */
public record Lamellae(
    double diffusivity, double first, double second, double period, double share, double seconds)
    implements Problem {
  private static final int CELLS = 400;
  private static final int TERMS = 400;

  @Override
  public Strip solved(double relativeTolerance) {
    Metal metal = PhaseLaw.single(diffusivity, 1).metal("plain", first);
    return Problem.sealed(start(metal), seconds, relativeTolerance);
  }

  /** The two layers before the heat. */
  public Strip start(Metal metal) {
    double[] metres = new double[CELLS];
    double[] ratio = new double[CELLS];
    Arrays.fill(metres, period / 2 / CELLS);
    for (int i = 0; i < CELLS; i++) {
      ratio[i] = i < Math.round(share * CELLS) ? first : second;
    }
    return Strip.of(metal, metres, ratio);
  }

  @Override
  public double exact(double x) {
    double sum = share * first + (1 - share) * second;
    for (int k = 1; k <= TERMS; k++) {
      double q = 2 * Math.PI * k / period;
      sum +=
          2
              * (first - second)
              / (k * Math.PI)
              * Math.sin(k * Math.PI * share)
              * Math.cos(q * x)
              * Math.exp(-q * q * diffusivity * seconds);
    }
    return sum;
  }

  @Override
  public double allowed() {
    return 1e-4 * Math.abs(first - second);
  }
}
