package seamsoak.soak;

/**
 * What varies among the possible histories of a billet, in the order of {@link
 * Histories.Sample#place}.
 */
public enum Input {
  MOBILITY,
  FIRE_TEMPERATURE,
  FIRE_TIMES,
  GROUND_DEPTHS,
  COVER,
  FERRITE,
  STEEL_CARBON,
  SCALING,
  BREADTH
}
