package seamsoak.unit;

/**
 * An angle.
 *
 * @param radians may be negative; what people write may not
 */
public record Angle(double radians) {
  private static final QuantityText ACCEPTED = new QuantityText("an angle such as 45 deg or 45°");

  public Angle {
    QuantityText.finite(radians);
  }

  public static Angle ofDegrees(double degrees) {
    return new Angle(Math.toRadians(degrees));
  }

  /** Reads what people write; {@code IllegalArgumentException} with one sentence otherwise. */
  public static Angle parse(String text) {
    return of(text, Amount.read(text, ACCEPTED));
  }

  /** The same where a bare number is one of degrees, whatever the system. */
  public static Angle parse(String text, UnitSystem bare) {
    return of(text, Amount.read(text, ACCEPTED).or(bare.bare("deg", "deg")));
  }

  private static Angle of(String text, Amount amount) {
    switch (amount.unit()) {
      case "deg", "deg.", "°", "degree", "degrees" -> {}
      default -> throw ACCEPTED.refuseUnit(text, amount.unit());
    }
    if (amount.value() < 0 || amount.value() > 360) {
      throw ACCEPTED.refuse(text, "is not between 0 and 360 deg");
    }
    return ofDegrees(amount.value());
  }

  public double degrees() {
    return Math.toDegrees(radians);
  }
}
