package seamsoak.unit;

/**
 * Hardness on the Rockwell C scale.
 *
 * @param hrc from 0 to 70
 */
public record Hardness(double hrc) {
  private static final QuantityText ACCEPTED = new QuantityText("a hardness such as 60 HRC");
  private static final double HARDEST = 70;

  public Hardness {
    if (!(QuantityText.finite(hrc) >= 0 && hrc <= HARDEST)) {
      throw new IllegalArgumentException(hrc + " HRC is not on the scale");
    }
  }

  /** Reads what people write; {@code IllegalArgumentException} with one sentence otherwise. */
  public static Hardness parse(String text) {
    return of(text, Amount.read(text, ACCEPTED));
  }

  /** The same where a bare number is one of HRC, whatever the system. */
  public static Hardness parse(String text, UnitSystem bare) {
    return of(text, Amount.read(text, ACCEPTED).or(bare.bare("hrc", "hrc")));
  }

  private static Hardness of(String text, Amount amount) {
    switch (amount.unit()) {
      case "hrc", "rc", "rockwell c" -> {}
      default -> throw ACCEPTED.refuseUnit(text, amount.unit());
    }
    if (amount.value() < 0 || amount.value() > HARDEST) {
      throw ACCEPTED.refuse(text, "is not on the scale, which ends at 70");
    }
    return new Hardness(amount.value());
  }

  /** To half a point, the same in every system. */
  public String format(UnitSystem units) {
    return Decimals.upTo(Math.round(2 * hrc) / 2.0, 1) + " HRC";
  }
}
