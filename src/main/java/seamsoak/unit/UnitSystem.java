package seamsoak.unit;

/** Which units an answer shows: the shop's own first, the other in parentheses, or one alone. */
public enum UnitSystem {
  US,
  METRIC,
  /** US first, metric in parentheses. */
  BOTH
}
