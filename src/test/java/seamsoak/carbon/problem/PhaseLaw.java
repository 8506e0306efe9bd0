package seamsoak.carbon.problem;

import java.util.Map;
import seamsoak.carbon.CarbonLaw;
import seamsoak.carbon.Metal;
import seamsoak.property.phase.MetalLattice;
import seamsoak.steel.Composition;

/**
 * A made-up metal that closed forms know how to treat, the same at every temperature: a first phase
 * up to {@code firstMost}, a level up to {@code secondLeast}, a second phase up to {@code
 * secondMost}, a level beyond. Each phase has one diffusivity, and an activity proportional to its
 * carbon, 1 where the phases meet.
 *
 * @param firstDiffusivity of the first phase, m2/s
 * @param firstMost most carbon that it holds
 * @param secondLeast least carbon of the second phase
 * @param secondDiffusivity of the second phase, m2/s
 * @param secondMost most carbon that it holds
 */
public record PhaseLaw(
    double firstDiffusivity,
    double firstMost,
    double secondLeast,
    double secondDiffusivity,
    double secondMost)
    implements CarbonLaw, CarbonLaw.Isotherm {
  private static final MetalLattice IRON = MetalLattice.of(Composition.of(Map.of()));

  /** One phase with activity g y. */
  public static PhaseLaw single(double diffusivity, double g) {
    return new PhaseLaw(diffusivity, 1 / g, 1 / g, diffusivity, Double.POSITIVE_INFINITY);
  }

  public Metal metal(String name, double startRatio) {
    return new Metal(name, this, IRON, startRatio);
  }

  @Override
  public Isotherm at(double kelvin) {
    return this;
  }

  @Override
  public double activity(double y) {
    return y < firstMost ? y / firstMost : Math.max(1, Math.min(y, secondMost) / secondLeast);
  }

  @Override
  public double potential(double y) {
    return y < firstMost
        ? firstDiffusivity * y
        : firstDiffusivity * firstMost
            + secondDiffusivity * Math.max(0, Math.min(y, secondMost) - secondLeast);
  }

  @Override
  public double potentialSlope(double y) {
    if (y < firstMost) {
      return firstDiffusivity;
    }
    return y < secondLeast || y >= secondMost ? 0 : secondDiffusivity;
  }

  @Override
  public double ratioAt(double a) {
    return a <= 1 ? a * firstMost : Math.min(a * secondLeast, secondMost);
  }

  @Override
  public double mobility(double y) {
    if (y < firstMost) {
      return firstDiffusivity * firstMost;
    }
    return y > secondMost ? 0 : secondDiffusivity * secondLeast;
  }
}
