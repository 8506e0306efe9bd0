package seamsoak.steel;

/**
 * An element of which a steel holds more or less than its grade allows.
 *
 * @param element which
 * @param percent what it holds, wt%
 * @param limits what the grade allows
 */
public record Deviation(Element element, double percent, Limits limits) {

  /** Whether it holds too little rather than too much. */
  public boolean tooLittle() {
    return percent < limits.min().orElse(0);
  }

  /** The limit that it leaves, wt%. */
  public double limit() {
    return tooLittle() ? limits.min().orElseThrow() : limits.max().orElseThrow();
  }
}
