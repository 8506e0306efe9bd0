package seamsoak.source;

/**
 * One side of a correlation's validity: a quantity and the interval in which the source vouches for
 * it.
 *
 * @param quantity what is limited, such as {@code C} or {@code temperature}
 * @param unit its unit, such as {@code wt%} or {@code C}
 * @param low lowest value, inclusive
 * @param high highest value, inclusive
 */
public record Range(String quantity, String unit, double low, double high) {
  public boolean holds(double value) {
    return value >= low && value <= high;
  }
}
