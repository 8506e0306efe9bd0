package seamsoak.soak;

/**
 * What a soak costs.
 *
 * @param temperatureC of the core
 * @param minutes held
 * @param grainAstm grain size number afterwards
 * @param offMm lost to scale, and skin to be ground off, on each flat
 * @param sideOffMm the same on each side
 */
public record SoakCost(
    double temperatureC, double minutes, double grainAstm, double offMm, double sideOffMm) {
  /** What a grain size number coarser is worth, min: more of a cycle than it takes; judgement. */
  private static final double MINUTES_PER_NUMBER = 12;

  /** What a millimeter off each flat is worth, min; judgement. */
  private static final double MINUTES_PER_MM = 100;

  /** All of it as minutes, from a level that all soaks share; the less the better. */
  double worthMinutes() {
    return minutes - MINUTES_PER_NUMBER * grainAstm + MINUTES_PER_MM * offMm;
  }
}
