package seamsoak.carbon.problem;

import static seamsoak.property.Analyses.CORRELATIONS;

import seamsoak.carbon.Metal;
import seamsoak.carbon.Surroundings;
import seamsoak.property.Analyses;

/** The nominal steels as metals for the engine, and the fire that they meet. */
public final class Steels {
  /**
   * Activity under scale with 1 atm of CO, and the steel's k_c (Birks and Jackson; from memory).
   */
  public static final Surroundings FIRE =
      new Surroundings(
          t -> Math.exp(CORRELATIONS.scaledSurface().lnActivity(t, 1)),
          t -> 57.1e-6 * Math.exp(-21720 / t));

  private Steels() {}

  /** A steel of the list. */
  public static Metal metal(String name) {
    return Metal.of(CORRELATIONS, name, Analyses.named(name), 1);
  }

  /** A steel by its analysis. */
  public static Metal of(String analysis) {
    return Metal.of(CORRELATIONS, analysis, Analyses.of(analysis), 1);
  }
}
