package seamsoak.property.etch;

/**
 * What is known only from a low end by a middle to a high end: of one steel's ferrite all of them
 * move together. The ends need not be in order.
 */
public record Band(double low, double middle, double high) {
  /** Where nothing is in doubt. */
  public static Band of(double sure) {
    return new Band(sure, sure, sure);
  }

  /** At a place in the band, 0 its low end, 0.5 its middle, 1 its high end, straight between. */
  public double at(double place) {
    return place < 0.5
        ? low + 2 * place * (middle - low)
        : middle + (2 * place - 1) * (high - middle);
  }

  /** The lesser at each place. */
  public Band least(Band other) {
    return new Band(
        Math.min(low, other.low), Math.min(middle, other.middle), Math.min(high, other.high));
  }

  /** The greater at each place. */
  public Band most(Band other) {
    return new Band(
        Math.max(low, other.low), Math.max(middle, other.middle), Math.max(high, other.high));
  }
}
