package seamsoak.pairing;

import java.util.Locale;
import java.util.function.DoubleBinaryOperator;

/** The checks, each by its line in {@code pair-limits.csv}, and what of two values is rated. */
public enum CheckName {
  OXIDE_CHROMIUM(Math::max),
  OXIDE_CHROMIUM_SEALED(Math::max),
  OXIDE_SILICON(Math::max),
  OXIDE_ALUMINUM(Math::max),
  SULFUR(Math::max),
  COPPER(Math::max),
  WELDING_WINDOW(CheckName::gap),
  SOLIDUS_MARGIN(Math::min),
  FORGING_WINDOW(CheckName::gap),
  HOT_STRENGTH(CheckName::ratio),
  AC1(CheckName::gap),
  UPPER_CRITICAL(CheckName::gap),
  HARDENING_WINDOW(CheckName::gap),
  MS(CheckName::gap),
  HARDENABILITY(CheckName::ratio),
  QUENCH(CheckName::ratio),
  AIR_HARDENING(Math::max),
  EXPANSION_COLD(CheckName::gap),
  EXPANSION_TO_WELD(CheckName::gap),
  EXPANSION_GAMMA(CheckName::gap),
  TRANSFORMATION(CheckName::gap),
  CARBON_ACTIVITY(CheckName::gap),
  EVENED_CARBON(CheckName::gap),
  CARBON_LOSS(CheckName::gap),
  CARBON_BARRIER(Math::max),
  SOFT_LAYER(Math::min),
  NORMALIZING(CheckName::gap),
  CONTRAST(CheckName::gap),
  /** No check of its own: below its limit {@link #CONTRAST} is hardly any. */
  CONTRAST_FAINT(CheckName::gap),
  /** No check of its own: from its limit on {@link #CONTRAST} is strong. */
  CONTRAST_STRONG(CheckName::gap),
  UNKNOWN_STOCK(Math::max),
  PLATED_STOCK(Math::max);

  private final DoubleBinaryOperator rated;

  CheckName(DoubleBinaryOperator rated) {
    this.rated = rated;
  }

  /** As the table and JSON have it. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What of two values is held against the limits. */
  double rated(double first, double second) {
    return rated.applyAsDouble(first, second);
  }

  private static double gap(double first, double second) {
    return Math.abs(first - second);
  }

  private static double ratio(double first, double second) {
    return Math.max(first, second) / Math.min(first, second);
  }
}
