package seamsoak.reference;

/**
 * One checked number.
 *
 * @param property what is checked, the folder the row stands in
 * @param file file of the row
 * @param inputs as written, the key under which a known deviation is listed
 * @param expected the number of the source
 * @param tolerance half a unit of the last printed place unless the row says why not
 * @param source key of the source
 */
record ReferenceRow(
    String property,
    String file,
    String inputs,
    double expected,
    double tolerance,
    String source,
    String standing) {
  String key() {
    return file + " " + inputs;
  }

  @Override
  public String toString() {
    return property + " " + inputs + " = " + expected + " (" + source + ", " + standing + ")";
  }
}
