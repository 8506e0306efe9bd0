package seamsoak.pairing;

import seamsoak.source.Standing;

/**
 * A pairing that smiths use or ask about.
 *
 * @param first id of the one steel
 * @param second id of the other
 * @param firstMm usual layer of the first to begin with, mm
 * @param secondMm of the second
 * @param note what practice says of it
 * @param standing how well that is known
 * @param source its key
 */
public record Practice(
    String first,
    String second,
    double firstMm,
    double secondMm,
    String note,
    Standing standing,
    String source) {

  /** The same with the steels in the other order. */
  Practice swapped() {
    return new Practice(second, first, secondMm, firstMm, note, standing, source);
  }
}
