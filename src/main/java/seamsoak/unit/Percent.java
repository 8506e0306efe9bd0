package seamsoak.unit;

/**
 * A percentage: of carbon by weight, or a share of something.
 *
 * @param value in percent, so that {@code 0.10 %} is 0.1
 */
public record Percent(double value) {
  private static final QuantityText ACCEPTED =
      new QuantityText("a percentage such as 0.10 % or 50 %");

  public Percent {
    QuantityText.finite(value);
  }

  /** Reads what people write; {@code IllegalArgumentException} with one sentence otherwise. */
  public static Percent parse(String text) {
    Amount amount = Amount.read(text, ACCEPTED);
    switch (amount.unit()) {
      case "%", "percent", "wt%", "wt %" -> {}
      default -> throw ACCEPTED.refuseUnit(text, amount.unit());
    }
    if (amount.value() < 0 || amount.value() > 100) {
      throw ACCEPTED.refuse(text, "is not between 0 and 100 %");
    }
    return new Percent(amount.value());
  }

  /** As a part of one, so that 50 % is 0.5. */
  public double share() {
    return value / 100;
  }

  /** To a hundredth of a percent, the same in every system. */
  public String format(UnitSystem units) {
    return Decimals.upTo(value, 2) + " %";
  }
}
