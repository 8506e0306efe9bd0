package seamsoak.unit;

/**
 * A length.
 *
 * @param metres may be negative, as a position can be; what people write may not
 */
public record Length(double metres) {
  private static final QuantityText ACCEPTED =
      new QuantityText("a length such as 1-3/8 in, 3/8\", 0.040 in, 2 ft, 38 mm or 1.5 cm");
  private static final double METRES_PER_INCH = 0.0254;
  private static final double LONGEST_METRES = 100;

  public Length {
    QuantityText.finite(metres);
  }

  public static Length ofInches(double inches) {
    return new Length(inches * METRES_PER_INCH);
  }

  public static Length ofMillimetres(double millimetres) {
    return new Length(millimetres / 1000);
  }

  /** Reads what people write; {@code IllegalArgumentException} with one sentence otherwise. */
  public static Length parse(String text) {
    return of(text, Amount.readFraction(text, ACCEPTED));
  }

  /** The same where a bare number is one of inches or of millimetres. */
  public static Length parse(String text, UnitSystem bare) {
    return of(text, Amount.readFraction(text, ACCEPTED).or(bare.bare("in", "mm")));
  }

  private static Length of(String text, Amount amount) {
    double value = amount.value();
    double metres =
        switch (amount.unit()) {
          case "thou", "thousandths" -> value / 1000 * METRES_PER_INCH;
          case "in", "in.", "inch", "inches", "\"", "''" -> value * METRES_PER_INCH;
          case "ft", "ft.", "foot", "feet", "'" -> value * 12 * METRES_PER_INCH;
          case "um" -> value / 1e6;
          case "mm" -> value / 1000;
          case "cm" -> value / 100;
          case "m" -> value;
          default -> throw ACCEPTED.refuseUnit(text, amount.unit());
        };
    if (metres < 0) {
      throw ACCEPTED.refuse(text, "is negative");
    }
    if (metres > LONGEST_METRES) {
      throw ACCEPTED.refuse(text, "is longer than any bar");
    }
    return new Length(metres);
  }

  public double millimetres() {
    return metres * 1000;
  }

  public double inches() {
    return metres / METRES_PER_INCH;
  }

  /**
   * As a shop can measure it: a fraction of an inch where one is near, else thousandths;
   * millimetres to three figures.
   */
  public String format(UnitSystem units) {
    String sign = metres < 0 ? "-" : "";
    Length size = new Length(Math.abs(metres));
    return units.show(sign + size.us(), sign + size.metric());
  }

  /** The nearest 1/32 in stands for any length within 0.4 % of it, which a rule cannot tell. */
  private String us() {
    double inches = inches();
    long parts = Math.round(inches * 32);
    boolean fraction = parts >= 2 && Math.abs(inches - parts / 32.0) <= 0.004 * inches;
    if (fraction) {
      return fraction(parts) + " in";
    }
    if (inches < 0.00005) {
      return "0 in";
    }
    return Decimals.fixed(inches, inches < 0.01 ? 4 : 3) + " in";
  }

  private static String fraction(long thirtySeconds) {
    long whole = thirtySeconds / 32;
    long above = thirtySeconds % 32;
    if (above == 0) {
      return Long.toString(whole);
    }
    long common = Long.lowestOneBit(above);
    String part = above / common + "/" + 32 / common;
    return whole == 0 ? part : whole + "-" + part;
  }

  private String metric() {
    double millimetres = millimetres();
    int decimals = millimetres < 0.1 ? 3 : millimetres < 10 ? 2 : millimetres < 100 ? 1 : 0;
    return Decimals.upTo(millimetres, decimals) + " mm";
  }
}
